using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>The builds of one project on identical machines.</summary>
/// <param name="Builds">In the order they were given out.</param>
/// <param name="StartS">All machines are free from then on, s.</param>
public sealed record ProjectSchedule(ImmutableArray<ScheduledBuild> Builds, double StartS)
{
    /// <summary>Kinds of builds up to which <see cref="Sooner"/> also tries the rule that looks at all of them.</summary>
    private const int KindsLookedAt = 200;

    /// <summary>First part in hand, s.</summary>
    public double FirstInHandS => Builds.Min(b => b.When.InHandS);

    /// <summary>The whole project in hand, s.</summary>
    public double WholeInHandS => Builds.Max(b => b.When.InHandS);

    /// <summary>
    /// The longest first, each to the machine that is free first. With somebody always there the whole takes at most
    /// 4/3 − 1/(3n) of the least time that n machines need (Graham, "Bounds on multiprocessing timing anomalies",
    /// SIAM J. Appl. Math. 17, 1969, 416-429).
    /// </summary>
    /// <param name="place">Hours and rules; every build can be made there.</param>
    /// <param name="builds">At least one.</param>
    /// <param name="machines">1 or more.</param>
    /// <param name="startS">All machines are free from then on, s.</param>
    /// <exception cref="ArgumentException">No build, or one that can never be made here.</exception>
    public static ProjectSchedule LongestFirst(
        Place place, IReadOnlyList<BuildStages> builds, int machines, double startS)
    {
        Check(place, builds, machines);
        PriorityQueue<int, (double FreeS, int Machine)> free = Machines(machines, startS);
        ImmutableArray<ScheduledBuild>.Builder given = ImmutableArray.CreateBuilder<ScheduledBuild>(builds.Count);
        foreach (int job in LongestFirst(builds))
        {
            free.TryDequeue(out int machine, out (double FreeS, int Machine) at);
            given.Add(new ScheduledBuild(job, machine, place.Plan(at.FreeS, builds[job])!.Value));
            free.Enqueue(machine, (given[^1].When.InHandS, machine));
        }
        return new ProjectSchedule(given.MoveToImmutable(), startS);
    }

    /// <summary>
    /// Whichever has the whole sooner in hand: the longest first, or at each moment what makes the machine wait least
    /// for somebody (only for up to 200 kinds of builds). No optimum is claimed.
    /// </summary>
    /// <inheritdoc cref="LongestFirst(Place, IReadOnlyList{BuildStages}, int, double)"/>
    public static ProjectSchedule Sooner(Place place, IReadOnlyList<BuildStages> builds, int machines, double startS)
    {
        ProjectSchedule longest = LongestFirst(place, builds, machines, startS);
        if (builds.Distinct().Count() > KindsLookedAt) return longest;
        ProjectSchedule least = WaitingLeast(place, builds, machines, startS);
        return least.WholeInHandS < longest.WholeInHandS ? least : longest;
    }

    private static ProjectSchedule WaitingLeast(
        Place place, IReadOnlyList<BuildStages> builds, int machines, double startS)
    {
        Queue<int>[] kinds = [.. LongestFirst(builds).GroupBy(j => builds[j]).Select(g => new Queue<int>(g))];
        LeastWaiting rule = new(place, [.. kinds.Select(k => builds[k.Peek()])]);
        PriorityQueue<int, (double FreeS, int Machine)> free = Machines(machines, startS);
        ImmutableArray<ScheduledBuild>.Builder given = ImmutableArray.CreateBuilder<ScheduledBuild>(builds.Count);
        while (given.Count < builds.Count)
        {
            free.TryDequeue(out int machine, out (double FreeS, int Machine) at);
            (int kind, PlannedBuild when) = rule.Choose(at.FreeS, k => kinds[k].Count > 0 ? 1 : 0)!.Value;
            given.Add(new ScheduledBuild(kinds[kind].Dequeue(), machine, when));
            free.Enqueue(machine, (when.InHandS, machine));
        }
        return new ProjectSchedule(given.MoveToImmutable(), startS);
    }

    private static IEnumerable<int> LongestFirst(IReadOnlyList<BuildStages> builds) =>
        Enumerable.Range(0, builds.Count).OrderByDescending(j => builds[j].BusyS);

    private static PriorityQueue<int, (double FreeS, int Machine)> Machines(int machines, double startS) =>
        new(Enumerable.Range(0, machines).Select(m => (m, (startS, m))));

    private static void Check(Place place, IReadOnlyList<BuildStages> builds, int machines)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(machines, 1);
        if (builds.Count == 0) throw new ArgumentException("Expected at least one build.", nameof(builds));
        for (int j = 0; j < builds.Count; j++)
        {
            if (!place.EverMakes(builds[j]))
                throw new ArgumentException($"Build {j} can never be made at this place.", nameof(builds));
        }
    }
}
