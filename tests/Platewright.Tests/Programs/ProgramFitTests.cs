using Platewright.Build.Programs;
using Platewright.Machines;

namespace Platewright.Tests.Programs;

public sealed class ProgramFitTests
{
    private static readonly Machine Box = new()
    {
        Name = "probe",
        BuildVolume = new BoxVolume(200, 150, 180),
        Margins = new Margins(5, 5, 5, 5, 2),
    };

    private const string Start = "M83\nG1 X50 Y50 Z0.2 F6000\n";

    [Fact]
    public void Check_ProgramWithin_FindsNothing() =>
        Assert.Empty(ProgramFit.Check(ProgramText.Read(Start + "G1 X195 Y145 E1\nG1 X200 Y150 Z180"), Box));

    [Fact]
    public void Check_TravelTooFar_NamesDirectionAmountAndLine()
    {
        ProgramOverrun overrun = Assert.Single(ProgramFit.Check(ProgramText.Read(Start + "G1 X205\nG1 X212\nG1 X50"), Box));
        Assert.Equal(new ProgramOverrun("x", 12, 4, false), overrun);
        Assert.Equal("line 4: it would run out of travel in x by 12 mm.", overrun.Sentence);
    }

    [Fact]
    public void Check_MaterialInTheMargin_IsToldApart()
    {
        ProgramOverrun overrun = Assert.Single(ProgramFit.Check(ProgramText.Read(Start + "G1 Y2 E1"), Box));
        Assert.Equal(("-y", 3, true), (overrun.Direction, overrun.Line, overrun.Extruding));
        Assert.Equal(3, overrun.ByMm, 9);
        Assert.Contains("it would lay material 3 mm outside the usable build volume in -y", overrun.Sentence);
    }

    [Fact]
    public void Check_SeveralWalls_AreAllNamed()
    {
        IReadOnlyList<ProgramOverrun> found = ProgramFit.Check(ProgramText.Read(Start + "G1 X-1 Y160 Z181 E2\nG1 Z-1"), Box);
        Assert.Equal(["y", "-x", "z"], found.Where(o => o.Extruding).Select(o => o.Direction));
        Assert.Equal(["y", "-x", "-z", "z"], found.Where(o => !o.Extruding).Select(o => o.Direction));
    }

    [Fact]
    public void Check_RoundSurface_MeasuresFromItsAxis()
    {
        Machine round = Box with { BuildVolume = new CylinderVolume(200, 300), Margins = Margins.Uniform(2) };
        ProgramOverrun overrun = Assert.Single(ProgramFit.Check(ProgramText.Read("G1 X80 Y80"), round));
        Assert.Equal("outwards", overrun.Direction);
        Assert.Equal(80 * Math.Sqrt(2) - 100, overrun.ByMm, 9);
    }

    [Fact]
    public void Check_Prism_MeasuresFromItsSides()
    {
        Machine prism = Box with
        {
            BuildVolume = new PrismVolume([new(0, 0), new(100, 0), new(0, 100)], 50),
            Margins = Margins.None,
        };
        Assert.Empty(ProgramFit.Check(ProgramText.Read("G1 X50 Y50"), prism));
        ProgramOverrun overrun = Assert.Single(ProgramFit.Check(ProgramText.Read("G1 X60 Y60"), prism));
        Assert.Equal(20 / Math.Sqrt(2), overrun.ByMm, 9);
    }
}
