using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>How sure the answer is.</summary>
public enum MixStatus
{
    /// <summary>Proved: no mix that covers the share is cheaper.</summary>
    Optimal,

    /// <summary>A mix that covers the share; one cheaper by at most the gap may exist.</summary>
    Within,

    /// <summary>Proved: no mix covers the share; the mix given covers the most that was found.</summary>
    Unreachable,

    /// <summary>No mix that covers the share was found, nor proved impossible, within the effort.</summary>
    Undecided,

    /// <summary>The least counts alone break a limit; there is no mix.</summary>
    LeastCountsBreakLimits,
}

/// <summary>Why the search stopped.</summary>
public enum MixStop
{
    /// <summary>The bound met the cost.</summary>
    Proved,

    /// <summary>The gap was small enough.</summary>
    GapReached,

    /// <summary>The effort was used up.</summary>
    EffortSpent,

    /// <summary>No candidate was left that could improve the cost or the bound.</summary>
    NothingLeftToTry,
}

/// <summary>Machines, and what they make.</summary>
/// <param name="Counts">Per kind.</param>
/// <param name="KindOfJob">Per project and job the index of the kind that makes it; −1 where not covered.</param>
/// <param name="CoveredShare">Of the projects' weight, 0 … 1.</param>
/// <param name="MachineCost">Sum of the machines' costs, money per month.</param>
/// <param name="RunningCost">Sum of the made jobs' costs, money per month.</param>
/// <param name="Price">Sum of prices, money.</param>
/// <param name="FloorM2">Sum of floor areas, m².</param>
/// <param name="PeakW">Sum of peak powers, W.</param>
/// <param name="HoursUsed">Per kind, h per month.</param>
public sealed record MachineMix(
    ImmutableArray<int> Counts,
    ImmutableArray<ImmutableArray<int>> KindOfJob,
    double CoveredShare,
    decimal MachineCost,
    decimal RunningCost,
    decimal Price,
    double FloorM2,
    double PeakW,
    ImmutableArray<double> HoursUsed)
{
    /// <summary>Machines and running, money per month.</summary>
    public decimal MonthlyCost => MachineCost + RunningCost;
}

/// <summary>The cheapest mix, with what is proved of it.</summary>
/// <param name="Status">How sure it is.</param>
/// <param name="Mix">The mix; null only where the least counts break a limit.</param>
/// <param name="CostBound">
/// No mix that covers the share asked for (or, where that is not reached, the share covered here) costs less; money per
/// month.
/// </param>
/// <param name="ReachBound">No mix covers a greater share, 0 … 1.</param>
/// <param name="Blocking">
/// Where the share is not reached: each limit that, lifted alone, lets it be reached. Empty where the machines cannot
/// reach it at all, or several limits hold it back together.
/// </param>
/// <param name="Stop">Why the search ended.</param>
public sealed record MixAnswer(
    MixStatus Status,
    MachineMix? Mix,
    decimal CostBound,
    double ReachBound,
    ImmutableArray<MixLimit> Blocking,
    MixStop Stop)
{
    /// <summary>Greatest share of the cost that a better mix could save, 0 … 1.</summary>
    public double RelativeGap => Mix is not { MonthlyCost: > 0 } mix
        ? 0
        : Math.Max(0, (double)((mix.MonthlyCost - CostBound) / mix.MonthlyCost));
}
