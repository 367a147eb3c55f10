namespace Platewright.Sizing.Mixing;

/// <summary>
/// Large problems: an answer and a bound from both sides. The master proposes counts; prices for these counts give a
/// cut for the master and guide the filling of the machines.
/// </summary>
internal static class BracketMix
{
    /// <summary>More kinds than bits of a set.</summary>
    public const int KindsAtMost = 64;

    public static MixOutcome Solve(IntegerMix mix, MixGoal goal, MixEffort effort, CancellationToken cancellation)
    {
        var work = new PricedWork(mix, goal);
        var master = new MixMaster(work, AbleSets(mix));
        var prices = new PriceSearch(work);
        var fill = new MixFill(work);
        master.Add(prices.FirstCut());
        var sets = new SetSearch(mix, new(mix, goal));
        sets.Run(cancellation);
        FoundMix? best = sets.Best;
        if (best is not null) new FreeDual(work).Run(best.Value, master, cancellation);
        long tried = long.MaxValue;
        void Explore(int[] counts)
        {
            int[] chosen = [.. Enumerable.Range(0, mix.Kinds).Where(k => counts[k] > 0)];
            int[] open = chosen.Length == 0 ? [.. Enumerable.Range(0, mix.Kinds)] : chosen;
            double value = prices.Raise(counts, open, best?.Value, master, cancellation);
            if (fill.Fill(counts, chosen) is { } found && (best is null || found.Value < best.Value)) best = found;
            master.Forbid(counts);
            // Every value is whole, so no mix with these counts goes below this.
            if (value < GreatestBound) tried = Math.Min(tried, (long)Math.Floor(value));
        }
        int[][] promising = [.. sets.Promising(PromisingSets).DistinctBy(c => string.Join(',', c))];
        foreach (int[] counts in promising) Explore(counts);
        long bound = long.MinValue;
        // Where no answer is in sight, proving that there is none is left to the question of what can be reached.
        // That question is only asked when the first had no answer: it gets half the rounds.
        int rounds = best is null ? Math.Min(effort.Rounds, RoundsInTheDark)
            : goal.Coverage ? (effort.Rounds + 1) / 2
            : effort.Rounds;
        for (int round = 0; round < rounds; round++)
        {
            (int[]? counts, long untried) = master.Next(effort, cancellation);
            bound = Math.Max(bound, Math.Min(untried, tried));
            if (counts is null)
            {
                bool none = untried == long.MaxValue;
                if (none && best is null && tried == long.MaxValue) return new(null, bound, MixStop.Proved);
                return Outcome(best, bound, none ? MixStop.NothingLeftToTry : MixStop.EffortSpent);
            }
            if (best is not null && Close(best.Value, bound, effort.RelativeGap))
                return Outcome(best, bound, MixStop.GapReached);
            Explore(counts);
        }
        return Outcome(best, bound, MixStop.EffortSpent);
    }

    private const double GreatestBound = 1e18;

    private const int PromisingSets = 6;

    private const int RoundsInTheDark = 2;

    private static MixOutcome Outcome(FoundMix? best, long bound, MixStop stop) =>
        best is not null && bound >= best.Value ? new(best, best.Value, MixStop.Proved) : new(best, bound, stop);

    private static bool Close(long value, long bound, double gap) => value - bound <= Math.Abs(value) * gap;

    private static ulong[] AbleSets(IntegerMix mix)
    {
        var able = new ulong[mix.Jobs];
        for (int j = 0; j < mix.Jobs; j++)
        {
            for (int k = 0; k < mix.Kinds; k++)
            {
                if (mix.Can(j, k)) able[j] |= 1UL << k;
            }
        }
        return able;
    }
}
