using System.Collections.Immutable;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Covering;
using Platewright.Sizing.Hours;
using Platewright.Sizing.Money;
using Platewright.Study.Describing;
using Platewright.Study.Documents;

namespace Platewright.Study.Deciding;

/// <summary>What sizing answers, as the documents show it; the sheet is written from the whole document afterwards.</summary>
internal sealed class SizingDescription(SizingAnswer answer, SizingPlan plan, IReadOnlyDictionary<string, string> partNames)
{
    private const int NamesShown = 6;

    private SizingCase Case => answer.Case;

    private MixDescription? Mixed => answer.Mix is { } mix ? new MixDescription(answer, mix) : null;

    /// <param name="bundled">Names of all bundled machines from the smallest, each with how many projects it can make.</param>
    public SizingDocument Describe(IReadOnlyList<(string Name, int CanMake)> bundled) => new(
        plan.Costs.Currency, Work(), Place(), Aim(), [.. answer.Work.Select(Machine)],
        [.. answer.Levels.Select(l => Of(l, bundled))],
        [.. answer.Larger.Select(Of)],
        [.. answer.SameMoney.Select(Of)],
        [.. answer.BreakEvens.Select(Of)],
        Mixed?.Mix(),
        Mixed?.Front() ?? [],
        [.. plan.Orders.Where(o => OrderIndex(o) >= 0).Select((o, i) => Of(o, answer.Orders[i]))],
        [.. answer.SelfMaking.Select(Of)],
        Mixed?.Sensitivities() ?? [],
        Assumptions.Of(plan.Costs),
        new SheetDocument("", [], [], [], [], [], [], []))
    {
        Curves = CurvesDescription.BySize(answer),
        PriceCurves = CurvesDescription.ByPrice(answer),
        Weights = CurvesDescription.Weights(answer),
    };

    private int OrderIndex(OrderPlan order) =>
        Case.Projects.ToList().FindIndex(p => string.Equals(p.Name, order.Project, StringComparison.OrdinalIgnoreCase));

    private WorkloadDocument Work() => new(
        Case.Work.Sample, Case.Work.Population, Case.Projects.Length, Case.Projects.Count(p => p.Wanted),
        Case.Projects.Sum(p => p.PerMonth), Case.Work.RatesAssumed, Case.Projects.Sum(p => p.Items.Count(i => i.ReferenceReckoned)));

    private PlaceDocument? Place()
    {
        PlacePlan p = plan.Place;
        if (!p.LimitsHours && p.Exhaust is null && !p.LowEmissionOnly) return null;
        double longest = Case.Place.LongestRunS;
        return new PlaceDocument(
            Case.Place.Week.AttendedS / WeekTime.HourS, p.Nights, p.Weekends, p.LongestUnattendedH, p.LessonMin,
            double.IsFinite(longest) ? longest / WeekTime.HourS : null, p.Exhaust is { } e ? Platewright.Machines.Exhausts.Word(e) : null, p.LowEmissionOnly);
    }

    private AimDocument Aim() => new(
        Case.Aim.CoverShare, Case.Aim.Budget, Case.Aim.FloorM2, Case.Aim.CircuitW, Case.Aim.LoudestDb, Case.Aim.MostMachines, Case.Aim.Owned);

    private MachineSizingDocument Machine(MachineWork work)
    {
        int m = work.Machine;
        SizedMachine machine = Case.Machines[m];
        double rate = Case.Projects.Where(p => Loads.Of(p, m) is not null).Sum(p => p.PerMonth);
        double peak = MixAsked.PeakOf(Case, m);
        return new MachineSizingDocument(
            machine.Id, [.. answer.Coverage.Where(c => c.Machine == m).Select(Of)], WithoutWanted(m), work.Month.Hours, work.HoursOfOne,
            work.Needed, machine.FloorM2, machine.NoiseDb, machine.Exhaust is { } e ? Platewright.Machines.Exhausts.Word(e) : null,
            peak > 0 ? peak : null, WarmUp(m), TurnRound(m), work.Account is { } account ? Of(account) : null, work.Upfront, work.FirstYear,
            answer.Interval[m]?.Low, answer.Interval[m]?.High,
            work.Account is not null && rate > 0 ? Math.Round(work.Account.Total / (decimal)rate, 4) : null)
        {
            Price = machine.Price,
            Basis = work.Account is null
                ? null
                : new CostBasisDocument(work.Needed, machine.Price!.Value, answer.PrintedParts[m], Of(work.Month), Of(machine.Upkeep)),
        };
    }

