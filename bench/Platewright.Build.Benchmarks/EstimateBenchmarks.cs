using System.Diagnostics;
using Platewright.Build.Estimates;
using Platewright.Build.Heat;
using Platewright.Formats;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Benchmarks;

/// <summary>Whole estimates of one open mesh: scorpion.obj, 100 mm high, 500 layers of 0.2 mm, 3 walls.</summary>
internal static class EstimateBenchmarks
{
    private const int Runs = 12;
    private const double HeightMm = 100;

    public static void Measure(string models)
    {
        string path = System.IO.Path.Combine(models, "scorpion.obj");
        if (!File.Exists(path))
        {
            Console.WriteLine($"# no {path}: the estimates are left out");
            return;
        }
        Mesh mesh = Welding.Weld(ModelReader.Read(path).Files[0].Parts[0].Mesh);
        MeshTopology topology = MeshTopology.Of(mesh);
        Matrix3 linear = Matrix3.Identity * (HeightMm / mesh.Bounds.Size.Z);
        // No range of the machine: one run of motion for each estimate.
        Machine machine = MachineCatalog.Find("generic-210-enclosed") with
        {
            Ranges = System.Collections.Immutable.ImmutableSortedDictionary<string, ValueRange>.Empty,
        };
        MachineHeat heat = new(machine, MaterialCatalog.Get("PLA"), 22);
        Recipe recipe = new()
        {
            Name = "bench",
            LayerHeightMm = 0.2,
            BeadWidthMm = 0.45,
            Walls = 3,
            SolidLayers = 4,
            InfillShare = 0.15,
            Speeds = PathSpeeds.All(100),
        };
        Report("layers", () => PartPaths.Of(mesh, topology, linear, recipe, 0, default).LayerCount);
        foreach (bool full in new[] { true, false })
        {
            Report(full ? "full" : "sampled", () => Estimate(recipe, full));
            Report((full ? "full" : "sampled") + ", support", () => Estimate(recipe with { Support = true }, full));
        }

        double Estimate(Recipe wanted, bool full) => BuildEstimator.Estimate(
            PartPaths.Of(mesh, topology, linear, wanted, 0, default), heat, full, default).Time.BuildingS;
    }

    /// <summary>Least of several runs: by the clock, and by processor time over the number of processors.</summary>
    private static void Report(string name, Func<double> run)
    {
        double clock = double.PositiveInfinity, processor = double.PositiveInfinity, result = 0;
        for (int i = 0; i < Runs; i++)
        {
            double start = Environment.CpuUsage.TotalTime.TotalSeconds;
            Stopwatch watch = Stopwatch.StartNew();
            result = run();
            clock = Math.Min(clock, watch.Elapsed.TotalSeconds);
            double taken = Environment.CpuUsage.TotalTime.TotalSeconds - start;
            processor = Math.Min(processor, taken / Environment.ProcessorCount);
        }
        Console.WriteLine($"scorpion 100 mm, {name,-18} {clock,6:f3} s, processors {processor,6:f3} s  ({result:f1})");
    }
}
