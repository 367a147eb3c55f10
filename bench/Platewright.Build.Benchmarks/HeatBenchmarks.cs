using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Build.Benchmarks;

/// <summary>Build cycles simulated: warm up, a build of four hours, cool down.</summary>
internal static class HeatBenchmarks
{
    private const int Runs = 5;
    private const double LeastSeconds = 0.4;

    private static readonly BuildLoad Load = new(4 * 3600, 4 * 3600 * 5);

    public static void Measure()
    {
        foreach ((string machine, string material) in new[]
        {
            ("generic-265-open", "PLA"), ("generic-210-enclosed", "ABS"), ("generic-440-enclosed", "PA"),
        })
        {
            Machine m = MachineCatalog.Find(machine);
            Material f = MaterialCatalog.Get(material);
            MachineHeat warm = new(m, f);
            Report($"{machine}, {material}, whole", () => BuildCycle.Simulate(new MachineHeat(m, f), Load));
            Report($"{machine}, {material}, warm-up known", () => BuildCycle.Simulate(warm, Load));
        }
    }

    /// <summary>Best of several runs, by processor time: the computer does other things besides.</summary>
    private static void Report(string name, Func<BuildCycleResult> cycle)
    {
        double best = double.PositiveInfinity;
        for (int run = 0; run < Runs; run++)
        {
            int cycles = 0;
            double start = Environment.CpuUsage.TotalTime.TotalSeconds, taken = 0;
            while (taken < LeastSeconds)
            {
                cycle();
                cycles++;
                taken = Environment.CpuUsage.TotalTime.TotalSeconds - start;
            }
            best = Math.Min(best, taken / cycles);
        }
        Console.WriteLine($"{name,-45} {best * 1e3,7:f3} ms of processor time a cycle");
    }
}
