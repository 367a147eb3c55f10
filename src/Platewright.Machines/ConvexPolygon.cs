using System.Collections.Immutable;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>Checks and cuts of the polygon under a prism. Corners in mm, counter-clockwise.</summary>
internal static class ConvexPolygon
{
    /// <summary>
    /// A corner must stand out from the line between its neighbours by more than this share of their distance;
    /// far below any real corner, far above the rounding of coordinates written with six decimals.
    /// </summary>
    private const double LeastRelativeBulge = 1e-7;

    /// <summary>
    /// What is wrong with the corners, as a sentence; null where they make a strictly convex polygon.
    /// </summary>
    public static string? Fault(ImmutableArray<Vec2> corners)
    {
        if (corners.Length < 3) return $"a polygon needs at least 3 corners, found {corners.Length}.";
        for (int i = 1; i <= corners.Length; i++)
        {
            if (corners[i % corners.Length] == corners[i - 1])
                return $"corner {i % corners.Length + 1} repeats the one before it; list each corner once.";
        }
        double area = 0;
        for (int i = 0; i < corners.Length; i++) area += corners[i].Cross(corners[(i + 1) % corners.Length]);
        if (area < 0) return "the corners run clockwise; list them counter-clockwise.";
        double turn = 0;
        for (int i = 0; i < corners.Length; i++)
        {
            Vec2 before = corners[(i + corners.Length - 1) % corners.Length];
            Vec2 after = corners[(i + 1) % corners.Length];
            Vec2 incoming = corners[i] - before;
            Vec2 outgoing = after - corners[i];
            double across = (after - before).Length;
            if (incoming.Cross(outgoing) <= LeastRelativeBulge * across * across)
                return $"not convex at corner {i + 1}: it lies on or inside the line between its neighbours.";
            turn += Math.Atan2(incoming.Cross(outgoing), incoming.Dot(outgoing));
        }
        // A convex outline turns once; a star-shaped one turns twice or more.
        return turn < 3 * Math.PI ? null : "the outline crosses itself; list the corners in order around the surface.";
    }

    /// <summary>
    /// What remains when every side moves inwards by <paramref name="marginMm"/>; empty where nothing does.
    /// </summary>
    public static ImmutableArray<Vec2> Inset(ImmutableArray<Vec2> corners, double marginMm)
    {
        ImmutableArray<Vec2> rest = corners;
        for (int i = 0; i < corners.Length && rest.Length > 0; i++)
        {
            Vec2 side = (corners[(i + 1) % corners.Length] - corners[i]).Normalized();
            Vec2 inward = new(-side.Y, side.X);
            rest = KeepBeyond(rest, inward, inward.Dot(corners[i]) + marginMm);
        }
        return rest;
    }

    /// <summary>The part of a convex polygon where <c>normal · p ≥ offset</c>; empty where no area remains.</summary>
    public static ImmutableArray<Vec2> KeepBeyond(ImmutableArray<Vec2> polygon, Vec2 normal, double offset)
    {
        ImmutableArray<Vec2>.Builder kept = ImmutableArray.CreateBuilder<Vec2>(polygon.Length + 1);
        for (int i = 0; i < polygon.Length; i++)
        {
            Vec2 here = polygon[i];
            Vec2 next = polygon[(i + 1) % polygon.Length];
            double heightHere = normal.Dot(here) - offset;
            double heightNext = normal.Dot(next) - offset;
            if (heightHere >= 0) kept.Add(here);
            if (heightHere * heightNext < 0) kept.Add(here + (next - here) * (heightHere / (heightHere - heightNext)));
        }
        return kept.Count >= 3 ? kept.ToImmutable() : [];
    }
}
