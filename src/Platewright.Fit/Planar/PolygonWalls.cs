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

    /// <summary>The least distance between two parallel lines that enclose the polygon, mm.</summary>
    public static double LeastWidth(ReadOnlySpan<Vec2> polygon)
    {
        (Vec2[] normals, double[] offsets) = Of(polygon);
        double least = double.PositiveInfinity;
        for (int i = 0; i < normals.Length; i++)
        {
            double low = double.PositiveInfinity;
            foreach (Vec2 p in polygon) low = Math.Min(low, normals[i].Dot(p));
            least = Math.Min(least, offsets[i] - low);
        }
        return least;
    }

    /// <summary>Radius of the largest circle inside the walls, mm.</summary>
    public static double Inradius(Vec2[] normals, double[] offsets, (int A, int B, int C) start)
    {
        var walls = new Wall[normals.Length];
        for (int i = 0; i < walls.Length; i++) walls[i] = new Wall(normals[i], offsets[i], 1, i);
        var programme = new WallProgramme();
        programme.Start(walls[start.A], walls[start.B], walls[start.C]);
        programme.Solve(walls);
        return 1 / programme.Value;
    }
}
