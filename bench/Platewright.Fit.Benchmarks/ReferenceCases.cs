using System.Text.Json;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Fit.Benchmarks;

/// <summary>The free-rotation cases of a reference file, at a fine gap.</summary>
internal static class ReferenceCases
{
    public static void Measure(string path, double gap)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(path));
        JsonElement[] cases = [.. document.RootElement.GetProperty("cases").EnumerateArray().Where(c =>
            c.GetProperty("mode").GetString() == "free" && c.GetProperty("part").TryGetProperty("vertices", out _))];
        foreach (JsonElement c in cases) Time(c, gap);
        List<(double Ms, string Id)> times = [.. cases.Select(c => (Time(c, gap), c.GetProperty("id").GetString()!)).Order()];
        Console.WriteLine(
            $"reference cases {times.Count} at {gap:e0}: median {times[times.Count / 2].Ms:f2} ms, most {times[^1].Ms:f1} ms ({times[^1].Id}), "
            + $"then {times[^2].Ms:f1} ms ({times[^2].Id})");
    }

    private static double Time(JsonElement c, double gap)
    {
        var part = new PreparedPart(new PartShape(ConvexHull.Of(
            [.. c.GetProperty("part").GetProperty("vertices").EnumerateArray().Select(p => new Vec3(p[0].GetDouble(), p[1].GetDouble(), p[2].GetDouble()))])));
        JsonElement k = c.GetProperty("container");
        double At(int i) => k.GetProperty("dims")[i].GetDouble();
        BuildVolume volume = k.GetProperty("type").GetString() switch
        {
            "box" => new BoxVolume(At(0), At(1), At(2)),
            "cylinder" => new CylinderVolume(2 * k.GetProperty("r").GetDouble(), k.GetProperty("h").GetDouble()),
            _ => new PrismVolume(
                [.. k.GetProperty("polygon").EnumerateArray().Select(p => new Vec2(p[0].GetDouble(), p[1].GetDouble()))],
                k.GetProperty("h").GetDouble()),
        };
        var machine = new Machine { Name = "probe", BuildVolume = volume };
        TimeSpan start = Environment.CpuUsage.TotalTime;
        FitSolver.Solve(part, machine, new Allowance(Cut: false), new FitOptions(gap), default);
        return (Environment.CpuUsage.TotalTime - start).TotalMilliseconds;
    }
}
