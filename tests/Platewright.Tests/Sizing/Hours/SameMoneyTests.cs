using Platewright.Sizing.Hours;
using static Platewright.Tests.Sizing.Hours.Places;

namespace Platewright.Tests.Sizing.Hours;

public sealed class SameMoneyTests
{
    private static readonly ComparedJob[] Work =
    [
        new("bracket", 100, 2, 4, new BuildStages(5 * H), new BuildStages(6 * H)),
        new("case", 100, 1, 1, new BuildStages(5 * H), null),
        new("bust", 1, 1, 0, new BuildStages(40 * H), new BuildStages(200 * H)),
    ];

    // Somebody Monday to Friday 08:00-17:00, at most a night alone.
    private static readonly Place Workshop = Office(new RunLimits { LongestUnattendedS = 15 * H });

    [Fact]
    public void Of_OneLargeOrThreeSmall_TellsBothSides()
    {
        SameMoney answer = SameMoney.Of(Workshop, Work, 1000, 300, Mon(8));

        Assert.Equal((1, 1000.0), (answer.Large.Machines, answer.Large.Price));
        Assert.Equal((3, 900.0), (answer.Small.Machines, answer.Small.Price));
        Assert.Empty(answer.Large.CannotMake);
        Assert.Empty(answer.Large.NeverHere);
        Assert.Equal(["case"], answer.Small.CannotMake);
        // 200 h from Monday 08:00 would reach over a weekend of 63 h.
        Assert.Equal(["bust"], answer.Small.NeverHere);
    }

    [Fact]
    public void Of_SmallOnes_WorkWithOneDown()
    {
        MoneySide small = SameMoney.Of(Workshop, Work, 1000, 300, Mon(8)).Small;

        // Weekdays two of 6 h: 08-14 and 14-20; on Friday 14-20 too: ten a week for each machine.
        Assert.Equal(30, small.PerWeek!.BuildsPerWeek, 1e-9);
        Assert.Equal(60, small.PerWeek.PartsPerWeek, 1e-9);
        Assert.Equal(20, small.OneDown!.BuildsPerWeek, 1e-9);
        // Four brackets on three machines: 14:00, and the fourth on Tuesday 08:00; the case is missing.
        Assert.Equal(Mon(14), small.Project!.FirstInHandS);
        Assert.Equal(Tue(8), small.Project.WholeInHandS);
        Assert.False(small.ProjectComplete);
    }

    [Fact]
    public void Of_LargeOne_HasNothingLeftWhenItIsDown()
    {
        MoneySide large = SameMoney.Of(Workshop, Work, 1000, 300, Mon(8)).Large;

        Assert.Null(large.OneDown);
        Assert.True(large.ProjectComplete);
        // Five of 5 h: Mon 08-13, 13-18 found Tue 08, -13, 13-18 found Wed 08, -13.
        Assert.Equal(Mon(13), large.Project!.FirstInHandS);
        Assert.Equal(At(DayOfWeek.Wednesday, 13), large.Project.WholeInHandS);
    }

    [Fact]
    public void Of_SmallCostsMore_HasNoneOfIt()
    {
        MoneySide small = SameMoney.Of(Workshop, Work, 300, 1000, Mon(8)).Small;

        Assert.Equal(0, small.Machines);
        Assert.Null(small.PerWeek);
        Assert.Null(small.Project);
        Assert.False(small.ProjectComplete);
        Assert.Equal(4, SameMoney.Of(Workshop, Work, 300, 1000, Mon(8), small: 4).Small.Machines);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(1, 0)]
    [InlineData(double.NaN, 1)]
    [InlineData(1, double.PositiveInfinity)]
    public void Buys_NonsensePrice_IsRefused(double large, double small) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SameMoney.Buys(large, small));
}
