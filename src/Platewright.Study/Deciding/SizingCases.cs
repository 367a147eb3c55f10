using System.Collections.Immutable;
using Platewright.Machines;
using Platewright.Sizing;
using Platewright.Sizing.Cases;
using Platewright.Study.Describing;
using Platewright.Study.Judgement;

namespace Platewright.Study.Deciding;

/// <summary>A judged study as sizing looks at it.</summary>
internal static class SizingCases
{
    public static SizingCase Of(JudgedStudy study)
    {
        SizingPlan plan = study.Plan.Sizing;
        SizeReckoning reckoning = SizeReckoning.Of(study);
        StudiedProject[] work = [.. study.Work];
        double silent = plan.ProjectsPerMonth / work.Length ?? 1;
        double shared = plan.ProjectsPerMonth ?? work.Length;
        ImmutableArray<WorkProject> projects =
            [.. work.Select((p, i) => Project(p, i, Rate(p.Planned.Frequency), study, reckoning))];
        return new SizingCase(
            [.. study.Machines.Select(m => MachineOf(m, plan))],
            projects,
            [
                .. study.Projects.Where(p => p.Planned.Frequency.PrintedPartsOf is not null)
                    .Select((p, i) => new PrintedSet(p.Planned.Frequency.PrintedPartsOf!, Project(p, i, 0, study, reckoning))),
            ],
            [.. work.Select(p => p.Sized)],
            plan.Work,
            Places.Of(plan.Place),
            plan.Aim,
            plan.Costs,
            [.. plan.Orders.Select(o => Order(o, projects)).OfType<Order>()],
            [.. plan.SameMoney.Select(q => new SameMoneyQuestion(IndexOf(q.OneId), IndexOf(q.ManyId), q.Many))],
            study.Plan.Options.Confidence,
            study.Plan.Options.BeadWidthMm)
        {
            Heats = HeatLevel.Of(study.Machines),
        };

        double Rate(Frequency f) => f.PerMonth ?? f.ShareOfWork * shared ?? silent;

        int IndexOf(string id) => study.Machines.Select(m => m.Id).ToList().IndexOf(id);
    }

    /// <summary>In the currency of the study; null where it is not known or nothing says what the other currency is worth.</summary>
    public static decimal? InCurrency(Price? price, SizingPlan plan) => price is null
        ? null
        : price.Currency == plan.Costs.Currency
            ? price.Amount
            : plan.Exchange.TryGetValue(price.Currency, out decimal rate) ? price.Amount * rate : null;

    public static SizedMachine MachineOf(Machine m, SizingPlan plan) => new(
        m.Id, m.Name, UsableVolume.EdgeMm(m), InCurrency(m.Price, plan), SizedMachine.FloorOf(m), m.NoiseDb, m.Exhaust, m.Upkeep);

    private static WorkProject Project(
        StudiedProject p, int index, double perMonth, JudgedStudy study, SizeReckoning reckoning) => new(
        index, p.Id, p.Planned.Name, p.Wanted, perMonth,
        [.. p.Verdicts.Select(v => v.Verdict.Class())],
        [.. p.Verdicts.Select(v => v.CanMake)],
        [.. AnyOf.Groups(p.Parts, part => part.AnyOf, part => part.Id).Select(g => WorkItems.Of(g, study, reckoning))]);

    // A project of which no part could be used is not among those judged, and nobody can promise it by a day.
    private static Order? Order(OrderPlan plan, ImmutableArray<WorkProject> projects)
    {
        int index = projects.ToList().FindIndex(p => string.Equals(p.Name, plan.Project, StringComparison.OrdinalIgnoreCase));
        return index < 0 ? null : new Order(index, plan.Copies, plan.FromS, plan.ByS);
    }
}
