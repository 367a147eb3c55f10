namespace Platewright.Geometry;

/// <summary>The convex hull in the plane, with exact signs (Andrew's monotone chain, 1979).</summary>
public static class ConvexPolygon
{
    /// <summary>
    /// Indices of the extreme points, counter-clockwise from the lowest x (then y); points on an edge are left out.
    /// One index where all points are equal, two where they lie on one line.
    /// </summary>
    /// <exception cref="ArgumentException">There is no point, or a coordinate is infinite or NaN.</exception>
    public static int[] Corners(ReadOnlySpan<Vec2> points)
    {
        if (points.IsEmpty) throw new ArgumentException("A hull needs at least one point.", nameof(points));
        foreach (Vec2 v in points)
            if (!double.IsFinite(v.X) || !double.IsFinite(v.Y))
                throw new ArgumentException($"A point of a hull is not finite: {v}.", nameof(points));
        int[] order = Sorted(points);
        List<int> around = [];
        Chain(points, order, around);
        int lower = around.Count;
        Array.Reverse(order);
        Chain(points, order, around);
        // Each chain ends where the other begins.
        if (around.Count - lower > 1) around.RemoveAt(around.Count - 1);
        around.RemoveAt(lower == around.Count ? lower - 1 : lower);
        return around.Count == 0 ? [order[^1]] : [.. around];
    }

    /// <summary>The extreme points themselves, in the order of <see cref="Corners"/>.</summary>
    public static Vec2[] Of(ReadOnlySpan<Vec2> points)
    {
        int[] corners = Corners(points);
        var hull = new Vec2[corners.Length];
        for (int i = 0; i < hull.Length; i++) hull[i] = points[corners[i]];
        return hull;
    }

    /// <summary>Signed area of a polygon, counter-clockwise positive, mm².</summary>
    public static double AreaMm2(ReadOnlySpan<Vec2> polygon)
    {
        double twice = 0;
        for (int i = 2; i < polygon.Length; i++)
            twice += (polygon[i - 1] - polygon[0]).Cross(polygon[i] - polygon[0]);
        return twice / 2;
    }

    /// <summary>Indices by x, then y, then index.</summary>
    private static int[] Sorted(ReadOnlySpan<Vec2> points)
    {
        var order = new int[points.Length];
        var keys = new double[points.Length];
        for (int i = 0; i < order.Length; i++) (order[i], keys[i]) = (i, points[i].X);
        Array.Sort(keys, order);
        for (int from = 0, to; from < order.Length; from = to)
        {
            to = from + 1;
            while (to < order.Length && keys[to] == keys[from]) to++;
            if (to == from + 1) continue;
            Span<int> equal = order.AsSpan(from..to);
            equal.Sort();
            double[] heights = new double[equal.Length];
            for (int i = 0; i < heights.Length; i++) heights[i] = points[equal[i]].Y;
            // Stable by index: equal points keep their order, whichever of them is kept has the same coordinates.
            MemoryExtensions.Sort(heights.AsSpan(), equal);
        }
        return order;
    }

    private static void Chain(ReadOnlySpan<Vec2> p, int[] order, List<int> around)
    {
        int begin = around.Count;
        foreach (int i in order)
        {
            if (around.Count > begin && p[around[^1]].Equals(p[i])) continue;
            while (around.Count - begin >= 2 && Orientation.Of(p[around[^2]], p[around[^1]], p[i]) <= 0)
                around.RemoveAt(around.Count - 1);
            around.Add(i);
        }
    }
}
