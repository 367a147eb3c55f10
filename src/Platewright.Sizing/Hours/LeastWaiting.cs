namespace Platewright.Sizing.Hours;

/// <summary>
/// Which build a free machine takes next: of those that may start first, the one with the greatest product of its weight
/// and of the time it would keep the machine at its best hour over the time it keeps it now; of equals the earlier in
/// the list. In the day that is what is in hand before the last one leaves; a long one is left for the night.
/// </summary>
internal sealed class LeastWaiting
{
    private readonly Place _place;
    private readonly BuildStages[] _builds;
    private readonly double[] _leastS;

    /// <summary>A rule for these builds.</summary>
    /// <param name="place">Hours and rules; every build can be made there.</param>
    /// <param name="builds">The builds.</param>
    public LeastWaiting(Place place, BuildStages[] builds)
    {
        _place = place;
        _builds = builds;
        _leastS = [.. builds.Select(s => TurnRoundRange.Of(place, s)?.Best.TotalS ?? s.BusyS)];
    }

    /// <summary>Place in the list of the build to take, and when; null where none has a weight.</summary>
    /// <param name="nowS">The machine is free from then on.</param>
    /// <param name="weight">Of each build; 0 or less: it is not to be taken.</param>
    public (int Index, PlannedBuild When)? Choose(double nowS, Func<int, double> weight)
    {
        (int Index, PlannedBuild When)? best = null;
        double bestScore = 0;
        for (int i = 0; i < _builds.Length; i++)
        {
            double w = weight(i);
            if (w <= 0 || _place.Plan(nowS, _builds[i]) is not { } when) continue;
            if (best is { } sofar && when.StartS > sofar.When.StartS) continue;
            // Rounding must not tell equals apart.
            double use = Math.Min(1, (_leastS[i] + WeekTime.SameMomentS) / (_builds[i].BusyS + when.WaitToTakeOffS));
            if (best is not null && when.StartS == best.Value.When.StartS && use * w <= bestScore) continue;
            best = (i, when);
            bestScore = use * w;
        }
        return best;
    }
}
