using CsCheck;
using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

/// <summary>The path of large problems, held against the exact one and against trying every mix.</summary>
public sealed class BracketMixTests
{
    private const double ShareRounding = 1e-6;

    private const long Trials = 500;

    private static readonly MixEffort Bracketed = new(ExactAssignments: 0, RelativeGap: 0);

    [Fact]
    public void Solve_Bracketed_HoldsTheOptimumBetweenBoundAndAnswer() => SmallMixes.Problems.Sample(
        problem =>
        {
            Dictionary<double, decimal> every = SmallMixes.Enumerate(problem);
            MixAnswer answer = Mix.Solve(problem, Bracketed);
            if (every.Count == 0)
            {
                Assert.Equal(MixStatus.LeastCountsBreakLimits, answer.Status);
                return;
            }
            double all = problem.Projects.Sum(p => p.Weight);
            double most = all == 0 ? 1 : every.Keys.Max() / all;
            decimal? cheapest = SmallMixes.Cheapest(problem, every, problem.LeastShare);
            MixAccount.Check(problem, answer.Mix!);
            Assert.True(answer.ReachBound >= most - ShareRounding, $"reach {answer.ReachBound} < {most}");
            if (answer.Status is MixStatus.Optimal or MixStatus.Within)
            {
                Assert.True(answer.Mix!.CoveredShare >= problem.LeastShare - ShareRounding);
                Assert.InRange(cheapest!.Value, answer.CostBound, answer.Mix.MonthlyCost);
                if (answer.Status == MixStatus.Optimal) Assert.Equal(cheapest, answer.Mix.MonthlyCost);
                return;
            }
            if (answer.Status == MixStatus.Unreachable) Assert.Null(cheapest);
            decimal here = SmallMixes.Cheapest(problem, every, answer.Mix!.CoveredShare)!.Value;
            Assert.InRange(here, answer.CostBound, answer.Mix.MonthlyCost);
        },
        iter: Trials);

    [Theory]
    [InlineData(1, 0.05)]
    [InlineData(0.8, 0.08)]
    public void Solve_Bracketed_ComesCloseToTheExactAnswer(double share, double apart)
    {
        // A regression limit of our own, not a published figure: wide enough for the search, not for a loose bound.
        MixProblem problem = SeededMixes.Of(60, 6, share);
        MixAnswer exact = Mix.Solve(problem, cancellation: TestContext.Current.CancellationToken);
        MixAnswer bracket = Mix.Solve(problem, Bracketed, TestContext.Current.CancellationToken);

        Assert.Equal(MixStatus.Optimal, exact.Status);
        Assert.InRange(exact.Mix!.MonthlyCost, bracket.CostBound, bracket.Mix!.MonthlyCost);
        Assert.InRange(bracket.RelativeGap, 0, apart);
        MixAccount.Check(problem, bracket.Mix);
    }

    [Fact]
    public void Solve_PublishedInstance_IsHeldBetweenBoundAndAnswer()
    {
        // Holmberg, Rönnqvist & Yuan 1999, EJOR 113:544-559, p1 = 8848.
        const string Name = "sizing_holmberg_p1.json";
        Repository.SharedOrSkip("reference", "scheduling", Name);
        (MixProblem problem, decimal optimum) = PublishedMixes.Read(Name)!.Value;

        MixAnswer answer = Mix.Solve(problem, Bracketed, TestContext.Current.CancellationToken);

        Assert.InRange(optimum, answer.CostBound, answer.Mix!.MonthlyCost);
        MixAccount.Check(problem, answer.Mix);
    }

    [Fact]
    public void Solve_NoTimeToSearch_ProvesNothingFalse()
    {
        // Stopped before its first relaxation, the exact solver must not pass off an empty bound as a proof.
        MixProblem problem = SeededMixes.Of(60, 6, 0.9) with { Limits = new(Machines: 3) };
        MixAnswer hurried = Mix.Solve(
            problem, new(DeterministicSeconds: 1e-6, Rounds: 1), TestContext.Current.CancellationToken);
        MixAnswer exact = Mix.Solve(problem, cancellation: TestContext.Current.CancellationToken);

        Assert.True(hurried.ReachBound >= exact.Mix!.CoveredShare - ShareRounding);
        if (exact.Status == MixStatus.Optimal) Assert.NotEqual(MixStatus.Unreachable, hurried.Status);
    }
}
