using System.Collections.Immutable;
using Platewright.Sizing;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Covering;
using Platewright.Sizing.Statistics;

namespace Platewright.Tests.Sizing;

public sealed class MeasuredCoverageTests
{
    private const double Confidence = 0.95;

    private static readonly WorkStatement Sampled = new(Sample: true, Population: null, RatesAssumed: false);

    /// <summary>Two machines; the second takes all of what was read, the bracket with a compromise.</summary>
    private static readonly WorkProject[] Projects =
    [
        Project(0, 10, Item(2, 1800, 15, FitClass.Fits, FitClass.Fits)),
        Project(1, 1, Item(1, 7200, 100, null, FitClass.Compromise), Item(7, 3600, 10, FitClass.Fits, FitClass.Fits)),
        Project(2, 4, Item(5, null, null, null, FitClass.Fits)),
        Project(3, 2),
    ];

    [Theory]
    [InlineData(Measure.Parts, 9, 15, 3, 1)]
    [InlineData(Measure.Projects, 1, 4, 4, 0)]
    [InlineData(Measure.ProjectsAsMade, 10, 17, 4, 0)]
    [InlineData(Measure.Hours, 10, 19, 2, 2)]
    [InlineData(Measure.Mass, 300, 470, 2, 2)]
    public void Of_SmallMachine_TakesWhatIsWorkedByHand(
        Measure measure, double covered, double total, int counted, int leftOut)
    {
        WeightedShare share = Of(Sampled).Single(c => c.Machine == 0 && c.Measure == measure).CanMake;
        Assert.Equal((covered, total), (share.Covered, share.Total));
        Assert.Equal((counted, leftOut), (share.Projects, share.LeftOut));
    }

    [Theory]
    [InlineData(Measure.Parts, 15, 14)]
    [InlineData(Measure.Projects, 3, 2)]
    [InlineData(Measure.ProjectsAsMade, 15, 14)]
    [InlineData(Measure.Hours, 19, 10)]
    [InlineData(Measure.Mass, 470, 300)]
    public void Of_LargeMachine_TellsWhatItMakesWithoutCompromise(Measure measure, double made, double uncompromised)
    {
        MeasuredCoverage coverage = Of(Sampled).Single(c => c.Machine == 1 && c.Measure == measure);
        Assert.Equal((made, uncompromised), (coverage.CanMake.Covered, coverage.WithoutCompromise.Covered));
    }

    [Fact]
    public void Of_PlainProjects_HaveWilsonsInterval()
    {
        Share plain = Share.Wilson(1, 4, Confidence);
        WeightedShare share = Of(Sampled).Single(c => c.Machine == 0 && c.Measure == Measure.Projects).CanMake;
        Assert.Equal((plain.Low, plain.High), (share.Low, share.High));

        Share finite = Share.Wilson(1, 4, Confidence, 6);
        share = Of(Sampled with { Population = 6 })
            .Single(c => c.Machine == 0 && c.Measure == Measure.Projects).CanMake;
        Assert.Equal((finite.Low, finite.High), (share.Low, share.High));
    }

    [Fact]
    public void Of_PartsOfOneProject_AreNotSeparateEvidence()
    {
        // 4 projects of 50 copies say what 4 projects say, not what 200 copies would.
        WorkProject[] projects =
        [
            .. Enumerable.Range(0, 4).Select(i => Project(
                i, 1, Item(50, 60, 1, i < 3 ? FitClass.Fits : null, FitClass.Fits))),
        ];
        WeightedShare parts = MeasuredCoverage.Of(projects, 2, Sampled, Confidence)
            .Single(c => c.Machine == 0 && c.Measure == Measure.Parts).CanMake;
        Share four = Share.Wilson(3, 4, Confidence);
        Assert.Equal(0.75, parts.Value);
        Assert.True(parts.Low <= four.Low && parts.High >= four.High);
    }

    [Fact]
    public void Of_AllTheWorkThereIs_DoubtsOnlyWhatIsNotKnown()
    {
        foreach (MeasuredCoverage coverage in Of(new WorkStatement(Sample: false, null, false)))
        {
            WeightedShare share = coverage.CanMake;
            if (share.LeftOut == 0) Assert.Equal((share.Value, share.Value), (share.Low, share.High));
            else Assert.True(share.Low < share.High);
        }
    }

    [Fact]
    public void Of_NoProjects_SaysNothing() =>
        Assert.All(MeasuredCoverage.Of([], 1, Sampled, Confidence), coverage =>
        {
            Assert.Null(coverage.CanMake.Value);
            Assert.Equal((0, 1), (coverage.CanMake.Low, coverage.CanMake.High));
        });

    [Fact]
    public void Of_ImpossibleArguments_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => MeasuredCoverage.Of(Projects, 3, Sampled, Confidence));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(Sampled with { Population = 3 }));
    }

    private static ImmutableArray<MeasuredCoverage> Of(WorkStatement statement) =>
        MeasuredCoverage.Of(Projects, 2, statement, Confidence);

    private static WorkProject Project(int index, double perMonth, params ImmutableArray<WorkItem> items)
    {
        FitClass Worst(int machine) => items.IsEmpty ? FitClass.No : items.Max(i => i.On[machine]?.Fit ?? FitClass.No);
        ImmutableArray<FitClass> fits = [Worst(0), Worst(1)];
        return new WorkProject(
            index, $"project-{index}", $"Project {index}", false, perMonth, fits,
            [.. fits.Select(f => f != FitClass.No)], items);
    }

    private static WorkItem Item(int quantity, double? seconds, double? grams, params FitClass?[] on) => new(
        "part", "Part", quantity,
        [.. on.Select(f => f is { } fit
            ? new Making("part", fit, seconds, 0, 0, 0, 0, grams, null, null, null, Reckoned: false)
            : null)],
        seconds, grams, ReferenceReckoned: false);
}
