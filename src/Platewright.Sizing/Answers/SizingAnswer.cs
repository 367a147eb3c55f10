using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Covering;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>Everything sizing answers about a case.</summary>
/// <param name="Interval">Of a month's total of each machine, over the draws; null where there is no account.</param>
public sealed record SizingAnswer(
    SizingCase Case, ImmutableArray<MeasuredCoverage> Coverage, ImmutableArray<MachineWork> Work, ImmutableArray<(double Low, double High)?> Interval,
    ImmutableArray<Level> Levels, ImmutableArray<LargerAnswer> Larger, ImmutableArray<SameMoneyAnswer> SameMoney,
    ImmutableArray<BreakEvenAnswer> BreakEvens, TurnRoundAnswer? TurnRound, ImmutableArray<ImmutableArray<OrderAnswer>> Orders,
    ImmutableArray<SelfMaking> SelfMaking, MixAnswered? Mix)
{
    /// <summary>What a month of each project costs.</summary>
    public ImmutableArray<double?> WorkCosts { get; init; } = [];

    /// <summary>Hours and money against the size of a machine.</summary>
    public ImmutableArray<MeasuredCurve> Curves { get; init; } = [];

    /// <summary>Projects, hours and money against the price of a machine.</summary>
    public ImmutableArray<PriceCurve> PriceCurves { get; init; } = [];

    /// <summary>What the printed parts of each machine cost to make, 0 for none.</summary>
    public ImmutableArray<decimal> PrintedParts { get; init; } = [];

    /// <summary>The main flow: each answer from the case and those before it.</summary>
    public static SizingAnswer Of(SizingCase c, CancellationToken cancel)
    {
        ImmutableArray<decimal> printedParts = Answers.SelfMaking.CostsOf(c);
        ImmutableArray<MachineWork> work = MachineWork.Of(c, printedParts);
        cancel.ThrowIfCancellationRequested();
        // The mix takes as long as all the others together and needs none of them.
        Task<MixAnswered?> mixing = Task.Run(() => MixAnswered.Of(c, work, printedParts, cancel), cancel);
        ImmutableArray<double?> costs = Covering.WorkCosts.Of(c);
        ImmutableArray<MeasuredCoverage> coverage = MeasuredCoverage.Of(c.Projects, c.Machines.Length, c.Work, c.Confidence, costs);
        Draws draws = Draws.Of(c.Costs, c.Machines.Length);
        ImmutableArray<LargerAnswer> larger = LargerAnswer.Of(c);
        SizingAnswer answer = new(
            c, coverage, work, [.. work.Select(w => IntervalOf(c, w, printedParts[w.Machine], draws))],
            Level.Of(c), larger, SameMoneyAnswer.Of(c),
            [.. larger.Select(l => BreakEvenAnswer.Of(c, l.Smaller, l.Larger, work, printedParts, draws)).OfType<BreakEvenAnswer>()],
            TurnRoundAnswer.Of(c),
            [.. c.Orders.Select(o => OrderAnswer.Of(c, o))],
            [.. c.PrintedParts.Select(s => Answers.SelfMaking.Of(c, s))],
            Mix: null)
        {
            WorkCosts = costs,
            Curves = MeasuredCurve.Of(c, costs),
            PriceCurves = PriceCurve.Of(c, costs),
            PrintedParts = printedParts,
        };
        return answer with { Mix = mixing.GetAwaiter().GetResult() };
    }

    private static (double Low, double High)? IntervalOf(SizingCase c, MachineWork work, decimal printedParts, Draws draws)
    {
        if (work.Account is null) return null;
        (double low, double high) = TimeDoubts.Of(c, work.Machine);
        double[] totals =
        [
            .. Enumerable.Range(0, draws.Numbers.Length)
                .Select(d => (double)CostAccount.Of(c.Machines[work.Machine], work.Needed, work.Month, draws.For(d, work.Machine, low, high), printedParts).Total)
                .Order(),
        ];
        return Draws.Ends(totals, c.Confidence);
    }
}
