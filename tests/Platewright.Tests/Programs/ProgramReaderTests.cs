using System.Text;
using CsCheck;
using Platewright.Formats.Programs;
using Platewright.Geometry;

namespace Platewright.Tests.Programs;

public sealed class ProgramReaderTests
{
    private const string Small = """
        ; a small program
        M140 S60
        M104 S200 (nozzle)
        M190 S60
        M109 S215
        M141 S40
        G28
        G21 G90
        M82
        G92 E0
        T0
        G1 Z0.2 F1200
        G1 X10 Y10 F6000
        N10 G1 X60 Y10 E2 F1800*77
        G1 E1 F2400
        G4 S1.5
        G0 X80 Y20
        G1 E2
        G1 X80 Y70 E4 F1800
        G1 Z.4
        G1 X10 E6.5
        T1
        M600
        M73 P50 R3
        M117 Half of it: 50% done!
        M900 K0.05
        M900 K0.06
        EXCLUDE_START NAME=part_1
        M104 S0
        M84 X Y E
        M2
        G1 X500
        """;

    [Fact]
    public void Read_SmallProgram_TellsWhatItDoes()
    {
        MotionProgram p = ProgramText.Read(Small);
        Assert.Equal(new Bounds3(new(10, 10, 0.2), new(80, 70, 0.4)), p.ExtrudingMm);
        Assert.Equal(new Bounds3(new(0, 0, 0.2), new(80, 70, 0.4)), p.AllMm);
        Assert.Equal(6.5, p.Filament.NetMm, 12);
        Assert.Equal(1, p.Filament.RetractedMm, 12);
        Assert.Equal(new WantedHeat(200, 215), p.Nozzle);
        Assert.Equal(new WantedHeat(60, 60), p.Bed);
        Assert.Equal(new WantedHeat(40, 40), p.Chamber);
        Assert.Equal((2, 1, 1, 1), (p.Layers, p.ToolChanges, p.FilamentChanges, p.Homings));
        Assert.Equal(1.5, p.WaitS);
        Assert.Equal([new("M900", 2, 26), new("EXCLUDE_START", 1, 28)], p.Unknown);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Read_AnyLineEnd_CountsTheSameLines(string end)
    {
        string text = string.Join(end, "G1 X1", "", "; nothing", "G1 X2");
        Assert.Equal([1, 4], ProgramText.Read(text).Moves.ToArray().Select(m => m.Line));
    }

    [Theory]
    [InlineData("G1X10Y5F600")]
    [InlineData("g1 x10 y5 f600")]
    [InlineData("G 1 X 10 Y 5 F 600")]
    [InlineData("F600 Y5 X10 G01")]
    [InlineData("N7 G1 X10 (first) Y5 F600 ; so")]
    [InlineData("/G1 X+10. Y05.0 F600*12")]
    public void Read_AnySpelling_IsTheSameMove(string line)
    {
        ProgramMove move = Assert.Single(ProgramText.Read(line).Moves.ToArray());
        Assert.Equal(new ProgramMove(new(10, 5, 0), 10, 0, 0, float.PositiveInfinity, 1), move);
    }

    [Theory]
    [InlineData("G1 X1\nG1 X1.2.3", "line 2: X1.2.3 is not a number")]
    [InlineData("G1 X1\nG1 X-", "line 2: X- is not a number")]
    [InlineData("G1 X1\nG1 X", "line 2: X has no number")]
    [InlineData("G1 X1\nG1 X1 X2", "line 2: X stands there twice")]
    [InlineData("G1 X1\nG0 G1 X2", "line 2: it holds two words of motion")]
    [InlineData("G1 X1\nG1 X[#1+2]", "line 2: “[#1+2]” is no word of a program")]
    [InlineData("G1 X1\nG1 X1 ~", "line 2: “~” is no word of a program")]
    [InlineData("G1 X1\nG1 X2 FAST", "line 2: “FAST” is no word of a program")]
    [InlineData("G1 X1\nG1 X99999999999999999999999999999999999999999999", "is too large")]
    [InlineData("G1 X1\nG1 F-5", "line 2: the speed F-5 is not above 0")]
    [InlineData("G1 X1\nG2 X5 Y5", "line 2: the arc has neither a radius (R) nor a centre in its plane (I, J)")]
    [InlineData("G1 X1\nG2 X5 Y5 R1", "line 2: the radius R1 is too small")]
    [InlineData("G1 X1\nG2 X5 Y5 R9 I1", "line 2: the arc has both a radius and a centre")]
    [InlineData("G1 X1\nG18 G2 Y5 I3", "line 2: the arc has no end in its plane (Z or X)")]
    [InlineData("G1 X1\nG18 G2 X5 J3", "line 2: the arc has neither")]
    [InlineData("G1 X1\nG2 X1 I0 J0", "line 2: the arc has its centre where it starts")]
    [InlineData("G1 X1\nM221 S0", "line 2: M221 S0 is not above 0")]
    [InlineData("G1 X1\nT1.5", "line 2: T1.5 is no tool")]
    [InlineData("G1 X1\nG4 P-1", "line 2: it waits a negative time")]
    [InlineData("G1 X1\nG2 X1 Y3e", "line 2:")]
    [InlineData("G1 X1\nG1 X2\0", "line 2: it is not text")]
    [InlineData("G1 X1\nG1 X2\rG1 X3", "line 2: a line ends with a bare carriage return")]
    [InlineData("", "it is empty")]
    [InlineData("<!DOCTYPE html><html>", "it is a web page")]
    public void Read_WrongProgram_IsRefusedWithItsLine(string text, string expected) =>
        Assert.Contains(expected, ProgramText.Refusal(text));

    [Fact]
    public void Read_AbsentFile_IsAResult() =>
        Assert.Contains("there is no such file", ProgramReader.Read("/nowhere/a.gcode", cancel: TestContext.Current.CancellationToken).Unusable!.Message);

    [Fact]
    public void Read_UnknownWords_AreNamedAndNotFatal()
    {
        MotionProgram p = ProgramText.Read("#1=3\nG130 X30 Y30\nSET_LIMIT A=1\nM999 what\nTx\nG1 X1 A5\nG40 G49 G80 G94\nO100");
        Assert.Equal(["#1", "G130", "SET_LIMIT", "M999", "Tx", "A", "O"], p.Unknown.Select(u => u.Word));
        Assert.Equal(1, p.PathMm, 12);
    }

    [Fact]
    public void Read_ProgramOverManyBlocks_LosesNoLine()
    {
        var text = new StringBuilder();
        const int moves = 60_000;
        for (int i = 1; i <= moves; i++) text.Append($"G1 X{i % 200} Y{i % 7} E{i * 0.01:f5} ; line {i}\r\n");
        ProgramMove[] read = ProgramText.Read(text.ToString()).Moves.ToArray();
        Assert.Equal(Enumerable.Range(1, moves), read.Select(m => m.Line));
        Assert.All(read, m => Assert.Equal(new Vec3(m.Line % 200, m.Line % 7, 0), m.ToMm));
        Assert.Equal(moves * 0.01, read.Sum(m => m.FilamentMm), 6);
    }

    [Fact]
    public void Read_Inches_ScaleLengthsSpeedsAndArcs()
    {
        MotionProgram p = ProgramText.Read("G20\nG1 X1 F60\nG3 X3 Y0 I1 J0");
        Assert.Equal(25.4 * (1 + Math.PI), p.PathMm, 6);
        Assert.Equal(25.4, p.Moves.Span[0].SpeedMmS, 12);
        Assert.Equal(25.4, p.Moves.Span[^1].CurveRadiusMm, 4);
    }

    [Fact]
    public void Read_RelativeMoves_AddUp()
    {
        MotionProgram p = ProgramText.Read("G91\nG1 X5 Y1\nG1 X5\nG90\nG1 X1");
        Assert.Equal([new(5, 1, 0), new(10, 1, 0), new Vec3(1, 1, 0)], p.Moves.ToArray().Select(m => m.ToMm));
    }

    [Fact]
    public void Read_SpeedAndFlowFactors_ScaleWhatFollows()
    {
        MotionProgram p = ProgramText.Read("M83\nG1 X1 E1 F600\nM220 S50\nM221 S200\nG1 X2 E1");
        Assert.Equal([10, 5], p.Moves.ToArray().Select(m => m.SpeedMmS));
        Assert.Equal([1, 2], p.Moves.ToArray().Select(m => m.FilamentMm));
    }

    [Fact]
    public void Read_RapidOfEachDialect_HasTheSpeedItsChoicesSay()
    {
        Assert.Equal(10, ProgramText.Read("G1 X1 F600\nG0 X2").Moves.Span[^1].SpeedMmS);
        Assert.Equal(double.PositiveInfinity, ProgramText.Read("G1 X1 F600\nG0 X2", "a.ngc").Moves.Span[^1].SpeedMmS);
    }

    [Theory]
    // By the right-hand rule about the plane's normal: G3 takes the first axis to the second.
    [InlineData("G17 G3 X-1 Y0 I-1 J0", 0, 1, 0)]
    [InlineData("G17 G2 X-1 Y0 I-1 J0", 0, -1, 0)]
    [InlineData("G18 G3 X-1 Z0 I-1 K0", 0, 0, -1)]
    [InlineData("G18 G2 X-1 Z0 I-1 K0", 0, 0, 1)]
    public void Read_ArcInEachPlane_TurnsAsSeenFromThePlusSide(string block, double x, double y, double z)
    {
        ProgramMove[] moves = ProgramText.Read("G1 X1\n" + block).Moves.ToArray();
        Assert.Contains(moves, m => (m.ToMm - new Vec3(x, y, z)).Length < 0.1);
    }

    [Fact]
    public void Read_ArcInYz_TurnsFromYToZ()
    {
        ProgramMove[] moves = ProgramText.Read("G1 Y1\nG19 G3 Y-1 Z0 J-1 K0").Moves.ToArray();
        Assert.Contains(moves, m => (m.ToMm - new Vec3(0, 0, 1)).Length < 0.1);
    }

    [Theory]
    [InlineData("G3 X0 Y10 R10", 0.25)]
    [InlineData("G3 X0 Y10 R-10", 0.75)]
    [InlineData("G2 X0 Y10 R10", 0.25)]
    [InlineData("G2 X0 Y10 R-10", 0.75)]
    [InlineData("G3 X-10 Y0 R10", 0.5)]
    [InlineData("G3 X10 Y0 I-10 J0", 1)]
    public void Read_ArcByItsRadius_TakesTheShorterOrLongerWay(string block, double turns) =>
        Assert.Equal(10 + turns * 20 * Math.PI, ProgramText.Read("G1 X10\n" + block).PathMm, 6);

    [Fact]
    public void Read_AnyArc_IsChordsCloseToItWithItsLengthAndMaterial() =>
        Gen.Select(Gen.Double[0.05, 200], Gen.Double[0.02, 6.2], Gen.Double[0, 6.2], Gen.Bool).Sample((radius, sweep, from, clockwise) =>
        {
            double to = clockwise ? from - sweep : from + sweep;
            string text = FormattableString.Invariant(
                $"M83\nG1 X{radius * Math.Cos(from):f9} Y{radius * Math.Sin(from):f9}\nG{(clockwise ? 2 : 3)} X{radius * Math.Cos(to):f9} Y{radius * Math.Sin(to):f9} I{-radius * Math.Cos(from):f9} J{-radius * Math.Sin(from):f9} E1");
            MotionProgram p = ProgramText.Read(text);
            double chords = 0;
            for (int i = 1; i < p.Moves.Length; i++)
            {
                Vec3 a = p.Moves.Span[i - 1].ToMm, b = p.Moves.Span[i].ToMm;
                chords += (b - a).Length;
                Assert.True(radius - ((a + b) * 0.5).Length <= ProgramReader.ChordToleranceMm + 1e-6);
                Assert.Equal(radius, b.Length, 1e-6);
            }
            Assert.Equal(radius * sweep, p.PathMm - radius, 1e-6);
            Assert.InRange(chords / (radius * sweep), 0.995, 1 + 1e-6);
            Assert.Equal(1, p.Filament.ForwardMm, 1e-9);
        });

    [Fact]
    public void Read_AnyBytes_IsAResult() =>
        Gen.OneOf(new[] { "G1", "G2", "G28", "G92", "M104", "X", "Y1", "E-2", "I3", "R", "S", "T", "\n", "\r", ";", "(", ")", "*", "#", "N", "%", "\0", "é", "1e9", "-", ".", " " }.Select(Gen.Const).ToArray())
            .Array[0, 40].Sample(pieces =>
            {
                ProgramReading reading = ProgramText.TryRead(string.Concat(pieces));
                Assert.True(reading.Program is null != reading.Unusable is null);
            });
}
