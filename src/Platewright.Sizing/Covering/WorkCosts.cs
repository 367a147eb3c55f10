using System.Collections.Immutable;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Covering;

/// <summary>
/// What a month of each project costs to make, whichever machine is judged: each part where it costs least of the machines with a
/// price, working cost only (energy, filament, wear, somebody's time, failed builds, tax). A part that none of them makes costs what
/// its reckoned hours and filament would, without energy, so that the large projects are not left out.
/// </summary>
public static class WorkCosts
{
    private const double SecondsPerHour = 3600;

    private const double GramsPerKg = 1000;

    /// <returns>
    /// In the currency of the case, one for each project in order; null where no machine has a price, or no time is known of a part.
    /// </returns>
    public static ImmutableArray<double?> Of(SizingCase c)
    {
        CostNumbers numbers = CostNumbers.Usual(c.Costs);
        (int Machine, WorkingRates Rates)[] priced =
        [
            .. Enumerable.Range(0, c.Machines.Length).Where(m => c.Machines[m].Price is not null)
                .Select(m => (m, WorkingRates.Of(c.Machines[m], numbers))),
        ];
        return [.. c.Projects.Select(p => Of(p, priced))];
    }

    private static double? Of(WorkProject project, (int Machine, WorkingRates Rates)[] priced)
    {
        if (priced.Length == 0 || project.Items.IsEmpty) return null;
        double sum = 0;
        foreach (WorkItem item in project.Items)
        {
            if (Least(item, priced) is not { } one) return null;
            sum += item.Quantity * (double)one;
        }
        return project.PerMonth * sum;
    }

    private static decimal? Least(WorkItem item, (int Machine, WorkingRates Rates)[] priced)
    {
        decimal?[] made =
        [
            .. priced.Select(p => item.On[p.Machine] is { } making && Loads.Of(making) is { } load ? p.Rates.Cost(load) : (decimal?)null)
                .Where(cost => cost is not null),
        ];
        if (made.Length > 0) return made.Min();
        if (item.ReferenceS is not { } seconds || item.ReferenceG is not { } grams) return null;
        Load reckoned = new(1, seconds / SecondsPerHour, 0, EnergyKnown: false, 0, grams / GramsPerKg);
        return priced.Min(p => p.Rates.Cost(reckoned));
    }
}
