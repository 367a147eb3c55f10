namespace Platewright.Build.Layers;

/// <summary>Keeps a share of the rows of a region, spread evenly.</summary>
public static class RowChoice
{
    /// <summary>Every row for a share of 1, every second for ½, none for 0.</summary>
    public static Rows Keep(Rows rows, double share)
    {
        if (share >= 1) return rows;
        RowsBuilder kept = new();
        kept.Begin(rows.PitchMm, rows.First);
        for (int row = rows.First; row < rows.End; row++)
        {
            kept.BeginRow();
            if (Math.Floor((row + 1) * share) <= Math.Floor(row * share)) continue;
            ReadOnlySpan<double> ends = rows[row];
            for (int i = 0; i < ends.Length; i += 2) kept.Add(ends[i], ends[i + 1]);
        }
        return kept.Build();
    }
}
