using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A round surface as walls in every direction, generated when a vertex pushes against one.</summary>
/// <param name="RadiusMm">Radius, mm.</param>
internal readonly record struct RoundWall(double RadiusMm)
{
    /// <summary>Exchanges after which rounding is all that is left.</summary>
    public const int MostSteps = 60;

    /// <summary>Excess, relative to the radius, at which the circle counts as found.</summary>
    public const double Closed = 1e-12;

    private static readonly double SinThird = Math.Sqrt(0.75);

    /// <summary>Three directions that hold each other back, to begin with.</summary>
    public static Vec2 First => new(1, 0);

    public static Vec2 Second => new(-0.5, SinThird);

    public static Vec2 Third => new(-0.5, -SinThird);

    /// <summary>The wall that a vertex at center + direction pushes against.</summary>
    public Wall At(Vec2 direction, Vec2 center, int vertex)
    {
        double length = direction.Length;
        Vec2 n = length > 0 ? direction / length : First;
        return new Wall(n, RadiusMm, n.Dot(center) + length, vertex);
    }
}
