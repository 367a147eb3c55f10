using System.Collections.Immutable;
using CsCheck;
using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

public sealed class MixTests
{
    private const long Trials = 300;

    [Fact]
    public void Solve_SmallProblem_EqualsTryingEveryMix() => SmallMixes.Problems.Sample(
        problem =>
        {
            Dictionary<double, decimal> every = SmallMixes.Enumerate(problem);
            double all = problem.Projects.Sum(p => p.Weight);
            MixAnswer answer = Mix.Solve(problem);

            if (every.Count == 0)
            {
                Assert.Equal(MixStatus.LeastCountsBreakLimits, answer.Status);
                return;
            }
            double most = all == 0 ? 1 : every.Keys.Max() / all;
            MixAccount.Check(problem, answer.Mix!);
            if (SmallMixes.Cheapest(problem, every, problem.LeastShare) is { } cheapest)
            {
                Assert.Equal(MixStatus.Optimal, answer.Status);
                Assert.Equal(cheapest, answer.Mix!.MonthlyCost);
                Assert.Empty(answer.Blocking);
            }
            else
            {
                Assert.Equal(MixStatus.Unreachable, answer.Status);
                Assert.Equal(most, answer.Mix!.CoveredShare, 1e-6);
                Assert.Equal(SmallMixes.Cheapest(problem, every, most), answer.Mix.MonthlyCost);
                Assert.Equal(most, answer.ReachBound, 1e-6);
                CheckBlocking(problem, answer.Blocking);
            }
            Assert.Equal(answer.Mix.MonthlyCost, answer.CostBound);
            Assert.Equal(MixStop.Proved, answer.Stop);
        },
        iter: Trials);

    [Fact]
    public void Solve_HigherShare_NeverCostsLess() =>
        Gen.Select(SmallMixes.Problems, Gen.Double[0, 1]).Sample(
            (problem, share) =>
            {
                MixAnswer high = Mix.Solve(problem);
                MixAnswer low = Mix.Solve(problem with { LeastShare = share * problem.LeastShare });
                if (high.Mix is not null && high.Status == MixStatus.Optimal)
                    Assert.True(low.Mix!.MonthlyCost <= high.Mix.MonthlyCost, $"{low.Mix.MonthlyCost} > {high.Mix.MonthlyCost}");
            },
            iter: Trials);

    [Fact]
    public void Solve_LimitLifted_NeverCostsMore() =>
        Gen.Select(SmallMixes.Problems, Gen.Int[0, 3]).Sample(
            (problem, limit) =>
            {
                MixAnswer held = Mix.Solve(problem);
                MixAnswer lifted = Mix.Solve(Without(problem, (MixLimit)limit));
                if (held.Mix is null) return;
                Assert.True(lifted.Mix!.CoveredShare >= Math.Min(problem.LeastShare, held.Mix.CoveredShare) - 1e-6);
                if (held.Status == MixStatus.Optimal) Assert.True(lifted.Mix.MonthlyCost <= held.Mix.MonthlyCost);
            },
            iter: Trials);

    [Fact]
    public void Solve_Twice_GivesTheSameAnswer() => SmallMixes.Problems.Sample(
        problem =>
        {
            MixAnswer first = Mix.Solve(problem), second = Mix.Solve(problem);
            Assert.Equal(first.Status, second.Status);
            Assert.Equal(first.Mix?.Counts.AsEnumerable(), second.Mix?.Counts.AsEnumerable());
            Assert.Equal(first.Mix?.KindOfJob.SelectMany(j => j), second.Mix?.KindOfJob.SelectMany(j => j));
        },
        iter: Trials / 3);

    [Fact]
    public void Solve_NoWork_NeedsNoMachine()
    {
        MixAnswer answer = Mix.Solve(
            new([new("small", 10, 100)], [], 1, new()), cancellation: TestContext.Current.CancellationToken);
        Assert.Equal(MixStatus.Optimal, answer.Status);
        Assert.Equal(0, answer.Mix!.MonthlyCost);
        Assert.Equal(0, Assert.Single(answer.Mix.Counts));
    }

    [Theory]
    [InlineData(1.01)]
    [InlineData(-0.01)]
    [InlineData(double.NaN)]
    public void Solve_ImpossibleShare_IsRefused(double share) =>
        Assert.Throws<ArgumentException>(() => Mix.Solve(
            new([new("small", 10, 100)], [], share, new()), cancellation: TestContext.Current.CancellationToken));

    [Fact]
    public void Solve_Nonsense_IsRefusedByName()
    {
        static void Refused(string word, MixKind kind, params MixProject[] projects)
        {
            var e = Assert.ThrowsAny<ArgumentException>(() => Mix.Solve(new([kind], [.. projects], 1, new())));
            Assert.Contains(word, e.Message, StringComparison.Ordinal);
        }
        var kind = new MixKind("small", 10, 100);
        Refused("cost", kind with { CostPerMonth = -1 });
        Refused("hours", kind with { HoursPerMonth = double.PositiveInfinity });
        Refused("small", kind with { Least = 3, Most = 2 });
        Refused("jig", kind, new MixProject("jig", 0, [new("arm", [new JobOn(1, 1)])]));
        Refused("jig", kind, new MixProject("jig", 1, []));
        Refused("arm", kind, new MixProject("jig", 1, [new("arm", [])]));
    }

    [Fact]
    public void Solve_Stopped_Throws()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var problem = new MixProblem([new("small", 10, 100)], [new("jig", 1, [new("arm", [new JobOn(1, 1)])])], 1, new());
        Assert.ThrowsAny<OperationCanceledException>(() => Mix.Solve(problem, cancellation: stopped.Token));
    }

    private static MixProblem Without(MixProblem problem, MixLimit limit) => limit switch
    {
        MixLimit.Budget => problem with { Limits = problem.Limits with { Budget = null } },
        MixLimit.Floor => problem with { Limits = problem.Limits with { FloorM2 = null } },
        MixLimit.Power => problem with { Limits = problem.Limits with { PowerW = null } },
        MixLimit.Machines => problem with { Limits = problem.Limits with { Machines = null } },
        _ => throw new ArgumentOutOfRangeException(nameof(limit), limit, "Expected a limit of the place."),
    };

    private static void CheckBlocking(MixProblem problem, ImmutableArray<MixLimit> blocking)
    {
        for (MixLimit limit = MixLimit.Budget; limit <= MixLimit.Machines; limit++)
        {
            MixProblem lifted = Without(problem, limit);
            bool reached = lifted != problem && SmallMixes.Cheapest(lifted, SmallMixes.Enumerate(lifted), problem.LeastShare) is not null;
            Assert.Equal(reached, blocking.Contains(limit));
        }
    }
}
