namespace Platewright.Geometry;

/// <summary>The least distance of two parallel planes that hold a hull between them.</summary>
/// <param name="WidthMm">That distance, mm; 0 for a flat hull.</param>
/// <param name="Direction">Unit normal of the planes.</param>
public readonly record struct MinimalWidth(double WidthMm, Vec3 Direction)
{
    /// <summary>
    /// The least width is reached with a face on one plane or an edge on each (Houle and Toussaint 1988). For the
    /// edges, the direction walks over each edge from the normal of one of its faces to that of the other while the
    /// opposite vertex is tracked; where that vertex changes, the two edges lie on parallel planes.
    /// </summary>
    public static MinimalWidth Of(ConvexHull hull)
    {
        if (hull.Dimension < 2) return new MinimalWidth(0, Dull(hull));
        if (hull.Dimension == 2) return new MinimalWidth(0, hull.Faces[0].Normal);
        ReadOnlySpan<Vec3> vertices = hull.Vertices;
        HullEdges edges = HullEdges.Of(hull);
        MinimalWidth best = new(double.PositiveInfinity, default);
        int[] opposite = new int[hull.Faces.Count];
        for (int f = 0; f < opposite.Length; f++)
        {
            Vec3 n = hull.Faces[f].Normal;
            opposite[f] = Lowest(vertices, n);
            double width = hull.Support(n) - n.Dot(vertices[opposite[f]]);
            if (width < best.WidthMm) best = new MinimalWidth(width, n);
        }
        foreach (HullEdge edge in edges.Edges) Walk(hull, edges, edge, opposite[edge.Left], ref best);
        return best;
    }

    private static void Walk(ConvexHull hull, HullEdges edges, HullEdge edge, int opposite, ref MinimalWidth best)
    {
        ReadOnlySpan<Vec3> vertices = hull.Vertices;
        Vec3 from = hull.Faces[edge.Left].Normal, to = hull.Faces[edge.Right].Normal;
        Vec3 own = vertices[edge.To] - vertices[edge.From];
        double at = 0;
        for (int step = 0; step < vertices.Length; step++)
        {
            int next = -1;
            double nearest = 1;
            foreach (int r in edges.Around(opposite))
            {
                Vec3 along = vertices[r] - vertices[opposite];
                double begin = from.Dot(along), end = to.Dot(along);
                if (end >= 0 || begin <= end) continue;
                double crossing = begin / (begin - end);
                if (crossing >= nearest || crossing < at) continue;
                (nearest, next) = (crossing, r);
            }
            if (next < 0) return;
            Vec3 normal = own.Cross(vertices[next] - vertices[opposite]);
            if (normal.Length > 0)
            {
                normal = normal.Normalized();
                double width = hull.Support(normal) + hull.Support(-normal);
                if (width < best.WidthMm) best = new MinimalWidth(width, normal);
            }
            (at, opposite) = (nearest, next);
        }
    }

    private static int Lowest(ReadOnlySpan<Vec3> vertices, Vec3 up)
    {
        int lowest = 0;
        for (int i = 1; i < vertices.Length; i++)
            if (up.Dot(vertices[i]) < up.Dot(vertices[lowest])) lowest = i;
        return lowest;
    }

    private static Vec3 Dull(ConvexHull hull) =>
        hull.Dimension == 0 ? Vec3.UnitZ : Frame.Across((hull.Vertices[1] - hull.Vertices[0]).Normalized()).X;
}
