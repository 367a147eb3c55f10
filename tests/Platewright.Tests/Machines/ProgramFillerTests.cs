using System.Text;
using Platewright.Formats.Programs;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>What a program tells of the machine it was made for.</summary>
public sealed class ProgramFillerTests
{
    private static readonly ProgramSeen Seen = new("job.gcode", new Bounds3(new(0, 2, 0), new(199.2, 187, 41.3)))
    {
        SpeedMmS = 150,
        RetractionMm = 0.8,
        RetractionSpeedMmS = 45,
        AsksForC = new HeatLimits(215, 60, 0),
    };

    [Fact]
    public void LeastVolume_FromTheOriginOrAroundIt()
    {
        Assert.Equal(new BoxVolume(200, 187, 42), Seen.LeastVolume());
        ProgramSeen round = Seen with { Reach = new Bounds3(new(-80.5, -60, 0), new(70, 79, 41.3)) };
        Assert.Equal(new CylinderVolume(161, 42), round.LeastVolume());
        Assert.Equal(0, round.Beyond(round.LeastVolume()));
        Assert.Equal(0.5, round.Beyond(new CylinderVolume(160, 42)), 9);
    }

    [Fact]
    public void LeastVolume_WipingBeyondTheEdge_StaysABox()
    {
        ProgramSeen wiping = Seen with { Reach = new Bounds3(new(-3, -1, 0), new(199.2, 187, 41.3)) };
        Assert.Equal(new BoxVolume(200, 187, 42), wiping.LeastVolume());
        Assert.Equal(3, wiping.Beyond(wiping.LeastVolume()), 9);
    }

    [Fact]
    public void Of_Program_TakesGreatestSpeedUsualRetractionAndHeat()
    {
        ProgramSeen seen = ProgramSeen.Of(Read(
            "M140 S60\nM104 S200\nM190 S55\nM109 S215\nG90\nM83\nG0 X10 Y20 Z0.2\nG1 X110 E5 F6000\nG1 E-0.8 F2700\n"
            + "G1 X110 Y120 F9000\nG1 E0.8\nG1 X10 E5 F3000\nG1 E-0.8 F2700\nG1 X12 F9000\nG1 E0.8\nG1 E-6 F1200\nM104 S0\n"))!;
        Assert.Equal(150, seen.SpeedMmS);
        Assert.Equal(0.8, seen.RetractionMm);
        Assert.Equal(45, seen.RetractionSpeedMmS);
        Assert.Equal(new HeatLimits(215, 60, 0), seen.AsksForC);
        Assert.Equal(new BoxVolume(110, 120, 1), seen.LeastVolume());
    }

    [Fact]
    public void Of_ProgramWithoutMoves_IsNull() => Assert.Null(ProgramSeen.Of(Read("M104 S200\n")));

    private static MotionProgram Read(string text) => ProgramReader.Read("job.gcode", Encoding.ASCII.GetBytes(text)).Program!;

    [Fact]
    public void Fill_WithProgram_TakesSpeedAndRetractionAndTellsTheHeat()
    {
        FilledMachine filled = MachineFiller.Fill(
            new KnownMachine("bench", Seen.LeastVolume()) { Program = Seen, SizeFromProgram = true });

        Assert.Equal(150, filled.Machine.Motion!.SpeedMmS);
        Assert.Equal(new ValueRange(105, 225), filled.Machine.Ranges["motion.speed_mm_s"]);
        Assert.Equal(0.8, filled.Machine.Extruder.RetractionMm);
        Assert.DoesNotContain("extruder.retraction_mm", filled.Machine.Ranges.Keys);
        Assert.Null(filled.Machine.HeatsTo);
        Assert.Contains("at least", filled.Origins["build_volume.shape"], StringComparison.Ordinal);
        Assert.Contains("at least", filled.Origins["build_volume.size_mm"], StringComparison.Ordinal);
        Assert.Contains("nozzle 215 °C, bed 60 °C", Assert.Single(filled.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Fill_ProgramBeyondTheStatedSize_IsTold()
    {
        FilledMachine filled = MachineFiller.Fill(
            new KnownMachine("bench", new BoxVolume(190, 190, 190)) { Program = Seen with { AsksForC = new(0, 0, 0) } });
        Assert.Contains("leaves the build volume by 9.2 mm", Assert.Single(filled.Notes), StringComparison.Ordinal);
    }
}
