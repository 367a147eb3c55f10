using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Hours;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>One machine doing all of the work it can make whole.</summary>
/// <param name="Month">What that takes in a month, if nothing fails.</param>
/// <param name="HoursOfOne">What one machine can give in a month in this place, h; 0 where it makes nothing here.</param>
/// <param name="Needed">How many are needed for that work, failed builds included; 0 where there is none.</param>
/// <param name="Account">A month of them; null where no price is known, or no time of anything it makes.</param>
/// <param name="Upfront">Before the first part; null as the account.</param>
/// <param name="FirstYear">Upfront and twelve months of running; null as the account.</param>
public sealed record MachineWork(
    int Machine, Load Month, double HoursOfOne, int Needed, CostAccount? Account, decimal? Upfront, decimal? FirstYear)
{
    private const int MonthsPerYear = 12;

    /// <param name="c">The case.</param>
    /// <param name="printedParts">What the printed parts of each machine cost to make, 0 for none.</param>
    public static ImmutableArray<MachineWork> Of(SizingCase c, IReadOnlyList<decimal> printedParts) =>
        [.. c.Machines.Select((_, m) => Of(c, m, printedParts[m]))];

    private static MachineWork Of(SizingCase c, int machine, decimal printedParts)
    {
        CostNumbers numbers = CostNumbers.Usual(c.Costs);
        Load month = Loads.OfMonth(c.Projects, machine);
        double hoursOfOne = HoursOf(c, machine);
        double hours = month.Hours * numbers.Attempts;
        int needed = hours > 0 && hoursOfOne > 0 ? Math.Max(1, (int)Math.Ceiling(hours / hoursOfOne)) : 0;
        SizedMachine sized = c.Machines[machine];
        if (sized.Price is null || needed == 0) return new MachineWork(machine, month, hoursOfOne, needed, null, null, null);
        CostAccount account = CostAccount.Of(sized, needed, month, numbers, printedParts);
        decimal upfront = CostAccount.Upfront(sized, needed, numbers, printedParts);
        return new MachineWork(
            machine, month, hoursOfOne, needed, account, upfront, upfront + MonthsPerYear * account.Running);
    }

    /// <summary>Hours a month that one machine can work on its mix of builds in this place.</summary>
    private static double HoursOf(SizingCase c, int machine)
    {
        ImmutableArray<MixJob> jobs = Loads.JobsOf(c.Projects, machine, c.Costs);
        return jobs.IsEmpty ? 0 : Throughput.Of(c.Place, jobs, 1).EffectiveHoursPerMonth;
    }
}
