using Platewright.Sizing.Cases;

namespace Platewright.Sizing.Covering;

/// <summary>What one project counts by a measure, and how much of that a machine takes.</summary>
public static class Weighing
{
    private const double SecondsPerHour = 3600;

    /// <summary>In the unit of the measure; null where it is not known.</summary>
    /// <param name="money">What it costs in a month, see <see cref="WorkCosts"/>; null where it is not known.</param>
    public static double? Weight(WorkProject project, Measure measure, double? money) => measure switch
    {
        Measure.Parts => Total(project, _ => 1),
        Measure.Projects => 1,
        Measure.ProjectsAsMade => project.PerMonth,
        Measure.Hours => project.PerMonth * Total(project, i => i.ReferenceS / SecondsPerHour),
        Measure.Mass => project.PerMonth * Total(project, i => i.ReferenceG),
        Measure.Money => money,
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "No such measure."),
    };

    /// <summary>0 … 1: of parts each by itself, of everything else only the whole project.</summary>
    /// <param name="strictly">Whether a compromise is not enough.</param>
    public static double Covered(WorkProject project, int machine, Measure measure, bool strictly)
    {
        if (measure == Measure.Parts)
        {
            return Total(project, _ => 1) is { } all
                ? project.Items.Where(i => Taken(i.On[machine]?.Fit, strictly)).Sum(i => i.Quantity) / all
                : 0;
        }
        return project.CanMake[machine] && Taken(project.Fits[machine], strictly) ? 1 : 0;
    }

    public static bool Taken(FitClass? fit, bool strictly) =>
        fit == FitClass.Fits || (!strictly && fit == FitClass.Compromise);

    private static double? Total(WorkProject project, Func<WorkItem, double?> each) =>
        project.Items.IsEmpty || project.Items.Any(i => each(i) is null)
            ? null
            : project.Items.Sum(i => i.Quantity * each(i));
}
