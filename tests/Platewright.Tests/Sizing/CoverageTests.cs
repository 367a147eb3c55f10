using Platewright.Fit;
using Platewright.Sizing;

namespace Platewright.Tests.Sizing;

public sealed class CoverageTests
{
    [Fact]
    public void Of_Outcomes_CountsClassesAndNamesWhatDecides()
    {
        Coverage coverage = Coverage.Of(
            [
                new(Verdict.AsDrawn, true, null), new(Verdict.Turned, false, "hot"),
                new(Verdict.Tilted, true, "leaning"), new(Verdict.Scaled, true, "leaning"),
                new(Verdict.InPieces, true, "long"), new(Verdict.No, false, "huge"),
            ],
            0.95);

        Share[] shares = [coverage.Fits, coverage.Compromise, coverage.No, coverage.CanMake];
        Assert.Equal([2, 3, 1, 4], shares.Select(s => s.Count));
        Assert.All(shares, s => Assert.Equal(6, s.Of));
        Assert.Equal(["hot", "huge", "leaning", "long"], coverage.DecidingParts);
        Assert.Equal(Share.Wilson(2, 6, 0.95), coverage.Fits);
    }

    [Theory]
    [InlineData(200, 60, 0, 190, 50, 0, HeatAnswer.Reaches, 0)]
    [InlineData(200, 60, 0, 200, 60, 0, HeatAnswer.Reaches, 0)]
    [InlineData(200, 60, 0, 230, 95, 45, HeatAnswer.TooCool, 3)]
    [InlineData(260, 90, 30, 230, 95, 45, HeatAnswer.TooCool, 2)]
    public void HeatCheck_ComparesEachTemperature(
        double nozzle, double bed, double chamber, double needNozzle, double needBed, double needChamber,
        HeatAnswer answer, int missing)
    {
        HeatCheck check = HeatCheck.Of(new(nozzle, bed, chamber), new(needNozzle, needBed, needChamber));

        Assert.Equal(answer, check.Answer);
        Assert.Equal(missing, check.Missing.Length);
    }

    [Fact]
    public void HeatCheck_SaysWhichAndByHowMuch()
    {
        HeatShortfall missing = Assert.Single(HeatCheck.Of(new(280, 100, 0), new(230, 95, 45)).Missing);
        Assert.Equal(new HeatShortfall(HeatedThing.Chamber, 45, 0), missing);
        Assert.Equal(45, missing.MissingC);
        Assert.Equal(HeatAnswer.NotJudged, HeatCheck.Of(null, new(230, 95, 45)).Answer);
        Assert.Equal(HeatAnswer.NotJudged, HeatCheck.Of(new(230, 95, 45), null).Answer);
    }

    [Fact]
    public void Headline_IsTheSmallestOfThoseThatMakeTheMost()
    {
        Headline headline = Headline.Of(
            [
                new("small", 160, Share.Wilson(5, 18, 0.95)), new("large", 440, Share.Wilson(14, 18, 0.95)),
                new("middle", 330, Share.Wilson(14, 18, 0.95)), new("lower", 265, Share.Wilson(11, 18, 0.95)),
            ],
            0.95);

        // 14 of 18: Wilson 0.548 to 0.910, by Newcombe's method 3.
        Assert.Equal(
            "Of 18 projects, middle can make 14 (78 %; 95 % interval 55 to 91 %); "
                + "the best smaller machine, lower, can make 11.",
            headline.Sentence());
    }

    [Fact]
    public void Headline_WithNothingMade_SaysSo() => Assert.Equal(
        "Of 1 project, none of these machines can make any (90 % interval 0 to 73 %).",
        Headline.Of([new("one", 100, Share.Wilson(0, 1, 0.9))], 0.9).Sentence());
}
