using System.Collections.Immutable;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Mixing;
using Platewright.Sizing.Money;
using Platewright.Study;
using Platewright.Study.Deciding;
using Platewright.Study.Documents;

namespace Platewright.Tests.Sizing.Answers;

public sealed class SizingAnswerTests
{
    private static readonly ImmutableArray<SizedMachine> Two = [Cases.Machine("small", 100, 300), Cases.Machine("large", 300, 1500)];

    [Fact]
    public void Answer_SmallMakesAll_IsTheSmallOne()
    {
        SizingAnswer answer = SizingAnswer.Of(Cases.Of(Two, Cases.Project(0, 4, 2, 2), Cases.Project(1, 2, 5, 5)), TestContext.Current.CancellationToken);

        Assert.Equal(MixStatus.Optimal, answer.Mix!.Answer.Status);
        Assert.Equal([1, 0], answer.Mix.Answer.Mix!.Counts);
        Assert.Equal(4 * 2 + 2 * 5, answer.Work[0].Month.Hours, 1e-9);
        Assert.InRange(answer.Work[0].Account!.Total - answer.Mix.Answer.Mix.MonthlyCost, -0.01m, 0.01m);
    }

    [Fact]
    public void Answer_LargePartIsMostOfTheWork_IsTheLargeOne()
    {
        SizingAnswer answer = SizingAnswer.Of(Cases.Of(Two, Cases.Project(0, 1, 2, 2), Cases.Project(1, 9, null, 5)), TestContext.Current.CancellationToken);

        Assert.Equal([0, 1], answer.Mix!.Answer.Mix!.Counts);
        LargerAnswer larger = Assert.Single(answer.Larger);
        Assert.Equal([1], larger.Gained);
        Assert.Equal(45, larger.Month!.Value.Hours, 1e-9);
    }

    [Fact]
    public void Answer_MoreHoursThanOneGives_IsSeveral()
    {
        // 300 builds of 10 h are 3,000 h, and a tenth fails: 3,333 h of at most 730.5 h each.
        SizingAnswer answer = SizingAnswer.Of(Cases.Of(Two, Cases.Project(0, 300, 10, null)), TestContext.Current.CancellationToken);

        Assert.InRange(answer.Mix!.Answer.Mix!.Counts[0], 5, 6);
        Assert.Equal(answer.Work[0].Needed, answer.Mix.Answer.Mix.Counts[0]);
    }

    [Fact]
    public void Answer_NoPriceAnywhere_HasCoverageButNoMoney()
    {
        SizingAnswer answer = SizingAnswer.Of(Cases.Of([Cases.Machine("a", 100, null)], Cases.Project(0, 1, 2)), TestContext.Current.CancellationToken);

        Assert.Null(answer.Mix);
        Assert.Null(answer.Work[0].Account);
        Assert.NotEmpty(answer.Coverage);
    }

    [Fact]
    public void Answer_Owned_CostsNoPurchase()
    {
        SizingCase c = Cases.Of(Two, Cases.Project(0, 4, 2, 2)) with { Aim = Aim.None with { Owned = ["large"] } };

        MachineMix mix = SizingAnswer.Of(c, TestContext.Current.CancellationToken).Mix!.Answer.Mix!;

        Assert.Equal(0, mix.Price);
        Assert.Equal(1, mix.Counts.Sum());
    }

    [Fact]
    public void Answer_OwnedBreaksALimit_SaysSoAndNothingElse()
    {
        SizingCase c = Cases.Of(Two, Cases.Project(0, 4, 2, 2)) with { Aim = Aim.None with { Owned = ["large"], CircuitW = 150 } };

        SizingAnswer answer = SizingAnswer.Of(c, TestContext.Current.CancellationToken);
        SizingDocument document =
            new SizingDescription(answer, SizingPlan.Unsaid, new Dictionary<string, string> { ["p0-1"] = "a" }).Describe([]);

        Assert.Equal(MixStatus.LeastCountsBreakLimits, answer.Mix!.Answer.Status);
        Assert.Equal("no_room", document.Mix!.Status);
        Assert.Empty(document.Mix.Machines);
        Assert.Empty(document.Front);
        Assert.Empty(document.Sensitivity);
    }

