using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>
/// A plane in space with its own x and y; seen against <paramref name="Normal"/> they turn counter-clockwise.
/// </summary>
public readonly record struct Frame(Vec3 Origin, Vec3 X, Vec3 Y, Vec3 Normal)
{
    /// <summary>The horizontal plane at a height, mm, seen from above.</summary>
    public static Frame Level(double z) => new(new Vec3(0, 0, z), Vec3.UnitX, Vec3.UnitY, Vec3.UnitZ);

    /// <summary>
    /// The plane through a point with a normal. Its y axis points up as far as it can; on a level plane, away from
    /// whoever stands in front of the part.
    /// </summary>
    public static Frame Facing(Vec3 origin, Vec3 normal)
    {
        Vec3 n = normal.Normalized();
        Vec3 up = Math.Abs(n.Z) > MostlyVertical ? Vec3.UnitY : Vec3.UnitZ;
        Vec3 x = up.Cross(n).Normalized();
        return new Frame(origin, x, n.Cross(x), n);
    }

    /// <summary>The point of the plane with these coordinates, raised along the normal, mm.</summary>
    public Vec3 At(Vec2 p, double height = 0) => Origin + X * p.X + Y * p.Y + Normal * height;

    public Vec2 Flat(Vec3 p) => new((p - Origin).Dot(X), (p - Origin).Dot(Y));

    public double HeightOf(Vec3 p) => (p - Origin).Dot(Normal);

    private const double MostlyVertical = 0.9;
}
