using System.Diagnostics;
using System.Text.Json;
using Platewright.Fit.Search;
using Platewright.Geometry;

namespace Platewright.Tests.Fit;

public sealed class Scratch
{
    [Fact]
    public void Run()
    {
        using var doc = JsonDocument.Parse(File.ReadAllText(Repository.SharedOrSkip("reference", "fit-cases.json")));
        foreach (double tol in new[] { 1e-4, 1e-8 })
        for (int rep = 0; rep < 2; rep++)
        foreach (var c in doc.RootElement.GetProperty("cases").EnumerateArray())
        {
            if (c.GetProperty("mode").GetString() != "free") continue;
            var part = c.GetProperty("part");
            Vec3[] v;
            if (part.TryGetProperty("vertices", out var vs))
                v = vs.EnumerateArray().Select(p => new Vec3(p[0].GetDouble(), p[1].GetDouble(), p[2].GetDouble())).ToArray();
            else
            {
                double r = part.GetProperty("r").GetDouble(), h = part.GetProperty("h").GetDouble();
                int n = 128;
                v = Enumerable.Range(0, 2 * n).Select(i => new Vec3(r * Math.Cos(2 * Math.PI * (i / 2) / n), r * Math.Sin(2 * Math.PI * (i / 2) / n), i % 2 * h)).ToArray();
            }
            var k = c.GetProperty("container");
            Container container = k.GetProperty("type").GetString() switch
            {
                "box" => new BoxContainer(k.GetProperty("dims")[0].GetDouble(), k.GetProperty("dims")[1].GetDouble(), k.GetProperty("dims")[2].GetDouble()),
                "cylinder" => new CylinderContainer(k.GetProperty("r").GetDouble(), k.GetProperty("h").GetDouble()),
                _ => new PrismContainer(k.GetProperty("polygon").EnumerateArray().Select(p => new Vec2(p[0].GetDouble(), p[1].GetDouble())).ToArray(), k.GetProperty("h").GetDouble()),
            };
            long t0 = Stopwatch.GetTimestamp();
            var search = new RotationSearch(new SupportGrid(v), container, null, CancellationToken.None);
            var result = search.Run([], tol, 300_000);
            double ms = Stopwatch.GetElapsedTime(t0).TotalMilliseconds;
            double truth = c.GetProperty("max_scale").GetDouble();
            if (rep == 1) Console.WriteLine($"{tol:e0} {c.GetProperty("id").GetString(),-32} {result.Scale,14:f10} err {result.Scale / truth - 1,10:e2} up {result.UpperBound / truth - 1,10:e2} cells {result.Cells,8} {(result.Closed ? "" : "OPEN")} {ms,8:f2} ms");
        }
    }
}
