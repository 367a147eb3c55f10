using System.Text.Json;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Fit;

/// <summary>One published or twice-computed case of the reference file fit-cases.json.</summary>
public sealed record ReferenceCase(string Id, string Mode, Vec3[] Vertices, Machine Machine, double MaxScale, double Excess)
{
    // Sides of the polygon that stands for a true circle; its mesh may fit by 1/cos(π/N) − 1 larger.
    private const int Sides = 720;

    public override string ToString() => Id;

    public PreparedPart Part() => new(new PartShape(ConvexHull.Of(Vertices)));

    public static IEnumerable<ReferenceCase> All()
    {
        string path = Path.Combine(Repository.Shared, "reference", "fit-cases.json");
        if (!File.Exists(path)) yield break;
        using var document = JsonDocument.Parse(File.ReadAllText(path));
        foreach (JsonElement c in document.RootElement.GetProperty("cases").EnumerateArray())
        {
            JsonElement part = c.GetProperty("part");
            bool round = !part.TryGetProperty("vertices", out JsonElement vertices);
            yield return new ReferenceCase(
                c.GetProperty("id").GetString()!, c.GetProperty("mode").GetString()!,
                round ? Cylinder(part) : [.. vertices.EnumerateArray().Select(Point)],
                MachineOf(c.GetProperty("container")), c.GetProperty("max_scale").GetDouble(),
                round ? 1 / Math.Cos(Math.PI / Sides) - 1 : 0);
        }
    }

    private static Vec3[] Cylinder(JsonElement part)
    {
        double r = part.GetProperty("r").GetDouble(), h = part.GetProperty("h").GetDouble();
        return [.. Enumerable.Range(0, Sides).Select(i => 2 * Math.PI * i / Sides).SelectMany(a =>
            new[] { new Vec3(r * Math.Cos(a), r * Math.Sin(a), 0), new Vec3(r * Math.Cos(a), r * Math.Sin(a), h) })];
    }

    private static Machine MachineOf(JsonElement container) => new()
    {
        Name = "probe",
        BuildVolume = container.GetProperty("type").GetString() switch
        {
            "box" => new BoxVolume(Number(container, "dims", 0), Number(container, "dims", 1), Number(container, "dims", 2)),
            "cylinder" => new CylinderVolume(2 * container.GetProperty("r").GetDouble(), container.GetProperty("h").GetDouble()),
            "prism" => new PrismVolume(
                [.. container.GetProperty("polygon").EnumerateArray().Select(p => new Vec2(p[0].GetDouble(), p[1].GetDouble()))],
                container.GetProperty("h").GetDouble()),
            string type => throw new NotSupportedException($"container {type}"),
            null => throw new NotSupportedException("container without a type"),
        },
    };

    private static double Number(JsonElement e, string key, int i) => e.GetProperty(key)[i].GetDouble();

    private static Vec3 Point(JsonElement p) => new(p[0].GetDouble(), p[1].GetDouble(), p[2].GetDouble());
}
