using System.Diagnostics;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Fit.Benchmarks;

/// <summary>A thousand parts on ten machines, fit and sizes needed, as a study solves them: on all processors.</summary>
internal static class ManyParts
{
    private const int Count = 1000;

    public static void Measure(IReadOnlyList<(string Name, ConvexHull Hull)> parts)
    {
        Machine[] machines =
        [
            .. MachineCatalog.Bundled,
            .. new[] { (190.0, 185.0, 175.0), (240.0, 240.0, 230.0), (290.0, 280.0, 300.0) }.Select(s => new Machine
            {
                Name = "box", BuildVolume = new BoxVolume(s.Item1, s.Item2, s.Item3), Margins = Margins.Uniform(2),
            }),
        ];
        FitOptions options = new() { SettledTolerance = 0.01 };
        long start = Stopwatch.GetTimestamp();
        TimeSpan processor = Environment.CpuUsage.TotalTime;
        Parallel.For(0, Count, i =>
        {
            // The folder's parts again and again, each time a little larger.
            Vec3[] points = parts[i % parts.Count].Hull.Vertices.ToArray();
            double scale = 0.8 + 0.4 * i / Count;
            var part = new PreparedPart(new PartShape(ConvexHull.Of(Array.ConvertAll(points, p => p * scale)), 0.003, 2));
            foreach (Machine machine in machines) FitSolver.Solve(part, machine, new Allowance(), options, default);
            SizeNeedSolver.Solve(part, options, default);
        });
        using var self = Process.GetCurrentProcess();
        Console.WriteLine(
            $"{Count} parts × {machines.Length} machines: {Stopwatch.GetElapsedTime(start).TotalSeconds:f1} s, processor time "
            + $"{(Environment.CpuUsage.TotalTime - processor).TotalSeconds:f1} s, peak memory {self.PeakWorkingSet64 / 1048576} MiB");
    }
}