    [Fact]
    public void Levels_OfCubes_AreTheirQuantiles()
    {
        // Ten cubes with edges 50, 60 … 140: half of them are held by 90, nine by 130.
        SizingCase c = Cases.Of(Two, [.. Enumerable.Range(0, 10).Select(i => Cases.Project(i, 1, 1, 1))]);

        ImmutableArray<Level> levels = Level.Of(c);

        Assert.Equal([90, 120, 130, 140], levels.Select(l => l.CubeMm!.Value));
        Assert.Equal(["p4-1", "p7-1", "p8-1", "p9-1"], levels.Select(l => l.DecidedBy));
        Assert.Equal([null, 30, 10, 10], levels.Select(l => l.MissesByMm));
        Assert.All(levels, l => Assert.Equal((l.CubeMm, l.CubeMm), (l.Box!.Value.BedMm, l.Box.Value.HeightMm)));
    }

    [Fact]
    public void SelfMaking_NoneAlone_NamesTheSmallestSetsThatDo()
    {
        WorkProject set = Cases.Project(0, 0, 1, null) with
        {
            CanMake = [false, false],
            Items = [Cases.Project(0, 0, 1, null).Items[0], Cases.Project(1, 0, null, 1).Items[0]],
        };

        SelfMaking answer = SelfMaking.Of(Cases.Of(Two), new PrintedSet("bench two", set));

        Assert.Empty(answer.Alone);
        Assert.Equal([0, 1], Assert.Single(answer.Together));
        Assert.Empty(answer.Missing);
    }

    [Fact]
    public void Order_OfOnePart_CountsWhatIsInHand()
    {
        // 13 minutes of handling and 2 h each, from Monday 08:00 on: four are in hand after 8 h 52 min.
        SizingCase c = Cases.Of(Two, Cases.Project(0, 1, 2, null));
        const double Monday8 = 8 * 3600;

        ImmutableArray<OrderAnswer> on = OrderAnswer.Of(c, new Order(0, 8, Monday8, Monday8 + 9 * 3600));

        Assert.Equal((4, false, (int?)2), (on[0].Done, on[0].InTime, on[0].LeastMachines));
        Assert.False(on[1].CanMake);
    }

    [Fact]
    public void Draws_Spread_LeavesTwoAndAHalfPercentOnEachSide()
    {
        Draws draws = Draws.Of(new CostAssumptions(), 2);

        Assert.InRange(draws.Numbers.Count(n => n.EnergyPerKwh < 0.18) / 1000.0, 0.012, 0.04);
        Assert.InRange(draws.Numbers.Count(n => n.EnergyPerKwh > 0.45) / 1000.0, 0.012, 0.04);
        Assert.Equal(draws.Numbers[7], Draws.Of(new CostAssumptions(), 2).Numbers[7]);
    }

    /// <summary>A wide doubt of one number alone must be able to change the answer, and a narrow one must not.</summary>
    [Fact]
    public void Sensitivity_LabourThatMayBeDear_ChangesTheAnswer()
    {
        // The small machine takes five times as long; at 0 for an hour of tending it is cheaper, at 60 it is not.
        SizingCase c = Cases.Of(
            [
                Cases.Machine("small", 100, 300) with { Upkeep = new() { MaintainHPer100H = 5 } },
                Cases.Machine("large", 300, 1500) with { Upkeep = new() { MaintainHPer100H = 5 } },
            ],
            Cases.Project(0, 10, 20, 4)) with
        { Costs = new CostAssumptions { LabourPerH = new(0, 0, 60, "test") } };

        Sensitivity labour = SizingAnswer.Of(c, TestContext.Current.CancellationToken).Mix!.Sensitivities.Single(s => s.Key == "cost.labour_per_h");

        Assert.True(labour.Changes);
        Assert.Equal([1, 0], labour.LowCounts!.Value);
        Assert.Equal([0, 1], labour.HighCounts!.Value);
    }
}
