namespace Platewright.Geometry;

/// <summary>
/// Do two convex hulls lie apart? Looks for a plane between them: the nearest point to the origin of the difference
/// body is approached from simplex to simplex (Gilbert, Johnson and Keerthi 1988). Only a plane that was checked
/// counts, so a failure of the search errs on "they meet".
/// </summary>
internal static class HullSeparation
{
    private const int MostSteps = 64;

    // What a gap must exceed to be one, relative to the coordinates it is computed from.
    private const double Rounding = 1e-13;

    public static bool AreApart(ConvexHull a, ConvexHull b)
    {
        Vec3 direction = a.Centroid - b.Centroid;
        if (direction == default) direction = Vec3.UnitX;
        List<Vec3> simplex = new(4);
        for (int step = 0; step < MostSteps; step++)
        {
            Vec3 onA = Furthest(a, -direction), onB = Furthest(b, direction);
            Vec3 nearest = onA - onB;
            // Every point of a lies beyond every point of b in this direction.
            if (direction.Dot(nearest) > Rounding * direction.Length * (onA.Length + onB.Length)) return true;
            if (simplex.Contains(nearest)) return false;
            simplex.Add(nearest);
            direction = NearestToOrigin(simplex);
            if (simplex.Count == 4 || direction == default) return false;
        }
        return false;
    }

    private static Vec3 Furthest(ConvexHull hull, Vec3 along)
    {
        ReadOnlySpan<Vec3> vertices = hull.Vertices;
        int best = 0;
        double most = double.NegativeInfinity;
        for (int i = 0; i < vertices.Length; i++)
        {
            double at = along.Dot(vertices[i]);
            if (at > most) (most, best) = (at, i);
        }
        return vertices[best];
    }

    /// <summary>The point of a simplex of up to four corners nearest to the origin; keeps only the corners that carry
    /// it.</summary>
    private static Vec3 NearestToOrigin(List<Vec3> simplex)
    {
        Vec3 nearest = default;
        double least = double.PositiveInfinity;
        int kept = 0;
        for (int subset = 1; subset < 1 << simplex.Count; subset++)
        {
            Vec3[] corners = [.. simplex.Where((_, i) => (subset & (1 << i)) != 0)];
            if (!Carries(corners, out Vec3 point) || point.Dot(point) >= least) continue;
            (nearest, least, kept) = (point, point.Dot(point), subset);
        }
        Vec3[] carriers = [.. simplex.Where((_, i) => (kept & (1 << i)) != 0)];
        simplex.Clear();
        simplex.AddRange(carriers);
        return nearest;
    }

    /// <summary>The foot of the origin on the flat through the corners, where it lies among them.</summary>
    private static bool Carries(Vec3[] corners, out Vec3 point)
    {
        Vec3 a = corners[0];
        point = a;
        if (corners.Length == 1) return true;
        if (corners.Length == 2)
        {
            Vec3 ab = corners[1] - a;
            double t = -a.Dot(ab) / ab.Dot(ab);
            point = a + ab * t;
            return t is > 0 and < 1;
        }
        if (corners.Length == 3)
        {
            Vec3 ab = corners[1] - a, ac = corners[2] - a, normal = ab.Cross(ac);
            double square = normal.Dot(normal);
            double u = -a.Cross(ac).Dot(normal) / square, v = a.Cross(ab).Dot(normal) / square;
            point = normal * (a.Dot(normal) / square);
            return u > 0 && v > 0 && u + v < 1;
        }
        point = default;
        return InTetrahedron(corners);
    }

    private static bool InTetrahedron(Vec3[] c)
    {
        int whole = Orientation.Of(c[0], c[1], c[2], c[3]);
        return whole != 0 && Orientation.Of(default, c[1], c[2], c[3]) * whole > 0
            && Orientation.Of(c[0], default, c[2], c[3]) * whole > 0
            && Orientation.Of(c[0], c[1], default, c[3]) * whole > 0
            && Orientation.Of(c[0], c[1], c[2], default) * whole > 0;
    }
}
