using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Hours;

namespace Platewright.Sizing.Answers;

/// <summary>So many of a project by a moment, on one machine of a kind.</summary>
/// <param name="Done">Whole projects in hand by then.</param>
/// <param name="LastInHandS">From the start until the last is in hand, s; null where that never happens.</param>
/// <param name="LeastMachines">How many of the kind would do it; null where none of the numbers tried does.</param>
/// <param name="Limit">What keeps it from being in time.</param>
public sealed record OrderAnswer(int Machine, bool CanMake, bool InTime, int Done, double? LastInHandS, int? LeastMachines, Bottleneck Limit)
{
    /// <summary>A schedule of unlike builds is tried on up to so many machines.</summary>
    private const int MostTried = 40;

    /// <summary>One for each machine.</summary>
    public static ImmutableArray<OrderAnswer> Of(SizingCase c, Order order) =>
        [.. Enumerable.Range(0, c.Machines.Length).Select(m => Of(c, order, m))];

    private static OrderAnswer Of(SizingCase c, Order order, int machine)
    {
        WorkProject project = c.Projects[order.Project];
        if (Loads.Of(project, machine) is null)
            return new OrderAnswer(machine, false, false, 0, null, null, Bottleneck.None);
        (BuildStages Stages, int Copies)[] builds =
            [.. project.Items.Select(i => (Loads.StagesOf(i.On[machine]!, c.Costs), i.Quantity * order.Copies))];
        if (builds.Any(b => !c.Place.EverMakes(b.Stages)))
            return new OrderAnswer(machine, false, false, 0, null, null, Bottleneck.RulesTogether);
        return builds.Length == 1 ? OfOne(c, order, machine, builds[0], project.Items[0].Quantity) : OfMany(c, order, machine, builds);
    }

    private static OrderAnswer OfOne(SizingCase c, Order order, int machine, (BuildStages Stages, int Copies) build, int each)
    {
        DueDate due = DueDate.Of(c.Place, build.Stages, build.Copies, 1, order.FromS, order.ByS);
        return new OrderAnswer(
            machine, true, due.InTime, due.DoneByDue / each, due.LastInHandS - order.FromS, due.LeastMachines, due.Bottleneck);
    }

    private static OrderAnswer OfMany(SizingCase c, Order order, int machine, (BuildStages Stages, int Copies)[] builds)
    {
        (int Item, BuildStages Stages)[] all = [.. builds.SelectMany((b, i) => Enumerable.Repeat((i, b.Stages), b.Copies))];
        BuildStages[] stages = [.. all.Select(b => b.Stages)];
        ProjectSchedule one = ProjectSchedule.Sooner(c.Place, stages, 1, order.FromS);
        int[] done = new int[builds.Length];
        foreach (ScheduledBuild build in one.Builds.Where(b => b.When.InHandS <= order.ByS)) done[all[build.Job].Item]++;
        bool inTime = one.WholeInHandS <= order.ByS;
        int? least = inTime ? 1 : LeastOf(n => ProjectSchedule.Sooner(c.Place, stages, n, order.FromS).WholeInHandS <= order.ByS);
        return new OrderAnswer(
            machine, true, inTime, done.Select((d, i) => d / (builds[i].Copies / order.Copies)).Min(), one.WholeInHandS - order.FromS, least,
            inTime ? Bottleneck.None : LimitOf(c, stages, order));
    }

    private static int? LeastOf(Func<int, bool> inTime)
    {
        for (int n = 2; n <= MostTried; n++) if (inTime(n)) return n;
        return null;
    }

    private static Bottleneck LimitOf(SizingCase c, BuildStages[] stages, Order order)
    {
        Place always = new(AttendedWeek.Always, RunLimits.None);
        if (ProjectSchedule.Sooner(always, stages, 1, order.FromS).WholeInHandS > order.ByS) return Bottleneck.MachineHours;
        Place free = new(c.Place.Week, RunLimits.None);
        return ProjectSchedule.Sooner(free, stages, 1, order.FromS).WholeInHandS > order.ByS
            ? Bottleneck.AttendedHours
            : Bottleneck.RulesTogether;
    }
}
