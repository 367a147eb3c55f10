using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Fit.Benchmarks;

/// <summary>What the benchmark fits: the parts of a folder, and round solids, which are the hard ones.</summary>
internal static class BenchParts
{
    public static IEnumerable<(string Name, ConvexHull Hull)> FromFolder(string folder)
    {
        string[] files = Directory.Exists(folder) ? Directory.GetFiles(folder, "*", SearchOption.AllDirectories) : [];
        foreach (string path in files.Order(StringComparer.Ordinal))
        {
            if (Path.GetExtension(path).ToLowerInvariant() is ".md" or ".json" or ".toml") continue;
            foreach (ModelPart part in ModelReader.Read(path).Files.SelectMany(f => f.Parts))
                yield return (Path.GetFileName(path) + (part.Name is null ? "" : ":" + part.Name), ConvexHull.Of(part.Mesh.Vertices));
        }
    }

    public static IEnumerable<(string Name, ConvexHull Hull)> Solids()
    {
        yield return ("cube 150", ConvexHull.Of([.. from x in Ends(150) from y in Ends(150) from z in Ends(150) select new Vec3(x, y, z)]));
        yield return ("sphere 180, 24 × 12", ConvexHull.Of(Sphere(24, 12, 90)));
        yield return ("sphere 180, 64 × 32", ConvexHull.Of(Sphere(64, 32, 90)));
        yield return ("cylinder 120 × 200, 64 sides", ConvexHull.Of(Rings(64, (60, 0), (60, 200))));
        yield return ("cylinder 40 × 300, 128 sides", ConvexHull.Of(Rings(128, (20, 0), (20, 300))));
        yield return ("disc 210 × 4, 96 sides", ConvexHull.Of(Rings(96, (105, 0), (105, 4))));
        yield return ("cone 160 × 200, 64 sides", ConvexHull.Of(Rings(64, (80, 0), (0, 200))));
    }

    private static double[] Ends(double length) => [-length / 2, length / 2];

    private static Vec3[] Sphere(int around, int along, double radius) => Rings(
        around, [.. Enumerable.Range(0, along + 1).Select(i => (radius * Math.Sin(Math.PI * i / along), -radius * Math.Cos(Math.PI * i / along)))]);

    private static Vec3[] Rings(int sides, params (double Radius, double Height)[] rings) =>
        [.. from ring in rings from i in Enumerable.Range(0, sides)
            let a = 2 * Math.PI * i / sides
            select new Vec3(ring.Radius * Math.Cos(a), ring.Radius * Math.Sin(a), ring.Height)];
}
