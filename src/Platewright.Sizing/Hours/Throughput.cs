using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>What identical machines make of a mix of builds that comes again every week.</summary>
/// <param name="Machines">How many.</param>
/// <param name="Impossible">Places in the list of builds that can never be made here; no other number has them.</param>
/// <param name="MixesPerWeek">
/// Times a week that the machines, working without a pause, make the whole mix in its proportions; at least 1 where
/// everything wished gets done.
/// </param>
/// <param name="WishedHoursPerWeek">Machine hours (warm-up, build, cool-down) of the mix as wished.</param>
/// <param name="BuildsPerWeek">Builds done: as many as wished, or the share of each that can be done.</param>
/// <param name="PartsPerWeek">Parts done.</param>
/// <param name="HoursPerWeek">Machine hours of the builds done.</param>
/// <param name="WaitedHoursPerWeek">
/// Hours in which machines wait for somebody, to start or to take off, around the builds done, as they are when the
/// machines work without a pause.
/// </param>
/// <param name="EffectiveShare">Share of the week that one machine can work on this mix, 0 … 1.</param>
/// <param name="WeeksSimulated">Weeks that the numbers are the mean of.</param>
public sealed record Throughput(
    int Machines, ImmutableArray<int> Impossible, double MixesPerWeek, double WishedHoursPerWeek, double BuildsPerWeek,
    double PartsPerWeek, double HoursPerWeek, double WaitedHoursPerWeek, double EffectiveShare, int WeeksSimulated)
{
    /// <summary>Machine hours per month that one machine can work on this mix: its capacity for sizing.</summary>
    public double EffectiveHoursPerMonth =>
        EffectiveShare * WeekTime.WeekS / WeekTime.HourS * WeekTime.WeeksPerMonth;

    /// <summary>The answer, by simulation; the same input gives the same numbers.</summary>
    /// <param name="place">Hours and rules.</param>
    /// <param name="mix">The builds; many are told by <see cref="JobClasses"/>.</param>
    /// <param name="machines">1 or more.</param>
    public static Throughput Of(Place place, IReadOnlyList<MixJob> mix, int machines) =>
        Of(place, mix, machines, JobClasses.Enough);

    /// <summary>The same with no two unlike builds told as one; slow for many.</summary>
    /// <inheritdoc cref="Of(Place, IReadOnlyList{MixJob}, int)"/>
    public static Throughput Ungrouped(Place place, IReadOnlyList<MixJob> mix, int machines) =>
        Of(place, mix, machines, int.MaxValue);

    private static Throughput Of(Place place, IReadOnlyList<MixJob> mix, int machines, int classes)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(machines, 1);
        int[] impossible = [.. Enumerable.Range(0, mix.Count).Where(i => !place.EverMakes(mix[i].Stages))];
        HashSet<int> without = [.. impossible];
        MixJob[] possible = [.. mix.Where((_, i) => !without.Contains(i))];
        if (possible.Length == 0) return new Throughput(machines, [.. impossible], 0, 0, 0, 0, 0, 0, 0, 0);
        SteadyWork work = SteadyWork.Of(place, JobClasses.Of(place, possible, classes), machines);
        double wishedHours = possible.Sum(j => j.PerWeek * j.Stages.MachineS) / WeekTime.HourS;
        double mixes = work.MachineHoursPerWeek / wishedHours;
        double done = Math.Min(1, mixes);
        return new Throughput(
            machines,
            [.. impossible],
            mixes,
            wishedHours,
            done * possible.Sum(j => j.PerWeek),
            done * possible.Sum(j => j.PerWeek * j.Parts),
            done * wishedHours,
            done / mixes * work.WaitedHoursPerWeek,
            work.MachineHoursPerWeek * WeekTime.HourS / (machines * WeekTime.WeekS),
            work.Weeks);
    }
}
