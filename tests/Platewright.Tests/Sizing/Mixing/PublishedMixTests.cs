using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

public sealed class PublishedMixTests
{
    private const string Absent = "absent";

    public static TheoryData<string> Instances()
    {
        TheoryData<string> data = [.. PublishedMixes.Names()];
        if (data.Count == 0) data.Add(Absent);
        return data;
    }

    [Theory]
    [MemberData(nameof(Instances))]
    public void Solve_PublishedInstance_HitsTheProvedOptimum(string name)
    {
        // Holmberg, Rönnqvist & Yuan 1999, EJOR 113:544-559, p1 = 8848; OR-Library scp41 = 429. The file holds the value.
        Repository.SharedOrSkip("reference", "scheduling", name);
        Assert.SkipWhen(PublishedMixes.Read(name) is null, $"{name}: nothing here solves it.");
        (MixProblem problem, decimal optimum) = PublishedMixes.Read(name)!.Value;

        MixAnswer answer = Mix.Solve(problem, cancellation: TestContext.Current.CancellationToken);

        Assert.Equal(MixStatus.Optimal, answer.Status);
        Assert.Equal(optimum, answer.Mix!.MonthlyCost);
        Assert.Equal(optimum, answer.CostBound);
        Assert.Equal(1, answer.Mix.CoveredShare);
        MixAccount.Check(problem, answer.Mix);
    }
}
