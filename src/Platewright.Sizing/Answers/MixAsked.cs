using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Mixing;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>The question of the mix as the solver takes it, and what was left out of it.</summary>
/// <param name="KindMachine">For each kind its machine.</param>
/// <param name="KindOwned">For each kind whether it stands for machines that are there already.</param>
/// <param name="Projects">For each project of the problem its place among those of the case.</param>
/// <param name="Excluded">Machines left out, with the reason.</param>
public sealed record MixAsked(
    MixProblem Problem, ImmutableArray<int> KindMachine, ImmutableArray<bool> KindOwned, ImmutableArray<int> Projects,
    ImmutableArray<(int Machine, string Reason)> Excluded)
{
    private const double SecondsPerHour = 3600;

    /// <summary>More of one kind nobody of this trade buys.</summary>
    private const int MostOfOne = 40;

    /// <returns>Null where no machine has both a price and times, or no project is made at all.</returns>
    public static MixAsked? Of(SizingCase c, IReadOnlyList<MachineWork> work, CostNumbers numbers, IReadOnlyList<decimal> printedParts)
    {
        List<MixKind> kinds = [];
        List<int> machines = [];
        List<bool> owned = [];
        List<(int, string)> excluded = [];
        for (int m = 0; m < c.Machines.Length; m++)
        {
            SizedMachine machine = c.Machines[m];
            int there = c.Aim.Owned.Count(id => id == machine.Id);
            string? why = there > 0 ? null : WhyNot(c, machine, work[m]);
            if (why is not null) excluded.Add((m, why));
            if (there > 0) Add(m, machine, there);
            if (WhyNot(c, machine, work[m]) is null) Add(m, machine, 0);
        }
        WorkingRates[] rates = [.. c.Machines.Select(m => WorkingRates.Of(m, numbers))];
        WorkProject[] projects = [.. c.Projects.Where(p => p.PerMonth > 0 && !p.Items.IsEmpty)];
        if (kinds.Count == 0 || projects.Length == 0) return null;
        MixProblem problem = new(
            [.. kinds],
            [
                .. projects.Select(p => new MixProject(
                    p.Id, p.PerMonth, [.. p.Items.Select(i => new MixJob(i.Id, [.. machines.Select(m => JobOf(c, p, i, m, numbers, rates[m]))]))])),
            ],
            c.Aim.CoverShare,
            new MixLimits(c.Aim.Budget, c.Aim.FloorM2, c.Aim.CircuitW, c.Aim.MostMachines));
        return new MixAsked(problem, [.. machines], [.. owned], [.. projects.Select(p => p.Index)], [.. excluded]);

        void Add(int m, SizedMachine machine, int there)
        {
            CostAccount idle = CostAccount.Of(machine, 1, Load.None, numbers, printedParts[m]);
            kinds.Add(new MixKind(
                there > 0 ? machine.Id + " owned" : machine.Id, there > 0 ? idle.Tuning : idle.Owning, work[m].HoursOfOne)
            {
                Price = there > 0 ? 0 : Math.Round(machine.Price!.Value * (1 + (decimal)numbers.TaxShare), 4),
                FloorM2 = machine.FloorM2 ?? 0,
                PeakW = PeakOf(c, m),
                Least = there,
                Most = there > 0 ? there : MostOfOne,
            });
            machines.Add(m);
            owned.Add(there > 0);
        }
    }

    /// <summary>Greatest power of anything the machine makes, W; 0 where it is not known.</summary>
    public static double PeakOf(SizingCase c, int machine) =>
        c.Projects.SelectMany(p => p.Items).Max(i => i.On[machine]?.PeakW) ?? 0;

    private static string? WhyNot(SizingCase c, SizedMachine machine, MachineWork work)
    {
        if (machine.Price is null) return "its price is not known";
        if (c.Aim.LoudestDb is { } loudest && machine.NoiseDb is null) return "it does not say how loud it is";
        if (machine.NoiseDb > c.Aim.LoudestDb) return "it is louder than the aim allows";
        if (c.Aim.FloorM2 is not null && machine.FloorM2 is null) return "its floor area is not known";
        if (c.Aim.CircuitW is not null && PeakOf(c, work.Machine) <= 0) return "its power is not known";
        return work.HoursOfOne > 0 ? null : "it makes none of the projects here, or no times are known";
    }

    private static JobOn? JobOf(
        SizingCase c, WorkProject project, WorkItem item, int machine, CostNumbers numbers, WorkingRates rates)
    {
        if (item.On[machine] is not { TimeS: not null } making || Loads.Of(making) is not { } one) return null;
        Load month = item.Quantity * project.PerMonth * one;
        return new JobOn(
            month.Hours * numbers.TimeFactor * numbers.Attempts, rates.Cost(month),
            Loads.StagesOf(making, c.Costs).BusyS / SecondsPerHour);
    }
}
