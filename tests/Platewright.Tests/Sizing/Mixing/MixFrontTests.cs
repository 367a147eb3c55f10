using CsCheck;
using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

public sealed class MixFrontTests
{
    [Fact]
    public void Of_SmallProblem_HoldsTheCheapestOfEveryMixAtTheSharesAsked() => SmallMixes.Problems.Sample(
        problem =>
        {
            MixFront front = MixFront.Of(problem, keep: 1000);
            Dictionary<double, decimal> every = SmallMixes.Enumerate(problem);
            if (every.Count == 0)
            {
                Assert.Empty(front.Mixes);
                return;
            }
            double all = problem.Projects.Sum(p => p.Weight);
            double reach = all == 0 ? 1 : every.Keys.Max() / all;
            foreach (double share in (double[])[0.5, 0.75, 0.9, 0.95, 1])
            {
                decimal cheapest = SmallMixes.Cheapest(problem, every, share * reach)!.Value;
                IEnumerable<FrontMix> covering = front.Mixes.Where(m => m.CoveredShare >= share * reach - 1e-6);
                Assert.Equal(cheapest, covering.Min(m => m.MonthlyCost));
            }
            foreach (FrontMix mix in front.Mixes)
            {
                // No mix of the front is better than trying every mix says is possible.
                Assert.True(mix.MonthlyCost >= SmallMixes.Cheapest(problem, every, mix.CoveredShare)!.Value);
                Assert.DoesNotContain(front.Mixes, other => !ReferenceEquals(other, mix) && Beats(other, mix));
            }
        },
        iter: 200);

    [Fact]
    public void Of_Thinned_KeepsTheEndsAndSaysSo()
    {
        MixProblem problem = SeededMixes.Of(40, 14, 1);
        MixFront all = MixFront.Of(problem, keep: 100_000, cancellation: TestContext.Current.CancellationToken);
        MixFront few = MixFront.Of(problem, keep: 20, cancellation: TestContext.Current.CancellationToken);

        Assert.False(all.Thinned);
        Assert.InRange(all.Mixes.Length, 21, 100_000);
        Assert.True(few.Thinned);
        Assert.Equal(all.Mixes.Length, few.NonDominated);
        Assert.Equal(20, few.Mixes.Length);
        foreach (Func<FrontMix, double> figure in Figures)
        {
            Assert.Equal(all.Mixes.Min(figure), few.Mixes.Min(figure));
            Assert.Equal(all.Mixes.Max(figure), few.Mixes.Max(figure));
        }
        Assert.Equal(
            all.Mixes.Where(m => m.Cheapest is not null).Select(Key),
            few.Mixes.Where(m => m.Cheapest is not null).Select(Key));
        Assert.Equal(
            few.Mixes.OrderByDescending(m => m.CoveredShare).ThenBy(m => m.MonthlyCost).Select(Key),
            few.Mixes.Select(Key));
        MixFront again = MixFront.Of(problem, keep: 20, cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(few.Mixes.Select(Key), again.Mixes.Select(Key));
    }

    [Fact]
    public void Of_TwoKinds_TurnRoundIsTheMeanOfTheFastestChosen()
    {
        // One project of two jobs, half the weight each: on the slow kind 4 h and 2 h; the fast one makes the first only.
        var problem = new MixProblem(
            [new("slow", 10, 100), new("fast", 30, 100)],
            [
                new("jig", 1, [
                    new("arm", [new JobOn(4, 1, 4), new JobOn(1, 0, 1)]), new("base", [new JobOn(2, 1, 2), null]),
                ]),
            ],
            1,
            new());

        MixFront front = MixFront.Of(problem, cancellation: TestContext.Current.CancellationToken);

        FrontMix slow = Assert.Single(front.Mixes, m => m.Counts is [1, 0]);
        Assert.Equal(3, slow.TurnRoundHours);
        Assert.Equal(12, slow.MonthlyCost);
        Assert.Equal(MixStatus.Optimal, slow.Cheapest);
    }

    private static readonly Func<FrontMix, double>[] Figures =
        [m => m.CoveredShare, m => (double)m.MonthlyCost, m => m.TurnRoundHours, m => m.FloorM2, m => m.PeakW];

    private static bool Beats(FrontMix a, FrontMix b) =>
        a.CoveredShare >= b.CoveredShare && a.MonthlyCost <= b.MonthlyCost && a.TurnRoundHours <= b.TurnRoundHours
        && a.FloorM2 <= b.FloorM2 && a.PeakW <= b.PeakW;

    private static string Key(FrontMix mix) =>
        string.Join(' ', mix.Counts) + $" {mix.CoveredShare:r} {mix.MonthlyCost} {mix.TurnRoundHours:r}";
}
