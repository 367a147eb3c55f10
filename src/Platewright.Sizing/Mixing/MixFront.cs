using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>The mixes none of which another of those tried beats in everything.</summary>
/// <param name="Mixes">Most covered first, then cheapest.</param>
/// <param name="KindsTogether">Every set of at most this many kinds was tried.</param>
/// <param name="NonDominated">How many there were before thinning.</param>
public sealed record MixFront(ImmutableArray<FrontMix> Mixes, int KindsTogether, int NonDominated)
{
    private const int SetsAtMost = 10_000;

    private const int MostKindsTogether = 3;

    private const int RoundsDivisor = 4;

    private static readonly double[] Shares = [0.5, 0.75, 0.9, 0.95, 1];

    /// <summary>Mixes were left out for drawing; the best and the worst of every criterion never are.</summary>
    public bool Thinned => Mixes.Length < NonDominated;

    /// <summary>
    /// The front over coverage, monthly cost, turn-round, floor area and peak power: sets of few kinds, each with the
    /// least counts that carry the hours within the limits, and the cheapest mixes at 50, 75, 90, 95 and 100 % of what
    /// can be reached. The problem's own least share is not used.
    /// </summary>
    /// <param name="problem">What is asked.</param>
    /// <param name="effort">How hard to search for the cheapest mixes; null for the default.</param>
    /// <param name="keep">How many to keep at most, as far as the extremes allow; 1 or more.</param>
    /// <param name="cancellation">Stops the search with an exception.</param>
    /// <exception cref="ArgumentException">The problem is outside its ranges.</exception>
    public static MixFront Of(
        MixProblem problem, MixEffort? effort = null, int keep = 60, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(keep, 1);
        IntegerMix whole = MixGrid.Of(problem);
        if (whole.Broken(whole.Least) is not null) return new([], 0, 0);
        var turn = new TurnRounds(problem, whole);
        List<FrontMix> all = [.. Cheapest(problem, effort ?? new(), turn, cancellation)];
        int together = KindsTogetherFor(whole.Kinds);
        var trial = new SetTrial(whole, MixGoal.MostCoverage);
        foreach (int[] set in Sets(whole.Kinds, together))
        {
            cancellation.ThrowIfCancellationRequested();
            trial.Try(set);
            // A kind that got no work: the same mix comes from the smaller set.
            if (Array.Exists(set, k => trial.Counts[k] == 0)) continue;
            MachineMix mix = MixGrid.Read(whole, trial.Counts, trial.KindOfJob, withJobs: false);
            all.Add(Judged(mix, turn.Mean(trial.Counts, trial.KindOfJob), null));
        }
        ImmutableArray<FrontMix> front = FrontThinning.NonDominated(all);
        return new(FrontThinning.Thin(front, keep), together, front.Length);
    }

    private static IEnumerable<FrontMix> Cheapest(
        MixProblem problem, MixEffort effort, TurnRounds turn, CancellationToken cancellation)
    {
        // Six questions for the time of one or two: a point on a drawing needs less proof than a decision.
        effort = effort with { Rounds = Math.Max(1, effort.Rounds / RoundsDivisor) };
        MixAnswer most = Mix.Solve(problem with { LeastShare = 1 }, effort, explain: false, cancellation);
        double reach = most.Mix!.CoveredShare;
        foreach (double share in Shares)
        {
            MixAnswer answer = share == 1
                ? most
                : Mix.Solve(problem with { LeastShare = share * reach }, effort, explain: false, cancellation);
            if (answer.Mix is not { } mix) continue;
            MixStatus sure = answer.Stop == MixStop.Proved ? MixStatus.Optimal : MixStatus.Within;
            yield return Judged(mix, turn.Mean([.. mix.Counts], [.. mix.KindOfJob.SelectMany(j => j)]), sure);
        }
    }

    private static FrontMix Judged(MachineMix mix, double turnRoundHours, MixStatus? cheapest) =>
        new(mix.Counts, mix.CoveredShare, mix.MonthlyCost, turnRoundHours, mix.FloorM2, mix.PeakW, cheapest);

    private static int KindsTogetherFor(int kinds)
    {
        long sets = 0, ofSize = 1;
        for (int size = 1; size <= MostKindsTogether; size++)
        {
            ofSize = ofSize * (kinds - size + 1) / size;
            sets += ofSize;
            if (sets > SetsAtMost) return size - 1;
        }
        return MostKindsTogether;
    }

    private static IEnumerable<int[]> Sets(int kinds, int together)
    {
        yield return [];
        for (int a = 0; a < kinds && together >= 1; a++)
        {
            yield return [a];
            for (int b = a + 1; b < kinds && together >= 2; b++)
            {
                yield return [a, b];
                for (int c = b + 1; c < kinds && together >= 3; c++) yield return [a, b, c];
            }
        }
    }
}
