namespace Platewright.Build.Layers;

/// <summary>Union, difference and intersection of regions with the same pitch.</summary>
public static class RowSets
{
    // What it collects is handed on as a copy: nothing outlives a call but the room it takes.
    [ThreadStatic]
    private static RowsBuilder? _builder;

    public static Rows Unite(Rows a, Rows b)
    {
        if (a.IsEmpty) return b;
        if (b.IsEmpty) return a;
        RowsBuilder result = Begin(a, b, Math.Min(a.First, b.First));
        int end = Math.Max(a.End, b.End);
        for (int row = Math.Min(a.First, b.First); row < end; row++)
        {
            result.BeginRow();
            UniteRow(result, a[row], b[row]);
        }
        return result.Build();
    }

    public static Rows Subtract(Rows a, Rows b)
    {
        if (a.IsEmpty || b.IsEmpty) return a;
        RowsBuilder result = Begin(a, b, a.First);
        for (int row = a.First; row < a.End; row++)
        {
            result.BeginRow();
            SubtractRow(result, a[row], b[row]);
        }
        return result.Build();
    }

    public static Rows Intersect(Rows a, Rows b)
    {
        int first = Math.Max(a.First, b.First), end = Math.Min(a.End, b.End);
        RowsBuilder result = Begin(a, b, first);
        for (int row = first; row < end; row++)
        {
            result.BeginRow();
            ReadOnlySpan<double> p = a[row], q = b[row];
            for (int i = 0, j = 0; i < p.Length && j < q.Length;)
            {
                result.Add(Math.Max(p[i], q[j]), Math.Min(p[i + 1], q[j + 1]));
                if (p[i + 1] < q[j + 1]) i += 2;
                else j += 2;
            }
        }
        return result.Build();
    }

    /// <summary>The runs of <paramref name="a"/> that share a stretch with <paramref name="b"/>, whole.</summary>
    public static Rows KeepTouched(Rows a, Rows b)
    {
        if (a.IsEmpty || b.IsEmpty) return Rows.Empty(a.PitchMm);
        RowsBuilder result = Begin(a, b, a.First);
        for (int row = a.First; row < a.End; row++)
        {
            result.BeginRow();
            ReadOnlySpan<double> p = a[row], q = b[row];
            for (int i = 0, j = 0; i < p.Length; i += 2)
            {
                while (j < q.Length && q[j + 1] <= p[i]) j += 2;
                if (j < q.Length && q[j] < p[i + 1]) result.Add(p[i], p[i + 1]);
            }
        }
        return result.Build();
    }

    internal static void UniteRow(RowsBuilder result, ReadOnlySpan<double> p, ReadOnlySpan<double> q)
    {
        double from = double.NaN, to = double.NegativeInfinity;
        for (int i = 0, j = 0; i < p.Length || j < q.Length;)
        {
            bool first = j >= q.Length || (i < p.Length && p[i] <= q[j]);
            double low = first ? p[i] : q[j], high = first ? p[i + 1] : q[j + 1];
            if (first) i += 2;
            else j += 2;
            if (low > to)
            {
                if (!double.IsNaN(from)) result.Add(from, to);
                (from, to) = (low, high);
            }
            else
            {
                to = Math.Max(to, high);
            }
        }
        if (!double.IsNaN(from)) result.Add(from, to);
    }

    internal static void SubtractRow(RowsBuilder result, ReadOnlySpan<double> p, ReadOnlySpan<double> q)
    {
        int j = 0;
        for (int i = 0; i < p.Length; i += 2)
        {
            double from = p[i], to = p[i + 1];
            while (j < q.Length && q[j + 1] <= from) j += 2;
            for (int k = j; k < q.Length && q[k] < to; k += 2)
            {
                if (q[k] > from) result.Add(from, q[k]);
                from = Math.Max(from, q[k + 1]);
            }
            if (from < to) result.Add(from, to);
        }
    }

    private static RowsBuilder Begin(Rows a, Rows b, int first)
    {
        if (!a.IsEmpty && !b.IsEmpty && a.PitchMm != b.PitchMm)
            throw new ArgumentException($"Regions need the same pitch, got {a.PitchMm} and {b.PitchMm} mm.", nameof(b));
        RowsBuilder result = _builder ??= new RowsBuilder();
        result.Begin(a.PitchMm, first);
        return result;
    }
}
