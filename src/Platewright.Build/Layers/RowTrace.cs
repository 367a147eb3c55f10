using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>
/// The outlines of a region of rows. The ends of runs lie on the true outline; between two rows a corner is put back
/// where the lines through the ends on both sides meet, if they meet between these rows.
/// </summary>
internal static class RowTrace
{
    /// <summary>A corner nearer than this to the line it would bend is left out, in rows.</summary>
    private const double LeastBend = 0.01;

    /// <summary>Closed loops, material to the left, with all points that were found.</summary>
    public static List<Vec2[]> Trace(Rows rows)
    {
        List<Vec2[]> loops = [];
        if (rows.IsEmpty) return loops;
        int[] next = Link(rows, out int[] rowOf);
        var done = new bool[next.Length];
        List<int> nodes = [];
        for (int start = 0; start < next.Length; start++)
        {
            if (done[start]) continue;
            nodes.Clear();
            for (int node = start; !done[node]; node = next[node])
            {
                done[node] = true;
                nodes.Add(node);
            }
            loops.Add(Points(rows, rowOf, nodes));
        }
        return loops;
    }

    // A node is an end of a run: even ones are left ends, odd ones right ends.
    private static int[] Link(Rows rows, out int[] rowOf)
    {
        ReadOnlySpan<int> starts = rows.Starts;
        ReadOnlySpan<double> ends = rows.Ends;
        var next = new int[ends.Length];
        rowOf = new int[ends.Length];
        for (int r = 0; r < rows.Count; r++)
            for (int k = starts[r]; k < starts[r + 1]; k++) rowOf[k] = rows.First + r;
        for (int r = -1; r < rows.Count; r++)
        {
            int i = r < 0 ? 0 : starts[r], iEnd = r < 0 ? 0 : starts[r + 1];
            int j = r + 1 < rows.Count ? starts[r + 1] : 0, jEnd = r + 1 < rows.Count ? starts[r + 2] : 0;
            LinkRows(ends, next, i, iEnd, j, jEnd);
        }
        return next;
    }

    private static void LinkRows(ReadOnlySpan<double> ends, int[] next, int i, int iEnd, int j, int jEnd)
    {
        while (i < iEnd || j < jEnd)
        {
            if (j >= jEnd || (i < iEnd && ends[i + 1] <= ends[j]))
            {
                next[i + 1] = i;
                i += 2;
                continue;
            }
            if (i >= iEnd || ends[j + 1] <= ends[i])
            {
                next[j] = j + 1;
                j += 2;
                continue;
            }
            next[j] = i;
            while (true)
            {
                if (ends[i + 1] < ends[j + 1])
                {
                    if (i + 2 >= iEnd || ends[i + 2] >= ends[j + 1]) break;
                    next[i + 1] = i + 2;
                    i += 2;
                }
                else
                {
                    if (j + 2 >= jEnd || ends[j + 2] >= ends[i + 1]) break;
                    next[j + 2] = j + 1;
                    j += 2;
                }
            }
            next[i + 1] = j + 1;
            i += 2;
            j += 2;
        }
    }

    private static Vec2[] Points(Rows rows, int[] rowOf, List<int> nodes)
    {
        int n = nodes.Count;
        List<Vec2> points = new(n + n / 4);
        for (int k = 0; k < n; k++)
        {
            int p = nodes[k], q = nodes[(k + 1) % n];
            Vec2 here = At(rows, rowOf, p);
            points.Add(here);
            if (n < 4) continue;
            int o = nodes[(k + n - 1) % n], s = nodes[(k + 2) % n];
            // Between the rows of a side, above a cap that runs right to left, below one that runs left to right.
            int low = rowOf[p] == rowOf[q] ? (p % 2 == 1 ? rowOf[p] : rowOf[p] - 1) : Math.Min(rowOf[p], rowOf[q]);
            if (rowOf[o] == rowOf[p] || rowOf[s] == rowOf[q]) continue;
            Vec2? met = Corner(
                At(rows, rowOf, o), here, At(rows, rowOf, q), At(rows, rowOf, s), LeastBend * rows.PitchMm);
            if (met is not { } corner) continue;
            double yLow = rows.YOf(low), yHigh = rows.YOf(low + 1);
            if (corner.Y >= yLow && corner.Y <= yHigh) points.Add(corner);
        }
        return [.. points];
    }

    /// <summary>Where the line from o through p meets the line from s through q, ahead of both.</summary>
    private static Vec2? Corner(Vec2 o, Vec2 p, Vec2 q, Vec2 s, double leastBendMm)
    {
        Vec2 d = p - o, e = q - s, gap = q - p;
        double cross = d.Cross(e);
        if (cross == 0) return null;
        double t = gap.Cross(e) / cross, u = gap.Cross(d) / cross;
        if (t <= 0 || u <= 0) return null;
        Vec2 corner = p + d * t;
        double length = gap.Length;
        return length > 0 && Math.Abs(gap.Cross(corner - p)) < leastBendMm * length ? null : corner;
    }

    private static Vec2 At(Rows rows, int[] rowOf, int node) => new(rows.Ends[node], rows.YOf(rowOf[node]));
}
