using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;
using Platewright.Sizing.Statistics;

namespace Platewright.Sizing.Answers;

/// <summary>What a machine adds to the next smaller one.</summary>
/// <param name="Gained">Projects that only the larger can make.</param>
/// <param name="Lost">Projects that only the smaller can make.</param>
/// <param name="Compared">On the same projects; its first is the larger.</param>
/// <param name="Month">What the gained projects take in a month there; null where a time is not known.</param>
public sealed record LargerAnswer(
    int Smaller, int Larger, ImmutableArray<int> Gained, ImmutableArray<int> Lost, PairedComparison Compared, Load? Month)
{
    /// <summary>Each machine with the next smaller one by its place on the size line.</summary>
    public static ImmutableArray<LargerAnswer> Of(SizingCase c)
    {
        int[] bySize = [.. Enumerable.Range(0, c.Machines.Length).OrderBy(m => c.Machines[m].EdgeMm).ThenBy(m => m)];
        return [.. bySize.Zip(bySize.Skip(1), (small, large) => Of(c, small, large))];
    }

    private static LargerAnswer Of(SizingCase c, int small, int large)
    {
        WorkProject[] gained = [.. c.Projects.Where(p => p.CanMake[large] && !p.CanMake[small])];
        WorkProject[] lost = [.. c.Projects.Where(p => p.CanMake[small] && !p.CanMake[large])];
        bool timed = gained.All(p => Loads.Of(p, large) is not null);
        return new LargerAnswer(
            small, large, [.. gained.OrderByDescending(p => p.PerMonth).Select(p => p.Index)], [.. lost.Select(p => p.Index)],
            PairedComparison.Between([.. c.Projects.Select(p => p.CanMake[large])], [.. c.Projects.Select(p => p.CanMake[small])], c.Confidence),
            timed ? Loads.OfMonth(gained, large) : null);
    }
}
