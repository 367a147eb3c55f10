using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A convex polygon as walls: n · p ≤ c with unit outward normals.</summary>
internal static class PolygonWalls
{
    public static (Vec2[] Normals, double[] Offsets) Of(ReadOnlySpan<Vec2> polygon)
    {
        var normals = new Vec2[polygon.Length];
        var offsets = new double[polygon.Length];
        for (int i = 0; i < polygon.Length; i++)
        {
            Vec2 edge = polygon[(i + 1) % polygon.Length] - polygon[i];
            normals[i] = new Vec2(edge.Y, -edge.X).Normalized();
            offsets[i] = normals[i].Dot(polygon[i]);
        }
        return (normals, offsets);
    }

    /// <summary>Three walls whose normals hold each other back (a pair of opposite walls is completed by a third).</summary>
    /// <exception cref="ArgumentException">The polygon is not convex and counter-clockwise.</exception>
    public static (int A, int B, int C) HoldingTriple(ReadOnlySpan<Vec2> normals, ReadOnlySpan<double> offsets)
    {
        var programme = new WallProgramme();
        for (int a = 0; a < normals.Length; a++)
            for (int b = a + 1; b < normals.Length; b++)
                for (int c = b + 1; c < normals.Length; c++)
                    if (programme.Start(At(normals, offsets, a), At(normals, offsets, b), At(normals, offsets, c))) return (a, b, c);
        throw new ArgumentException("The walls do not close: not a convex, counter-clockwise polygon.", nameof(normals));

        static Wall At(ReadOnlySpan<Vec2> normals, ReadOnlySpan<double> offsets, int i) => new(normals[i], offsets[i], 0, i);
    }

    /// <summary>The least distance between two parallel lines that enclose the polygon, mm, and their normal.</summary>
    public static (double WidthMm, Vec2 Normal) LeastWidth(ReadOnlySpan<Vec2> polygon)
    {
        (Vec2[] normals, double[] offsets) = Of(polygon);
        (double WidthMm, Vec2 Normal) least = (double.PositiveInfinity, default);
        for (int i = 0; i < normals.Length; i++)
        {
            double low = double.PositiveInfinity;
            foreach (Vec2 p in polygon) low = Math.Min(low, normals[i].Dot(p));
            if (offsets[i] - low < least.WidthMm) least = (offsets[i] - low, normals[i]);
        }
        return least;
    }

    /// <summary>The largest circle inside the walls: centre and radius, mm.</summary>
    public static (Vec2 Center, double RadiusMm) Incircle(Vec2[] normals, double[] offsets, (int A, int B, int C) start)
    {
        var walls = new Wall[normals.Length];
        for (int i = 0; i < walls.Length; i++) walls[i] = new Wall(normals[i], offsets[i], 1, i);
        var programme = new WallProgramme();
        programme.Start(walls[start.A], walls[start.B], walls[start.C]);
        programme.Solve(walls);
        // A unit circle in walls moved out by σ: shrink both by σ.
        return (programme.Offset / programme.Value, 1 / programme.Value);
    }

    /// <summary>What is left of a convex polygon when every wall moves in by <paramref name="mm"/>; may be empty.</summary>
    public static Vec2[] Inset(ReadOnlySpan<Vec2> polygon, double mm)
    {
        (Vec2[] normals, double[] offsets) = Of(polygon);
        List<Vec2> left = [.. polygon];
        if (mm > 0)
            for (int i = 0; i < normals.Length; i++) left = ClippedBy(left, normals[i], offsets[i] - mm);
        return [.. left];
    }

    /// <summary>The part of a convex polygon with n · p ≤ c.</summary>
    public static List<Vec2> ClippedBy(List<Vec2> polygon, Vec2 normal, double offset)
    {
        var left = new List<Vec2>();
        for (int i = 0; i < polygon.Count; i++)
        {
            Vec2 p = polygon[i], q = polygon[(i + 1) % polygon.Count];
            double dp = normal.Dot(p) - offset, dq = normal.Dot(q) - offset;
            if (dp <= 0) left.Add(p);
            if (dp < 0 && dq > 0 || dp > 0 && dq < 0) left.Add(p + (q - p) * (dp / (dp - dq)));
        }
        return left;
    }
}
