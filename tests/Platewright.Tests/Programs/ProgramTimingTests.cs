using System.Text;
using Platewright.Build.Motion;
using Platewright.Build.Programs;
using Platewright.Formats.Programs;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Programs;

public sealed class ProgramTimingTests
{
    private static readonly Machine Probe = new()
    {
        Name = "probe",
        BuildVolume = new BoxVolume(200, 200, 180),
        Motion = new MotionLimits(150, 1000, 0.05),
        Extruder = new Extruder { FilamentMm = 1.75, RetractionSpeedMmS = 25 },
    };

    private static MotionTimes Time(MotionProgram program, Machine machine, double meltRateFactor = 1) =>
        ProgramTiming.Time(program, machine, meltRateFactor, TestContext.Current.CancellationToken);

    [Fact]
    public void Time_MovesPullsAndWaits_AreToldApart()
    {
        MotionProgram program = ProgramText.Read("M83\nG1 X50 E2 F6000\nG1 E-1 F1800\nG4 S2\nG1 Y50 F12000\nG1 E1 F1800\nG4 P500");
        MotionTimes times = Time(program, Probe);
        Assert.Equal(Trapezoid.Of(50, 100, 1000).TimeS, times.MovingS[PathKind.Extruding], 12);
        Assert.Equal(Trapezoid.Of(50, 150, 1000).TimeS, times.MovingS[PathKind.Travel], 12);
        Assert.Equal(2.5 + 2 / 30.0, times.StandstillS, 12);
        Assert.Equal(2 * Math.PI * 1.75 * 1.75 / 4, times.MaterialMm3[PathKind.Extruding], 12);
    }

    [Fact]
    public void Time_NoSpeedStated_PullsAtTheMachinesOwnSpeed()
    {
        MotionTimes times = Time(ProgramText.Read("M83\nG1 E-5"), Probe);
        Assert.Equal(0.2, times.TotalS, 12);
    }

    [Fact]
    public void Time_MeltRate_SlowsWhatIsLaidDownAlone()
    {
        Machine slow = Probe with { Extruder = Probe.Extruder with { MeltRateMm3S = 4 } };
        MotionProgram program = ProgramText.Read("M83\nG1 X100 E4 F6000\nG1 X0");
        double area = 4 * Math.PI * 1.75 * 1.75 / 4 / 100;
        MotionTimes times = Time(program, slow, meltRateFactor: 0.5);
        Assert.Equal(Trapezoid.Of(100, 2 / area, 1000).TimeS, times.MovingS[PathKind.Extruding], 9);
        Assert.Equal(Trapezoid.Of(100, 100, 1000).TimeS, times.MovingS[PathKind.Travel], 9);
    }

    [Fact]
    public void Time_FullCircle_KeepsToTheCentripetalLimit()
    {
        // v² = a·R: a radius of 4 mm allows √(1000·4) = 63.2 mm/s, reached from rest over v²/2a = 2 mm.
        double v = Math.Sqrt(4000), length = 8 * Math.PI;
        MotionTimes times = Time(ProgramText.Read("G92 X4\nG3 X4 Y0 I-4 J0 F9000"), Probe);
        Assert.Equal(length / v + v / 1000, times.TotalS, 0.005 * times.TotalS);
    }

    [Fact]
    public void Time_ArcAndItsFineChords_TakeTheSame()
    {
        var chords = new StringBuilder("G92 X20\n");
        for (int i = 1; i <= 720; i++)
            chords.Append(FormattableString.Invariant($"G1 X{20 * Math.Cos(i * Math.PI / 360):f6} Y{20 * Math.Sin(i * Math.PI / 360):f6} F9000\n"));
        double arc = Time(ProgramText.Read("G92 X20\nG3 X20 Y0 I-20 J0 F9000"), Probe).TotalS;
        double fine = Time(ProgramText.Read(chords.ToString()), Probe).TotalS;
        Assert.Equal(1, fine / arc, 0.005);
    }

    [Fact]
    public void Time_LongProgram_IsTheSameAsPlannedInOnePiece()
    {
        var text = new StringBuilder("M83\n");
        var moves = new List<Move>();
        double area = 0.05 * Math.PI * 1.75 * 1.75 / 4, standstill = 0;
        for (int i = 1; i <= 40_000; i++)
        {
            text.Append(FormattableString.Invariant($"G1 X{i % 2} Y{i * 0.001:f3} E0.05 F4800\n"));
            Vec3 to = new(i % 2, i * 0.001, 0);
            double length = (to - (moves.Count == 0 ? default : moves[^1].To)).Length;
            moves.Add(new(to, 80, area / length, standstill, PathKind.Extruding));
            standstill = i % 50 == 0 ? 0.02 : 0;
            if (standstill > 0) text.Append("G1 E-1 F3000\n");
        }
        MotionTimes times = Time(ProgramText.Read(text.ToString()), Probe);
        MotionTimes whole = new MotionPlanner().Plan(default, moves.ToArray(), Probe.Motion!);
        Assert.Equal(whole.TotalS + standstill, times.TotalS, 1e-6);
    }

    [Fact]
    public void Time_MachineWithoutMotion_IsRefused() =>
        Assert.Throws<ArgumentException>(() => Time(ProgramText.Read("G1 X1"), Probe with { Motion = null }));
}
