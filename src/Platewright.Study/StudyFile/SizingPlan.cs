using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Machines;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;

namespace Platewright.Study;

/// <summary>What a study file says beyond fit and time: how much work there is, where, for how much, and what is asked.</summary>
/// <param name="Work">What the projects stand for.</param>
/// <param name="ProjectsPerMonth">All projects made in a month; null where nothing says so.</param>
/// <param name="Place">Limits of the place.</param>
/// <param name="Exchange">What one of another currency is worth in that of the costs.</param>
/// <param name="Orders">So many of a project by a day.</param>
/// <param name="SameMoney">Questions of one large machine or several small ones.</param>
public sealed record SizingPlan(
    WorkStatement Work, double? ProjectsPerMonth, PlacePlan Place, Aim Aim, CostAssumptions Costs,
    ImmutableSortedDictionary<string, decimal> Exchange, ImmutableArray<OrderPlan> Orders,
    ImmutableArray<SameMoneyPlan> SameMoney)
{
    /// <summary>Of a folder, and of a study file that says nothing.</summary>
    public static readonly SizingPlan Unsaid = new(
        new WorkStatement(Sample: true, null, RatesAssumed: true), null, PlacePlan.Unsaid, Aim.None, new CostAssumptions(),
        ImmutableSortedDictionary<string, decimal>.Empty, [], []);
}

/// <summary>How often a project is made; all null where its table does not say.</summary>
/// <param name="PerMonth">Times in a month.</param>
/// <param name="ShareOfWork">Share of all projects made, 0 … 1.</param>
/// <param name="PrintedPartsOf">The machine whose printed parts these are: then the project is no work for others.</param>
public sealed record Frequency(double? PerMonth, double? ShareOfWork, string? PrintedPartsOf)
{
    public static readonly Frequency Unsaid = new(null, null, null);
}

/// <summary>So many of a project by a moment of the week.</summary>
/// <param name="Project">Its name.</param>
/// <param name="FromS">When the first may start, s from Monday 00:00.</param>
/// <param name="ByS">When the last must be in hand, s from the same Monday; later than <paramref name="FromS"/>.</param>
public sealed record OrderPlan(string Project, int Copies, double FromS, double ByS, TomlPlace Place);

/// <summary>A question: one of this machine, or several of that for the same money?</summary>
/// <param name="Many">How many; null for as many as its money buys.</param>
public sealed record SameMoneyPlan(string OneId, string ManyId, int? Many);

/// <summary>Limits of the place where the machines stand.</summary>
/// <param name="Attended">When somebody is there; none where nothing is said.</param>
/// <param name="Nights">Whether a build may go on over night while nobody is there.</param>
/// <param name="Weekends">The same for a Saturday or Sunday without anybody.</param>
/// <param name="LongestUnattendedH">How long a build may go on with nobody there, h; null for no limit.</param>
/// <param name="LessonMin">A build must begin and end within this time, min; null for no such limit.</param>
/// <param name="Exhaust">What families that give off more than the least must have; null where the place asks for nothing.</param>
/// <param name="LowEmissionOnly">Only families that give off least.</param>
public sealed record PlacePlan(
    ImmutableArray<AttendedPlan> Attended, bool Nights, bool Weekends, double? LongestUnattendedH, double? LessonMin,
    Exhaust? Exhaust, bool LowEmissionOnly)
{
    public static readonly PlacePlan Unsaid = new([], Nights: true, Weekends: true, null, null, null, false);

    /// <summary>Whether the file limits when a machine may run.</summary>
    public bool LimitsHours => !Attended.IsEmpty || LessonMin is not null || LongestUnattendedH is not null || !Nights || !Weekends;
}

/// <summary>Somebody is there on these days from one time of day to another.</summary>
/// <param name="Days">0 for Monday … 6 for Sunday.</param>
public sealed record AttendedPlan(ImmutableArray<int> Days, int FromMin, int ToMin);
