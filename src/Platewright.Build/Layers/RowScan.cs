using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>
/// Turns closed outlines into rows. Each edge counts one turn up or down where it crosses a row; inside is where the count is
/// not 0 (the non-zero winding rule), so that overlapping shells are united. Not for use by several threads at once.
/// </summary>
internal sealed class RowScan
{
    private readonly RowEntries _crossings = new();
    private readonly RowsBuilder _rows = new();

    /// <summary>Least and greatest winding met by the last scan.</summary>
    public int LeastWinding { get; private set; }

    public int GreatestWinding { get; private set; }

    /// <summary>The region inside the loops, each turned by an angle first where a direction is given.</summary>
    /// <param name="loops">Closed outlines.</param>
    /// <param name="pitchMm">Distance of the rows, mm.</param>
    /// <param name="along">Unit direction the rows run in; null for x.</param>
    public Rows Scan(IReadOnlyList<Vec2[]> loops, double pitchMm, Vec2? along = null)
    {
        _crossings.Clear();
        foreach (Vec2[] loop in loops) Cross(loop, pitchMm, along);
        LeastWinding = GreatestWinding = 0;
        if (_crossings.IsEmpty) return Rows.Empty(pitchMm);
        _crossings.Sort();
        _rows.Begin(pitchMm, _crossings.First);
        for (int row = _crossings.First; row < _crossings.End; row++)
        {
            _rows.BeginRow();
            FillRow(_crossings[row]);
        }
        return _rows.Build();
    }

    private void Cross(Vec2[] loop, double pitch, Vec2? along)
    {
        Vec2 a = Turn(loop[^1], along);
        double ra = a.Y / pitch - 0.5;
        foreach (Vec2 corner in loop)
        {
            Vec2 b = Turn(corner, along);
            double rb = b.Y / pitch - 0.5;
            int from = (int)Math.Ceiling(Math.Min(ra, rb)), to = (int)Math.Ceiling(Math.Max(ra, rb));
            if (from < to)
            {
                double slope = (b.X - a.X) / (rb - ra);
                double turn = ra < rb ? 1 : -1;
                for (int row = from; row < to; row++) _crossings.Add(row, a.X + (row - ra) * slope, turn);
            }
            (a, ra) = (b, rb);
        }
    }

    private void FillRow(ReadOnlySpan<(double X, double Turn)> crossings)
    {
        int winding = 0;
        double from = 0;
        for (int i = 0; i < crossings.Length; i++)
        {
            int before = winding;
            winding += (int)crossings[i].Turn;
            LeastWinding = Math.Min(LeastWinding, -winding);
            GreatestWinding = Math.Max(GreatestWinding, -winding);
            if (before == 0) from = crossings[i].X;
            else if (winding == 0) _rows.Add(from, crossings[i].X);
        }
    }

    /// <summary>The point in axes whose x runs along a direction.</summary>
    private static Vec2 Turn(Vec2 p, Vec2? along) =>
        along is { } u ? new Vec2(p.Dot(u), u.Cross(p)) : p;
}
