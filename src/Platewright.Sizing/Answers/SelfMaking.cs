using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>Who could make the printed parts of a machine.</summary>
/// <param name="Alone">Machines that make all of them.</param>
/// <param name="Together">Smallest sets that do it between them, where none does alone: each part as a whole on one of them.</param>
/// <param name="Missing">Names of parts that no machine makes.</param>
/// <param name="Cheapest">Of those alone the one with the least cost of working; null where no time is known.</param>
/// <param name="Cost">There: energy, filament, wear, somebody's time, failed builds, tax.</param>
/// <param name="Hours">Machine hours there.</param>
public sealed record SelfMaking(
    PrintedSet Set, ImmutableArray<int> Alone, ImmutableArray<ImmutableArray<int>> Together, ImmutableArray<string> Missing,
    int? Cheapest, decimal? Cost, double? Hours)
{
    /// <summary>Nobody borrows more machines than this to build one.</summary>
    private const int MostTogether = 3;

    private const int MostSets = 10;

    public static SelfMaking Of(SizingCase c, PrintedSet set)
    {
        ImmutableArray<WorkItem> items = set.Set.Items;
        int[] machines = [.. Enumerable.Range(0, c.Machines.Length)];
        int[] alone = [.. machines.Where(m => set.Set.CanMake[m])];
        CostNumbers numbers = CostNumbers.Usual(c.Costs);
        var costed = alone
            .Select(m => (Machine: m, Load: Loads.Of(set.Set, m)))
            .Where(x => x.Load is not null && c.Machines[x.Machine].Price is not null)
            .Select(x => (x.Machine, x.Load!.Value.Hours, Cost: CostAccount.Of(c.Machines[x.Machine], 0, x.Load.Value, numbers).Working))
            .OrderBy(x => x.Cost).ToArray();
        string[] missing = [.. items.Where(i => machines.All(m => i.On[m] is null)).Select(i => i.Name)];
        return new SelfMaking(
            set, [.. alone], alone.Length > 0 || missing.Length > 0 ? [] : Sets(items, machines), [.. missing],
            costed.Length > 0 ? costed[0].Machine : null, costed.Length > 0 ? costed[0].Cost : null,
            costed.Length > 0 ? costed[0].Hours : null);
    }

    /// <summary>
    /// What the printed parts of each machine cost to make: on the cheapest machine that makes all, itself left out, for a set named
    /// after it; 0 for machines without one.
    /// </summary>
    public static ImmutableArray<decimal> CostsOf(SizingCase c) =>
        [.. c.Machines.Select(m => c.PrintedParts.Where(s => IsFor(s, m)).Sum(s => Of(c, s).Cost ?? 0))];

    private static bool IsFor(PrintedSet set, SizedMachine machine) =>
        string.Equals(set.Of, machine.Id, StringComparison.OrdinalIgnoreCase)
        || string.Equals(set.Of, machine.Name, StringComparison.OrdinalIgnoreCase);

    private static ImmutableArray<ImmutableArray<int>> Sets(ImmutableArray<WorkItem> items, int[] machines)
    {
        List<int[]> sets = [.. machines.Select(m => new[] { m })];
        for (int size = 2; size <= MostTogether; size++)
        {
            sets = [.. sets.SelectMany(s => machines.Where(m => m > s[^1]).Select(m => (int[])[.. s, m]))];
            int[][] enough = [.. sets.Where(s => items.All(i => s.Any(m => i.On[m] is not null))).Take(MostSets)];
            if (enough.Length > 0) return [.. enough.Select(s => s.ToImmutableArray())];
        }
        return [];
    }
}
