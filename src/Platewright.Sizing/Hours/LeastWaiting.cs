namespace Platewright.Sizing.Hours;

/// <summary>
/// Which build a free machine takes next: of those that may start at once, the one that leaves it waiting for the least
/// share of its time; of equals the longest. In the day it takes what is in hand before the last one leaves, and leaves
/// a long one for the night. Where none may start, it waits for whichever may start first, of equals the longest.
/// </summary>
internal static class LeastWaiting
{
    /// <summary>Place in the list of the build to take, and when; null where the list has none that is wanted.</summary>
    /// <param name="place">Hours and rules; every build can be made there.</param>
    /// <param name="nowS">The machine is free from then on.</param>
    /// <param name="longestFirst">The builds.</param>
    /// <param name="wanted">Which of them may be taken.</param>
    public static (int Index, PlannedBuild When)? Choose(
        Place place, double nowS, IReadOnlyList<BuildStages> longestFirst, Func<int, bool> wanted)
    {
        (int Index, PlannedBuild When)? best = null;
        double bestUse = -1;
        for (int i = 0; i < longestFirst.Count; i++)
        {
            if (!wanted(i) || place.Plan(nowS, longestFirst[i]) is not { } when) continue;
            // 0 … 1 for a start at once; for a later one below 0, the less the later.
            double use = when.WaitToStartS > 0
                ? -when.WaitToStartS
                : longestFirst[i].BusyS / (longestFirst[i].BusyS + when.WaitToTakeOffS);
            if (best is not null && use <= bestUse) continue;
            best = (i, when);
            bestUse = use;
            if (use == 1) break;
        }
        return best;
    }
}
