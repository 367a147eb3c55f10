using System.Text;
using Platewright.Formats.Programs;

namespace Platewright.Tests.Programs;

internal static class ProgramText
{
    public static ProgramReading TryRead(string text, string name = "a.gcode") =>
        ProgramReader.Read(name, Encoding.UTF8.GetBytes(text));

    public static MotionProgram Read(string text, string name = "a.gcode")
    {
        ProgramReading reading = TryRead(text, name);
        Assert.True(reading.Program is not null, reading.Unusable?.Message);
        return reading.Program;
    }

    public static string Refusal(string text, string name = "a.gcode")
    {
        ProgramReading reading = TryRead(text, name);
        Assert.Null(reading.Program);
        return reading.Unusable!.Message;
    }
}
