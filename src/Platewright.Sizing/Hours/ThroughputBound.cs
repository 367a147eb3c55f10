namespace Platewright.Sizing.Hours;

/// <summary>What no schedule can exceed.</summary>
public static class ThroughputBound
{
    /// <summary>
    /// Most times a week that a mix can be made. The least of three: a machine has the hours of a week for all its
    /// stages; the attended hours for its handling; the hours in which the rules let it run for its runs. With somebody
    /// there day and night and no rules it is the hours over the time of the mix, and is reached.
    /// </summary>
    /// <param name="place">Hours and rules.</param>
    /// <param name="mix">At least one build.</param>
    /// <param name="machines">1 or more; they have somebody each while somebody is there.</param>
    public static double MixesPerWeek(Place place, IReadOnlyCollection<MixJob> mix, int machines)
    {
        double busy = mix.Sum(j => j.PerWeek * j.Stages.BusyS);
        double handling = mix.Sum(j => j.PerWeek * j.Stages.HandlingS);
        double run = mix.Sum(j => j.PerWeek * j.Stages.RunS);
        return machines * Math.Min(
            WeekTime.WeekS / busy,
            Math.Min(place.RunnableS / run, handling == 0 ? double.PositiveInfinity : place.Week.AttendedS / handling));
    }
}