    public static LoadDocument Of(Load load) =>
        new(load.Builds, load.Hours, load.EnergyKwh, load.PricedFilament, load.UnpricedKg);

    private static UpkeepDocument Of(Platewright.Machines.Upkeep u) =>
        new(u.LifeYears, u.ResidualShare, u.AssembleH, u.TuneHPerYear, u.MaintainHPer100H, u.WearPer100H);

    /// <summary>Mean over the builds of the machine, by how often they are made.</summary>
    private double? WarmUp(int machine)
    {
        var builds = Case.Projects.SelectMany(p => p.Items.Select(i => (Times: p.PerMonth * i.Quantity, On: i.On[machine])))
            .Where(b => b.On is { TimeS: not null, Reckoned: false } && b.Times > 0).ToArray();
        double times = builds.Sum(b => b.Times);
        return times > 0 ? builds.Sum(b => b.Times * b.On!.WarmUpS) / times : null;
    }

    private TurnRoundDocument? TurnRound(int machine) => answer.TurnRound is not { } all || all.On[machine] is not { } on
        ? null
        : new TurnRoundDocument(
            all.Item.Name, on.Range.Mean.TotalS, on.Range.Best.TotalS, on.Range.Worst.TotalS, on.Stages.PrepareS, on.Stages.WarmUpS,
            on.Stages.BuildS, on.Stages.ReleaseS, on.Stages.TakeOffS, on.Iterations.Count, on.Iterations.Fewest, on.Iterations.Most);

    private ShareDocument WithoutWanted(int machine)
    {
        WorkProject[] done = [.. Case.Projects.Where(p => !p.Wanted)];
        int made = done.Count(p => p.CanMake[machine]);
        int? population = Case.Work.Sample ? Case.Work.Population : done.Length;
        return CoverageDescription.Of(Platewright.Sizing.Share.Wilson(
            made, done.Length, Case.Confidence, population >= done.Length ? population : null));
    }

    private static MeasureDocument Of(MeasuredCoverage c) => new(
        CurvesDescription.Word(c.Measure), c.CanMake.Value, c.CanMake.Low, c.CanMake.High, c.WithoutCompromise.Value, c.WithoutCompromise.Low, c.WithoutCompromise.High,
        c.CanMake.LeftOut);

    public static CostDocument Of(CostAccount a) => new(
        a.Purchase, a.PrintedParts, a.Assembling, a.Tuning, a.OwningTax, a.Maintaining, a.Wear, a.Energy, a.Filament, a.Handling,
        a.FailedBuilds, a.WorkTax, a.Running, a.Total);

    private LevelDocument Of(Level l, IReadOnlyList<(string Name, int CanMake)> bundled) => new(
        l.Share, l.Projects, l.Listed is { } m ? Case.Machines[m].Id : null,
        bundled.FirstOrDefault(b => b.CanMake >= l.Projects).Name, l.CubeMm, l.Box?.BedMm, l.Box?.HeightMm,
        [.. l.Curve.Select(p => new[] { p.BedMm, p.HeightMm })],
        l.DecidedBy is { } id ? partNames[id] : null, l.MissesByMm);

