using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>The smallest square bed for a shadow, its brim included.</summary>
internal static class SquareBed
{
    private static readonly (int A, int B, int C) Start = (0, 1, 2);
    private static readonly Vec2[] Sides = [new(1, 0), new(-1, 0), new(0, 1), new(0, -1)];

    /// <summary>Edge of the square, mm, and the turn about the vertical, radians.</summary>
    public static (double EdgeMm, double Angle) Smallest(Shadow shadow, double growth, double brimMm)
    {
        TurnSample best = new TurnSearch(Walls(shadow, growth, brimMm)).Best(halfTurnIsEnough: true);
        return (best.Value, best.Angle);
    }

    /// <summary>Edge of the square at this turn, mm.</summary>
    public static double At(Shadow shadow, double angle, double growth, double brimMm) =>
        Walls(shadow, growth, brimMm).At(angle).Value;

    // A square of edge 1 about the origin that grows until everything is inside.
    private static TurnedWalls Walls(Shadow shadow, double growth, double brimMm)
    {
        IOutline body = shadow.Body(growth);
        IEnumerable<TurnedWall> walls = Sides.Select(n => new TurnedWall(n, 0.5, 0, body));
        if (brimMm > 0)
        {
            var contact = new CornerOutline(shadow.Contact, growth);
            walls = walls.Concat(Sides.Select(n => new TurnedWall(n, 0.5, brimMm, contact)));
        }
        return new TurnedWalls([.. walls], Start);
    }
}
