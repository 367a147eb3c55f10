using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Hours;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>Work as it loads a machine.</summary>
public static class Loads
{
    private const double SecondsPerHour = 3600;

    private const double SecondsPerMinute = 60;

    private const double GramsPerKg = 1000;

    /// <summary>One build; null where its time is not known.</summary>
    public static Load? Of(Making making) => making.TimeS is not { } seconds
        ? null
        : new Load(
            1, seconds / SecondsPerHour, making.EnergyKwh ?? 0, making.EnergyKwh is not null,
            making.FilamentPerKg is { } price ? (double)price * (making.MassG ?? 0) / GramsPerKg : 0,
            making.FilamentPerKg is null ? (making.MassG ?? 0) / GramsPerKg : 0);

    /// <summary>All of a project made once on one machine; null where that cannot make it or a time is not known.</summary>
    public static Load? Of(WorkProject project, int machine)
    {
        if (!project.CanMake[machine]) return null;
        Load sum = Load.None;
        foreach (WorkItem item in project.Items)
        {
            if (item.On[machine] is not { } making || Of(making) is not { } one) return null;
            sum += item.Quantity * one;
        }
        return sum;
    }

    /// <summary>A month of the projects that one machine can make whole and whose times are known.</summary>
    public static Load OfMonth(IEnumerable<WorkProject> projects, int machine)
    {
        Load sum = Load.None;
        foreach (WorkProject project in projects)
            if (Of(project, machine) is { } once) sum += project.PerMonth * once;
        return sum;
    }

    /// <summary>What one build takes of the machine and of somebody's time.</summary>
    /// <param name="making">With a known time.</param>
    /// <param name="costs">Somebody's minutes before and after it.</param>
    public static BuildStages StagesOf(Making making, CostAssumptions costs) =>
        StagesOf(making.TimeS!.Value, making.WarmUpS, making.ReleaseS, costs);

    /// <inheritdoc cref="StagesOf(Making, CostAssumptions)"/>
    /// <param name="totalS">Machine time, warm-up and release included, s.</param>
    /// <param name="warmUpS">Of it until the machine is ready, s.</param>
    /// <param name="releaseS">Of it until the part lets go, s.</param>
    /// <param name="costs">Somebody's minutes before and after it.</param>
    public static BuildStages StagesOf(double totalS, double warmUpS, double releaseS, CostAssumptions costs) => new(
        totalS - warmUpS - releaseS, warmUpS, releaseS, costs.PrepareMin.Value * SecondsPerMinute,
        costs.RemoveMin.Value * SecondsPerMinute);

    /// <summary>The builds of a week: of the projects one machine can make whole, with known times.</summary>
    public static ImmutableArray<MixJob> JobsOf(IEnumerable<WorkProject> projects, int machine, CostAssumptions costs) =>
    [
        .. from project in projects
           where project.PerMonth > 0 && Of(project, machine) is not null
           from item in project.Items
           select new MixJob(
               StagesOf(item.On[machine]!, costs), item.Quantity * project.PerMonth / WeekTime.WeeksPerMonth, 1),
    ];
}
