namespace Platewright.Geometry;

/// <summary>Where a hull starts from: how many dimensions the points span, exactly, and far-apart points that span
/// them.</summary>
internal static class HullSeed
{
    /// <summary>One more index than the points have dimensions: 1 to 4 affinely independent points.</summary>
    public static int[] Find(ReadOnlySpan<Vec3> points)
    {
        int a = 0, b = 0;
        for (int i = 1; i < points.Length; i++)
        {
            if (Compare(points[i], points[a]) < 0) a = i;
            if (Compare(points[i], points[b]) > 0) b = i;
        }
        if (Compare(points[a], points[b]) == 0) return [a];
        int c = OffTheLine(points, a, b);
        if (c < 0) return [a, b];
        int d = OffThePlane(points, a, b, c);
        return d < 0 ? [a, b, c] : [a, b, c, d];
    }

    /// <summary>The extreme points along axes, face diagonals and cube diagonals: they bound most of a cloud.</summary>
    public static IEnumerable<int> ExtremeInDirections(Vec3[] points)
    {
        List<Vec3> directions = [];
        for (int code = 14; code < 27; code++) directions.Add(new Vec3(code / 9 - 1, code / 3 % 3 - 1, code % 3 - 1));
        int[] low = new int[directions.Count], high = new int[directions.Count];
        Parallel.For(0, directions.Count, k =>
        {
            Vec3 u = directions[k];
            double least = double.PositiveInfinity, most = double.NegativeInfinity;
            for (int i = 0; i < points.Length; i++)
            {
                double along = u.Dot(points[i]);
                if (along < least) (least, low[k]) = (along, i);
                if (along > most) (most, high[k]) = (along, i);
            }
        });
        return low.Concat(high).Distinct();
    }

    /// <summary>By x, then y, then z.</summary>
    public static int Compare(Vec3 p, Vec3 q)
    {
        if (p.X != q.X) return p.X < q.X ? -1 : 1;
        if (p.Y != q.Y) return p.Y < q.Y ? -1 : 1;
        return p.Z == q.Z ? 0 : p.Z < q.Z ? -1 : 1;
    }

    private static int OffTheLine(ReadOnlySpan<Vec3> points, int a, int b)
    {
        Vec3 along = (points[b] - points[a]).Normalized();
        int furthest = a;
        double most = -1;
        for (int i = 0; i < points.Length; i++)
        {
            double off = along.Cross(points[i] - points[a]).Length;
            if (off > most) (most, furthest) = (off, i);
        }
        if (!Orientation.OnOneLine(points[a], points[b], points[furthest])) return furthest;
        for (int i = 0; i < points.Length; i++)
            if (!Orientation.OnOneLine(points[a], points[b], points[i])) return i;
        return -1;
    }

    private static int OffThePlane(ReadOnlySpan<Vec3> points, int a, int b, int c)
    {
        Vec3 normal = (points[b] - points[a]).Cross(points[c] - points[a]).Normalized();
        int furthest = a;
        double most = -1;
        for (int i = 0; i < points.Length; i++)
        {
            double off = Math.Abs(normal.Dot(points[i] - points[a]));
            if (off > most) (most, furthest) = (off, i);
        }
        if (Orientation.Of(points[a], points[b], points[c], points[furthest]) != 0) return furthest;
        for (int i = 0; i < points.Length; i++)
            if (Orientation.Of(points[a], points[b], points[c], points[i]) != 0) return i;
        return -1;
    }
}
