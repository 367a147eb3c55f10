using System.Text.Json;
using Platewright.Formats.Programs;
using Platewright.Geometry;
using Platewright.Tests.Motion;

namespace Platewright.Tests.Programs;

/// <summary>Motion programs of the reference file: worked examples of the RS-274 report and common practice.</summary>
public sealed class ProgramReferenceTests
{
    public static TheoryData<string> Ids() => PhysicsCase.Ids("formats/program");

    [Theory]
    [MemberData(nameof(Ids))]
    public void Read_ReferenceCase_DoesWhatItSays(string id)
    {
        PhysicsCase c = PhysicsCase.OrSkip(id);
        string start = StartOf(c);
        if (c.Expected.TryGetProperty("verdicts", out JsonElement verdicts))
        {
            for (int i = 0; i < verdicts.GetArrayLength(); i++)
                CheckVerdict(c, start + Block(c, i), verdicts[i].GetString()!);
            return;
        }
        string text = c.Has("program") ? c.Input.GetProperty("program").GetString()!.Replace(" / ", "\n")
            : start + (c.Has("block") ? c.Input.GetProperty("block").GetString() : Block(c, 0));
        MotionProgram program = ProgramText.Read(text);
        if (c.Expected.TryGetProperty("second", out JsonElement second))
            CheckVerdict(c, start + Block(c, 1), second.GetString()!);
        foreach (JsonProperty expected in c.Expected.EnumerateObject()) Check(c, expected, program, start);
    }

    private static void Check(PhysicsCase c, JsonProperty expected, MotionProgram program, string start)
    {
        double before = start.Length > 0 ? ProgramText.Read(start).PathMm : 0;
        ReadOnlySpan<ProgramMove> moves = program.Moves.Span;
        switch (expected.Name)
        {
            case "second":
                break;
            case "length" or "length_of_first" or "length_mm":
                c.Check(expected.Name, program.PathMm - before);
                break;
            case "path_mm_after_G92":
                c.Check(expected.Name, Math.Abs(moves[^1].ToMm.X - moves[^2].ToMm.X));
                break;
            case "machine_X_end":
                c.Check(expected.Name, moves[^1].ToMm.X);
                break;
            case "centre" or "radius" or "sweep_deg":
                CheckArc(c, moves);
                break;
            case "speed_mm_s":
                c.Check(expected.Name, moves[^1].SpeedMmS);
                break;
            case "time_no_accel_s":
                c.Check(expected.Name, program.PathMm / moves[^1].SpeedMmS);
                break;
            case "filament_mm" or "net_filament_mm":
                c.Check(expected.Name, program.Filament.NetMm);
                break;
            case "forward_mm":
                c.Check(expected.Name, program.Filament.ForwardMm);
                break;
            case "retracted_mm":
                c.Check(expected.Name, program.Filament.RetractedMm);
                break;
            // Documented choices: the reader takes one of the readings and says which.
            case "seconds_RS274":
                Assert.Equal(expected.Value.GetDouble(), ProgramText.Read("G4 P2", "a.ngc").WaitS);
                Assert.Contains(ProgramText.Read("G4 P2", "a.ngc").Choices, s => s.StartsWith("G4 P is in seconds", StringComparison.Ordinal));
                break;
            case "seconds_trade":
                Assert.Equal(expected.Value.GetDouble(), program.WaitS);
                Assert.Contains(program.Choices, s => s.StartsWith("G4 P is in milliseconds", StringComparison.Ordinal));
                break;
            case "note":
                Assert.Equal(2, program.Filament.NetMm);
                Assert.Contains(program.Choices, s => s.StartsWith("G91 makes X, Y and Z relative; E follows M82 and M83 alone", StringComparison.Ordinal));
                break;
            default:
                Assert.Skip($"{c.Id}: a value this test does not know: {expected.Name}");
                break;
        }
    }

    /// <summary>All chords end on the stated circle and turn through the stated angle around its centre.</summary>
    private static void CheckArc(PhysicsCase c, ReadOnlySpan<ProgramMove> moves)
    {
        JsonElement centre = c.Expected.GetProperty("centre");
        Vec2 middle = new(centre[0].GetDouble(), centre[1].GetDouble());
        double sweep = 0;
        for (int i = 0; i < moves.Length; i++)
        {
            Vec2 at = new(moves[i].ToMm.X - middle.X, moves[i].ToMm.Y - middle.Y);
            c.Check("radius", at.Length);
            if (i == 0) continue;
            Vec2 from = new(moves[i - 1].ToMm.X - middle.X, moves[i - 1].ToMm.Y - middle.Y);
            double turn = Math.Atan2(from.Cross(at), from.Dot(at)) * 180 / Math.PI;
            Assert.True(turn < 0, "G2 is clockwise");
            sweep -= turn;
        }
        c.Check("sweep_deg", sweep);
    }

    private static void CheckVerdict(PhysicsCase c, string text, string verdict)
    {
        ProgramReading reading = ProgramText.TryRead(text);
        if (verdict == "accept") Assert.NotNull(reading.Program);
        else if (verdict == "error") Assert.Contains("line 2", reading.Unusable!.Message);
        else Assert.Skip($"{c.Id}: a verdict this test does not know: {verdict}");
    }

    private static string Block(PhysicsCase c, int i) => c.Input.GetProperty("blocks")[i].GetString()!;

    private static string StartOf(PhysicsCase c)
    {
        if (!c.Has("start")) return "";
        double[] at = [.. c.Input.GetProperty("start").EnumerateArray().Select(v => v.GetDouble())];
        return $"G1 X{at[0]} Y{at[1]} Z{(at.Length > 2 ? at[2] : 0)}\n";
    }
}
