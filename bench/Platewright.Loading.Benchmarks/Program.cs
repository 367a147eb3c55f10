// Best of seven: dotnet run -c Release --project bench/Platewright.Loading.Benchmarks
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
        string path = Path.Combine(folder, name);
        write(path);
        long bytes = new FileInfo(path).Length;
        double floor = Best(() => File.ReadAllBytes(path).Length);
        double load = Best(() => Read(path).Vertices.Length);
        Report($"{name}, {bytes / 1e6:F0} MB", load, floor);
        if (!name.EndsWith("stl", StringComparison.Ordinal)) continue;
        double health = Best(() => Health(Read(path)));
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

static double Best(Func<int> work)
{
    double best = double.PositiveInfinity;
    for (int run = 0; run < 7; run++)
    {
        GC.Collect();
        var watch = Stopwatch.StartNew();
        work();
        best = Math.Min(best, watch.Elapsed.TotalSeconds);
    }
    return best;
}

static void Report(string name, double seconds, double floor)
{
    double millions = TorusFiles.Triangles / seconds / 1e6;
    Console.WriteLine(
        $"{name,-44} {seconds,8:F3} s {millions,8:F2} million triangles/s {seconds / floor,6:F1} × reading the bytes");
}
