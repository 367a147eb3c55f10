namespace Platewright.Formats.Toml;

/// <summary>What a misspelt name may have meant.</summary>
public static class Suggestion
{
    /// <summary>Fewer letters begin too many names by chance.</summary>
    private const int LeastBeginning = 3;

    /// <summary>
    /// The known name nearest to what was written, by the fewest letters inserted, left out, replaced or swapped with
    /// their neighbour (optimal string alignment distance), case aside; null when none is near: more than a third of
    /// the letters differ. Failing that, the only known name that goes on from what was written, as where the unit was
    /// forgotten.
    /// </summary>
    public static string? For(string written, IEnumerable<string> known)
    {
        string[] names = [.. known];
        string? best = null;
        int bestDistance = int.MaxValue;
        foreach (string name in names)
        {
            int distance = Distance(written.ToLowerInvariant(), name.ToLowerInvariant());
            int allowed = Math.Max(1, Math.Max(written.Length, name.Length) / 3);
            if (distance > allowed || distance >= bestDistance) continue;
            (best, bestDistance) = (name, distance);
        }
        if (best is not null || written.Length < LeastBeginning) return best;
        string[] longer = [.. names.Where(n => n.StartsWith(written, StringComparison.OrdinalIgnoreCase))];
        return longer is [string only] ? only : null;
    }

    /// <summary><c> Did you mean "…"?</c> with a leading space, or nothing.</summary>
    public static string Sentence(string written, IEnumerable<string> known) =>
        For(written, known) is { } near ? $" Did you mean \"{near}\"?" : "";

    private static int Distance(string a, string b)
    {
        int[] beforeLast = new int[b.Length + 1];
        int[] last = new int[b.Length + 1];
        int[] row = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++) last[j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int change = last[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                row[j] = Math.Min(change, Math.Min(last[j], row[j - 1]) + 1);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                if (swapped) row[j] = Math.Min(row[j], beforeLast[j - 2] + 1);
            }
            (beforeLast, last, row) = (last, row, beforeLast);
        }
        return last[b.Length];
    }
}
