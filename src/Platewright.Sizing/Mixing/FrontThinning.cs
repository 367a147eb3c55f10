using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>Which mixes are beaten by none, and which of these to draw.</summary>
internal static class FrontThinning
{
    /// <summary>In a fixed order; of mixes with the same figures the first.</summary>
    public static ImmutableArray<FrontMix> NonDominated(IEnumerable<FrontMix> all)
    {
        var kept = new List<FrontMix>();
        // Nothing can be beaten by one that comes after it in this order.
        foreach (FrontMix mix in all.OrderByDescending(m => m.CoveredShare).ThenBy(m => m.MonthlyCost)
            .ThenBy(m => m.TurnRoundHours).ThenBy(m => m.FloorM2).ThenBy(m => m.PeakW))
        {
            if (!kept.Exists(k => k.NowhereWorseThan(mix))) kept.Add(mix);
        }
        return [.. kept];
    }

    /// <summary>Ends of every criterion and the cheapest mixes; then always the one farthest from those kept.</summary>
    public static ImmutableArray<FrontMix> Thin(ImmutableArray<FrontMix> front, int keep)
    {
        if (front.Length <= keep) return front;
        double[][] points = Scaled(front);
        var kept = new SortedSet<int>(Enumerable.Range(0, front.Length).Where(i => front[i].Cheapest is not null));
        for (int c = 0; c < FrontMix.Criteria; c++)
        {
            kept.Add(Enumerable.Range(0, front.Length).MinBy(i => points[i][c]));
            kept.Add(Enumerable.Range(0, front.Length).MaxBy(i => points[i][c]));
        }
        double[] nearest = [.. points.Select(p => kept.Min(k => Distance(p, points[k])))];
        while (kept.Count < keep)
        {
            int farthest = Enumerable.Range(0, front.Length).MaxBy(i => kept.Contains(i) ? -1 : nearest[i]);
            kept.Add(farthest);
            for (int i = 0; i < nearest.Length; i++)
                nearest[i] = Math.Min(nearest[i], Distance(points[i], points[farthest]));
        }
        return [.. kept.Select(i => front[i])];
    }

    private static double[][] Scaled(ImmutableArray<FrontMix> front)
    {
        double[][] points =
            [.. front.Select(m => Enumerable.Range(0, FrontMix.Criteria).Select(m.Criterion).ToArray())];
        for (int c = 0; c < FrontMix.Criteria; c++)
        {
            double least = points.Min(p => p[c]), width = points.Max(p => p[c]) - least;
            foreach (double[] p in points) p[c] = width > 0 ? (p[c] - least) / width : 0;
        }
        return points;
    }

    private static double Distance(double[] a, double[] b) => a.Zip(b, (x, y) => (x - y) * (x - y)).Sum();
}
