using System.Diagnostics;
using System.Text;
using Platewright.Build.Programs;
using Platewright.Formats.Programs;
using Platewright.Machines;

namespace Platewright.Build.Benchmarks;

/// <summary>A motion program of 100 MB: read, timed on a machine, held against its build volume; processor time.</summary>
internal static class ProgramBenchmarks
{
    private const long Bytes = 100_000_000;

    public static void Measure()
    {
        string path = Path.Combine(Path.GetTempPath(), $"platewright-bench-{Environment.ProcessId}.gcode");
        try
        {
            Write(path);
            double start = Seconds();
            MotionProgram program = ProgramReader.Read(path).Program!;
            double read = Seconds() - start;
            var machine = new Machine
            {
                Name = "probe",
                BuildVolume = new BoxVolume(200, 200, 400),
                Motion = new MotionLimits(200, 3000, 0.02),
            };
            start = Seconds();
            double hours = ProgramTiming.Time(program, machine).TotalS / 3600;
            double timed = Seconds() - start;
            start = Seconds();
            ProgramFit.Check(program, machine);
            double fitted = Seconds() - start;
            long peak = Process.GetCurrentProcess().PeakWorkingSet64;
            Console.WriteLine(
                $"program of {Bytes / 1_000_000} MB, {program.Moves.Length} moves, {hours:f1} h: read {read:f2} s, "
                + $"timed {timed:f2} s, fit {fitted:f2} s, most memory {peak / 1_000_000} MB");
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static double Seconds() => Environment.CpuUsage.TotalTime.TotalSeconds;

    private static void Write(string path)
    {
        using var file = new StreamWriter(path, append: false, Encoding.ASCII);
        file.WriteLine("G21\nG90\nM83");
        for (int i = 0; file.BaseStream.Position < Bytes; i++)
        {
            double angle = i % 400 * Math.PI / 200, radius = 20 + i / 400 % 60;
            if (i % 400 == 0)
            {
                file.WriteLine("G1 E-0.8 F2400");
                file.WriteLine(FormattableString.Invariant($"G0 X{100 + radius:f3} Y100 Z{0.2 + i / 24_000 * 0.2:f3} F12000"));
                file.WriteLine("G1 E0.8 F2400\nG1 F4800");
            }
            file.WriteLine(FormattableString.Invariant(
                $"G1 X{100 + radius * Math.Cos(angle):f3} Y{100 + radius * Math.Sin(angle):f3} E{radius * 0.0005:f5}"));
        }
    }
}