    private LargerDocument Of(LargerAnswer l)
    {
        SizedMachine small = Case.Machines[l.Smaller], large = Case.Machines[l.Larger];
        double peakSmall = MixAsked.PeakOf(Case, l.Smaller), peakLarge = MixAsked.PeakOf(Case, l.Larger);
        return new LargerDocument(
            small.Id, large.Id, l.Gained.Length, l.Lost.Length, [.. l.Gained.Take(NamesShown).Select(i => Case.Projects[i].Name)],
            l.Compared.Difference, l.Compared.Low, l.Compared.High, l.Compared.P, l.Compared.Distinguishable,
            l.Compared.Distinguishable ? null : l.Compared.MoreProjectsNeeded, l.Compared.Sentence(large.Name, small.Name),
            l.Month?.Hours, large.Price - small.Price, large.FloorM2 - small.FloorM2, WarmUp(l.Larger) - WarmUp(l.Smaller),
            answer.Work[l.Larger].Month is { EnergyKnown: true } a && answer.Work[l.Smaller].Month is { EnergyKnown: true } b
                ? a.EnergyKwh - b.EnergyKwh
                : null,
            peakSmall > 0 && peakLarge > 0 ? peakLarge - peakSmall : null);
    }

    private SameMoneyDocument Of(SameMoneyAnswer s) =>
        new(Side(s.Sides.Large, s.Question.One, s.FirstOfOneS), Side(s.Sides.Small, s.Question.Many, s.FirstOfManyS));

    private MoneySideDocument Side(MoneySide side, int machine, double? firstS)
    {
        double start = Case.Place.AttendedFrom(0);
        return new MoneySideDocument(
            Case.Machines[machine].Id, side.Machines, (decimal)side.Price,
            side.Machines > 0 ? Case.Projects.Count(p => p.CanMake[machine]) : 0, Case.Projects.Length, side.PerWeek?.PartsPerWeek,
            side.OneDown?.PartsPerWeek ?? 0, firstS, side.Project?.WholeInHandS - start);
    }

    private BreakEvenDocument Of(BreakEvenAnswer b) => new(
        Case.Machines[b.First].Id, Case.Machines[b.Second].Id, b.Projects, b.NowPerMonth, b.AtPerMonth, b.Interval?.Low, b.Interval?.High,
        b.DrawsWithOne, b.MostPerMonth, Case.Machines[b.FirstCheaperNow ? b.First : b.Second].Id, b.Surely,
        [.. b.Points.Select(p => new[] { p.PerMonth, p.First, p.Second })]);

    private OrderDocument Of(OrderPlan order, ImmutableArray<OrderAnswer> on) => new(
        order.Project, order.Copies, WeekTimes.Said(order.FromS), WeekTimes.Said(order.ByS),
        [
            .. on.Select(o => new OrderOnDocument(
                Case.Machines[o.Machine].Id, o.CanMake, o.InTime, o.Done, o.LastInHandS, o.LeastMachines, o.Limit switch
                {
                    Bottleneck.None => "none",
                    Bottleneck.Nights => "nights",
                    Bottleneck.Weekends => "weekends",
                    Bottleneck.UnattendedLimit => "unattended",
                    Bottleneck.Lesson => "lesson",
                    Bottleneck.RulesTogether => "rules",
                    Bottleneck.AttendedHours => "attended",
                    _ => "machine_hours",
                })),
        ]);

    private SelfMakingDocument Of(SelfMaking s) => new(
        s.Set.Of, s.Set.Set.Items.Sum(i => i.Quantity), [.. s.Alone.Select(m => Case.Machines[m].Id)],
        [.. s.Together.Select(set => set.Select(m => Case.Machines[m].Id).ToArray())], s.Missing, s.Cost, s.Hours)
    {
        Loads =
        [
            .. s.Alone.Where(m => Case.Machines[m].Price is not null).Select(m => (Machine: m, Load: Loads.Of(s.Set.Set, m)))
                .Where(x => x.Load is not null)
                .Select(x => new MachineLoadDocument(Case.Machines[x.Machine].Id, Of(x.Load!.Value))),
        ],
    };
}
