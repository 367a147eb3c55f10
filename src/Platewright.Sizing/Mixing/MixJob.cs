using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>What a job takes on one kind of machine.</summary>
/// <param name="HoursPerMonth">Machine hours for its monthly quantity, h per month, 0 or more.</param>
/// <param name="CostPerMonth">Running cost of its monthly quantity, money per month, 0 or more.</param>
/// <param name="TurnRoundHours">From start to one in hand, h, 0 or more; no limit is put on it.</param>
public readonly record struct JobOn(double HoursPerMonth, decimal CostPerMonth, double TurnRoundHours = 0);

/// <summary>What one kind of machine must make as a whole: a part, or the chosen one of alternatives.</summary>
/// <param name="Id">Its name.</param>
/// <param name="On">One entry per kind of the problem, in its order; null where the kind cannot make it.</param>
public sealed record MixJob(string Id, ImmutableArray<JobOn?> On);

/// <summary>Jobs that are only of use together: covered when every one of them is made.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Weight">Its share of the work, in any unit, greater than 0.</param>
/// <param name="Jobs">At least one.</param>
public sealed record MixProject(string Id, double Weight, ImmutableArray<MixJob> Jobs);
