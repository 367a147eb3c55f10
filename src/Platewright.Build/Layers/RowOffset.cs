using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>
/// Moves the edge of a region inward or outward by a distance. On one side of each edge lies a rectangle, and around each corner
/// that points that way a disc, of all points nearer than the distance; each meets a row in one stretch, known exactly.
/// So a row of the result is the exact cut of the exact offset of the polygon. Not for use by several threads at once.
/// </summary>
internal sealed class RowOffset
{
    private readonly RowEntries _stretches = new();
    private readonly RowsBuilder _rows = new();
    private double[] _low = new double[64];
    private double[] _high = new double[64];
    private double[] _merged = new double[64];

    /// <summary>What of a region is at least <paramref name="distanceMm"/> from its outlines.</summary>
    /// <param name="region">The region.</param>
    /// <param name="loops">Its outlines, material to the left.</param>
    /// <param name="distanceMm">The distance, mm, above 0.</param>
    public Rows Shrink(Rows region, IReadOnlyList<Vec2[]> loops, double distanceMm)
    {
        Collect(loops, region.PitchMm, distanceMm, inward: true);
        _rows.Begin(region.PitchMm, region.First);
        for (int row = region.First; row < region.End; row++)
        {
            _rows.BeginRow();
            RowSets.SubtractRow(_rows, region[row], Merge(_stretches[row]));
        }
        return _rows.Build();
    }

    /// <summary>A region with everything nearer than a distance to its outlines.</summary>
    public Rows Grow(Rows region, IReadOnlyList<Vec2[]> loops, double distanceMm)
    {
        Collect(loops, region.PitchMm, distanceMm, inward: false);
        if (_stretches.IsEmpty) return region;
        int first = Math.Min(region.IsEmpty ? int.MaxValue : region.First, _stretches.First);
        int end = Math.Max(region.IsEmpty ? int.MinValue : region.End, _stretches.End);
        _rows.Begin(region.PitchMm, first);
        for (int row = first; row < end; row++)
        {
            _rows.BeginRow();
            RowSets.UniteRow(_rows, region[row], Merge(_stretches[row]));
        }
        return _rows.Build();
    }

    /// <summary>Stretches of a row, sorted by their begin, as runs that do not overlap.</summary>
    private ReadOnlySpan<double> Merge(ReadOnlySpan<(double X, double Value)> near)
    {
        if (near.IsEmpty) return [];
        if (2 * near.Length > _merged.Length) _merged = new double[4 * near.Length];
        int count = 0;
        (double from, double to) = near[0];
        foreach ((double low, double high) in near[1..])
        {
            if (low <= to)
            {
                to = Math.Max(to, high);
                continue;
            }
            _merged[count++] = from;
            _merged[count++] = to;
            (from, to) = (low, high);
        }
        _merged[count++] = from;
        _merged[count++] = to;
        return _merged.AsSpan(0, count);
    }

    private void Collect(IReadOnlyList<Vec2[]> loops, double pitch, double distance, bool inward)
    {
        _stretches.Clear();
        foreach (Vec2[] loop in loops)
        {
            Vec2 a = loop[^2], b = loop[^1];
            foreach (Vec2 c in loop)
            {
                Vec2 before = b - a, after = c - b;
                double bend = before.Cross(after);
                if (inward ? bend < 0 : bend > 0) AddDisc(b, pitch, distance);
                AddRectangle(b, c, pitch, inward ? distance : -distance);
                (a, b) = (b, c);
            }
        }
        if (!_stretches.IsEmpty) _stretches.Sort();
    }

    private void AddDisc(Vec2 centre, double pitch, double radius)
    {
        int from = (int)Math.Ceiling((centre.Y - radius) / pitch - 0.5);
        int to = (int)Math.Floor((centre.Y + radius) / pitch - 0.5);
        for (int row = from; row <= to; row++)
        {
            double dy = (row + 0.5) * pitch - centre.Y;
            double half = Math.Sqrt(Math.Max(0, radius * radius - dy * dy));
            _stretches.Add(row, centre.X - half, centre.X + half);
        }
    }

    /// <summary>The rectangle between an edge and its parallel on the left (on the right for a distance below 0).</summary>
    private void AddRectangle(Vec2 a, Vec2 b, double pitch, double distance)
    {
        Vec2 d = b - a;
        double length = d.Length;
        if (length == 0) return;
        Vec2 out1 = new Vec2(-d.Y, d.X) * (distance / length);
        Vec2 c = b + out1, e = a + out1;
        double ra = a.Y / pitch - 0.5, rb = b.Y / pitch - 0.5, rc = c.Y / pitch - 0.5, re = e.Y / pitch - 0.5;
        int first = (int)Math.Ceiling(Math.Min(Math.Min(ra, rb), Math.Min(rc, re)));
        int last = (int)Math.Floor(Math.Max(Math.Max(ra, rb), Math.Max(rc, re)));
        int count = last - first + 1;
        if (count <= 0) return;
        if (count > _low.Length) (_low, _high) = (new double[2 * count], new double[2 * count]);
        Array.Fill(_low, double.PositiveInfinity, 0, count);
        Array.Fill(_high, double.NegativeInfinity, 0, count);
        Span(a, ra, b, rb, pitch, first, count);
        Span(b, rb, c, rc, pitch, first, count);
        Span(c, rc, e, re, pitch, first, count);
        Span(e, re, a, ra, pitch, first, count);
        for (int i = 0; i < count; i++) if (_low[i] < _high[i]) _stretches.Add(first + i, _low[i], _high[i]);
    }

    private void Span(Vec2 a, double ra, Vec2 b, double rb, double pitch, int first, int count)
    {
        if (a.Y > b.Y) (a, ra, b, rb) = (b, rb, a, ra);
        double height = b.Y - a.Y;
        int from = Math.Max(0, (int)Math.Ceiling(ra) - first);
        int to = Math.Min(count - 1, (int)Math.Floor(rb) - first);
        if (from > to) return;
        double slope = height > 0 ? (b.X - a.X) / height : 0;
        for (int i = from; i <= to; i++)
        {
            double x = a.X + ((first + i + 0.5) * pitch - a.Y) * slope;
            if (x < _low[i]) _low[i] = x;
            if (x > _high[i]) _high[i] = x;
        }
    }
}
