using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>A mix on the front, with what it is judged by.</summary>
/// <param name="Counts">Per kind.</param>
/// <param name="CoveredShare">Of the projects' weight, 0 … 1; more is better, of the rest less is.</param>
/// <param name="MonthlyCost">Machines and running, money per month.</param>
/// <param name="TurnRoundHours">
/// Hours from start to one in hand: mean over the covered jobs (a project's weight shared evenly among its jobs) of the
/// fastest kind in the mix; 0 where nothing is covered.
/// </param>
/// <param name="FloorM2">Sum of floor areas, m².</param>
/// <param name="PeakW">Sum of peak powers, W.</param>
/// <param name="Cheapest">How sure it is that no mix covers this share for less; null where this was not asked.</param>
public sealed record FrontMix(
    ImmutableArray<int> Counts,
    double CoveredShare,
    decimal MonthlyCost,
    double TurnRoundHours,
    double FloorM2,
    double PeakW,
    MixStatus? Cheapest)
{
    internal const int Criteria = 5;

    /// <summary>All as less-is-better.</summary>
    internal double Criterion(int which) => which switch
    {
        0 => -CoveredShare,
        1 => (double)MonthlyCost,
        2 => TurnRoundHours,
        3 => FloorM2,
        _ => PeakW,
    };

    /// <summary>Nowhere worse, and somewhere better or the same mix of figures.</summary>
    internal bool NowhereWorseThan(FrontMix other)
    {
        for (int c = 0; c < Criteria; c++)
        {
            if (Criterion(c) > other.Criterion(c)) return false;
        }
        return true;
    }
}
