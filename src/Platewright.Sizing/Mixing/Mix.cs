using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>Finds the cheapest mix of machines.</summary>
public static class Mix
{
    /// <summary>
    /// The cheapest mix that covers the share within the limits. Where no mix does, the cheapest at the greatest share
    /// found, and which limits alone are in the way.
    /// </summary>
    /// <param name="problem">What is asked.</param>
    /// <param name="effort">How hard to search; null for the default.</param>
    /// <param name="cancellation">Stops the search with an exception, never with half an answer.</param>
    /// <exception cref="ArgumentException">The problem is outside its ranges; the message names the value.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static MixAnswer Solve(
        MixProblem problem, MixEffort? effort = null, CancellationToken cancellation = default) =>
        Solve(problem, effort ?? new(), explain: true, cancellation);

    /// <summary>The same; which limits are in the way is only looked for where it is to be explained.</summary>
    internal static MixAnswer Solve(MixProblem problem, MixEffort effort, bool explain, CancellationToken cancellation)
    {
        IntegerMix whole = MixGrid.Of(problem);
        if (whole.Broken(whole.Least) is { } broken)
            return new(MixStatus.LeastCountsBreakLimits, null, 0, 0, [broken], MixStop.Proved);
        MixReduction reduction = MixReduction.Of(whole);
        long target = MixGrid.Target(whole, problem.LeastShare);
        MixOutcome? cheapest = null;
        long reach = reduction.Makeable;
        if (target <= reach)
        {
            cheapest = Run(reduction, MixGoal.Cheapest(target), effort, cancellation);
            if (cheapest.Best is not null) return Answer(whole, reduction, cheapest, reach, null, []);
        }
        MixOutcome most = Run(reduction, MixGoal.MostCoverage, effort, cancellation);
        long covered = most.Best is null ? 0 : -most.Best.Value;
        reach = Math.Min(reach, -most.Bound);
        bool unreachable = cheapest is null or { ProvedNone: true } || reach < target;
        ImmutableArray<MixLimit> blocking =
            covered >= target || !explain ? [] : Blocking(whole, target, effort, cancellation);
        cheapest = Run(reduction, MixGoal.Cheapest(Math.Min(target, covered)), effort, cancellation);
        if (cheapest.Best is null) cheapest = cheapest with { Best = most.Best ?? Nothing(reduction.Mix) };
        MixStatus? status = covered >= target ? null : unreachable ? MixStatus.Unreachable : MixStatus.Undecided;
        return Answer(whole, reduction, cheapest, reach, status, blocking);
    }

    /// <summary>The limits that, lifted one at a time, let the target be reached.</summary>
    private static ImmutableArray<MixLimit> Blocking(
        IntegerMix whole, long target, MixEffort effort, CancellationToken cancellation)
    {
        var blocking = ImmutableArray.CreateBuilder<MixLimit>();
        foreach (MixLimit limit in Enum.GetValues<MixLimit>())
        {
            if (limit != MixLimit.Counts && whole.Limit[(int)limit] == IntegerMix.NoLimit) continue;
            MixReduction lifted = MixReduction.Of(whole.Without(limit));
            if (lifted.Makeable < target) continue;
            MixOutcome outcome = Run(lifted, MixGoal.MostCoverage, effort with { Rounds = 1 }, cancellation);
            if (outcome.Best is { } best && -best.Value >= target) blocking.Add(limit);
        }
        return blocking.ToImmutable();
    }

    private static MixOutcome Run(
        MixReduction reduction, MixGoal goal, MixEffort effort, CancellationToken cancellation)
    {
        IntegerMix mix = reduction.Mix;
        bool bracket = mix.Kinds is > 0 and <= BracketMix.KindsAtMost;
        if (bracket && mix.Pairs > effort.ExactAssignments) return BracketMix.Solve(mix, goal, effort, cancellation);
        MixOutcome exact = ExactMix.Solve(mix, goal, effort, cancellation);
        if (!bracket || exact.Stop == MixStop.Proved) return exact;
        MixOutcome both = BracketMix.Solve(mix, goal, effort, cancellation);
        if (both.ProvedNone) return both;
        FoundMix? best = both.Best is null || exact.Best?.Value <= both.Best.Value ? exact.Best : both.Best;
        long bound = Math.Max(exact.Bound, both.Bound);
        return best is not null && bound >= best.Value
            ? new(best, best.Value, MixStop.Proved)
            : new(best, bound, both.Stop);
    }

    private static FoundMix Nothing(IntegerMix mix)
    {
        var kindOfJob = new int[mix.Jobs];
        Array.Fill(kindOfJob, -1);
        return new([.. mix.Least], kindOfJob, 0);
    }

    private static MixAnswer Answer(
        IntegerMix whole, MixReduction reduction, MixOutcome outcome, long reach, MixStatus? status,
        ImmutableArray<MixLimit> blocking)
    {
        (int[] counts, int[] kindOfJob) = reduction.Expand(outcome.Best!);
        MachineMix mix = MixGrid.Read(whole, counts, kindOfJob);
        decimal bound = Math.Clamp(MixGrid.ToMoney(outcome.Bound), 0, mix.MonthlyCost);
        return new(
            status ?? (outcome.Stop == MixStop.Proved ? MixStatus.Optimal : MixStatus.Within),
            mix,
            bound,
            MixGrid.ShareOf(whole, reach),
            blocking,
            outcome.Stop);
    }
}
