using Platewright.Build.Care;
using Platewright.Build.Heat;
using Platewright.Machines;
using Platewright.Tests.Heat;

namespace Platewright.Tests.Care;

public sealed class CareTests
{
    [Theory]
    [InlineData("PLA", 80, 22, WarpRank.Low)]
    [InlineData("ABS", 200, 22, WarpRank.High)]
    [InlineData("ABS", 150, 60, WarpRank.Medium)]
    [InlineData("PP", 150, 22, WarpRank.High)]
    public void WarpRisk_FamiliesOfKnownTemper_RankAsPracticeSays(
        string material, double contactMm, double airC, WarpRank rank)
    {
        var risk = WarpRisk.Of(MaterialCatalog.Get(material), contactMm, airC);
        Assert.Equal(rank, risk.Rank);
        Assert.Contains("not a forecast", risk.Sentence);
        Assert.Contains($"{contactMm:0} mm", risk.Sentence);
    }

    [Fact]
    public void WarpRisk_LongerOrColder_IsNotLess()
    {
        Material abs = MaterialCatalog.Get("ABS");
        Assert.True(WarpRisk.Of(abs, 200, 22).IndexMm > WarpRisk.Of(abs, 100, 22).IndexMm);
        Assert.True(WarpRisk.Of(abs, 100, 22).IndexMm > WarpRisk.Of(abs, 100, 60).IndexMm);
        Assert.Equal(0, WarpRisk.Of(abs, 100, 120).IndexMm);
        Assert.Throws<ArgumentOutOfRangeException>(() => WarpRisk.Of(abs, -1, 20));
    }

    [Theory]
    [InlineData(1300, 1, "Needs 1.3 spools of 1000 g: a change ends unattended running.")]
    [InlineData(1000, 0, null)]
    [InlineData(2500, 2, "Needs 2.5 spools of 1000 g: a change ends unattended running.")]
    [InlineData(0, 0, null)]
    public void Spools_Mass_SayHowManyChanges(double massG, int changes, string? sentence)
    {
        var spools = Spools.Of(MaterialCatalog.Get("PLA"), massG);
        Assert.Equal(changes, spools.Changes);
        Assert.Equal(sentence, spools.Sentence);
    }

    [Fact]
    public void ColourChanges_EveryLayer_CostPurgeAndTimeAgainstSeparateBuilds()
    {
        Machine machine = TypicalHeaters.OpenFrame(0.2, 400) with
        {
            Handling = new Handling { StartS = 100, MaterialChangeS = 60, PurgeMm3 = 120 },
        };
        MachineHeat heat = new(machine, MaterialCatalog.Get("PLA"));
        var changes = ColourChanges.Of(heat, colours: 3, layers: 50, releaseS: 600);
        Assert.Equal(100, changes.Changes);
        Assert.Equal(12_000, changes.PurgeMm3);
        Assert.Equal(14.88, changes.PurgeG, 1e-9);
        Assert.Equal(6000, changes.TimeS);
        Assert.Equal(2 * (100 + heat.WarmUp!.Seconds + 600), changes.SeparateS!.Value, 1e-9);
        Assert.Null(ColourChanges.Of(heat, 1, 50, 600).Sentence);
    }

    [Fact]
    public void Circuit_IecCountry_HasNoGeneralRuleOfFourFifths()
    {
        Circuit iec = new(230, 16, UnderNec: false);
        Assert.Equal(3680, iec.LimitW(10));
        Circuit nec = new(120, 15, UnderNec: true);
        Assert.Equal(1800, nec.LimitW(2.9));
        Assert.Equal(1440, nec.LimitW(3));
        Assert.Equal(4, nec.Machines(360, 3));
    }

    [Fact]
    public void Cautions_CrowdedCircuit_SaySoAndWhoDecides()
    {
        Circuit circuit = new(120, 15, UnderNec: true);
        string said = Assert.Single(Cautions.OfCircuit(circuit, [350, 350, 350, 350, 350], 8));
        Assert.Contains("1750 W", said);
        Assert.Contains("1440 W", said);
        Assert.Contains("80 %", said);
        Assert.EndsWith(Cautions.WhoDecides, said);
        Assert.Contains(Cautions.OfCircuit(new(230, 16, false), [350], 8), s => s.Contains("8 to 10 A"));
    }

    [Fact]
    public void Cautions_LongHotBuild_SpeakOfFireAndFumes()
    {
        var said = Cautions.OfBuild(MaterialCatalog.Get("ABS"), 12);
        Assert.Contains(said, s => s.Contains("smoke alarm"));
        Assert.Contains(said, s => s.StartsWith("ABS:", StringComparison.Ordinal));
        Assert.DoesNotContain(Cautions.OfBuild(MaterialCatalog.Get("ABS"), 1), s => s.Contains("unattended"));
    }
}
