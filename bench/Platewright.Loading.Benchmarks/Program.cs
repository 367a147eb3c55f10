// Best of seven, for all files or for those named:
// dotnet run -c Release --project bench/Platewright.Loading.Benchmarks [torus.stl …]
using System.Diagnostics;
using System.Runtime.InteropServices;
using Platewright.Formats;
using Platewright.Geometry;
using Platewright.Loading.Benchmarks;

Console.WriteLine($"{RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} cores");
string folder = Directory.CreateTempSubdirectory("platewright-bench-").FullName;
try
{
    foreach ((string name, Action<string> write) in TorusFiles.All)
    {
        if (args.Length > 0 && !args.Contains(name)) continue;
        string path = Path.Combine(folder, name);
        write(path);
        long bytes = new FileInfo(path).Length;
        (double floor, _) = Best(() => File.ReadAllBytes(path).Length);
        (double, double) load = Best(() => Read(path).Vertices.Length);
        Report($"{name}, {bytes / 1e6:F0} MB", load, floor);
        if (!name.EndsWith("stl", StringComparison.Ordinal)) continue;
        (double, double) health = Best(() => Health(Read(path)));
        Report($"{name}, with weld and health", health, floor);
    }
}
finally
{
    Directory.Delete(folder, recursive: true);
}

static Mesh Read(string path) => ModelReader.Read(path).Files[0].Parts[0].Mesh;

static int Health(Mesh read)
{
    Mesh mesh = Welding.Weld(read);
    return MeshTopology.Of(mesh).ShellCount + (int)MeshMeasures.Of(mesh).AreaMm2;
}

// Other work on the machine lengthens the clock but hardly the processor's own time, so both are told.
static (double Clock, double Processor) Best(Func<int> work)
{
    (double Clock, double Processor) best = (double.PositiveInfinity, double.PositiveInfinity);
    for (int run = 0; run < 7; run++)
    {
        GC.Collect();
        TimeSpan before = Environment.CpuUsage.TotalTime;
        var watch = Stopwatch.StartNew();
        work();
        double clock = watch.Elapsed.TotalSeconds;
        double processor = (Environment.CpuUsage.TotalTime - before).TotalSeconds;
        best = (Math.Min(best.Clock, clock), Math.Min(best.Processor, processor));
    }
    return best;
}

static void Report(string name, (double Clock, double Processor) best, double floor)
{
    double millions = TorusFiles.Triangles / best.Clock / 1e6;
    Console.WriteLine(
        $"{name,-32} {best.Clock,6:F3} s ({best.Processor,6:F3} s of processor), {millions,5:F2} million triangles/s, "
        + $"{best.Clock / floor,5:F1} × reading the bytes");
}
