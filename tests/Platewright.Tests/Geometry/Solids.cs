using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

/// <summary>Shapes known by formula.</summary>
internal static class Solids
{
    private static readonly double Golden = (1 + Math.Sqrt(5)) / 2;

    /// <summary>Corners of a regular solid with edge 1.</summary>
    public static Vec3[] Regular(string name) => name switch
    {
        "tetrahedron" => Scaled([new(1, 1, 1), new(1, -1, -1), new(-1, 1, -1), new(-1, -1, 1)], 1 / Math.Sqrt(8)),
        "octahedron" => Scaled(
            [new(1, 0, 0), new(-1, 0, 0), new(0, 1, 0), new(0, -1, 0), new(0, 0, 1), new(0, 0, -1)], 1 / Math.Sqrt(2)),
        "icosahedron" => Scaled(Cyclic(1, Golden), 0.5),
        "dodecahedron" => Scaled([.. Cube(1), .. Cyclic(1 / Golden, Golden)], Golden / 2),
        _ => throw new ArgumentException("unknown", nameof(name)),
    };

    private static Vec3[] Cube(double half) =>
        [.. Enumerable.Range(0, 8).Select(i => new Vec3((i & 1) * 2 - 1, (i & 2) - 1, (i & 4) / 2 - 1) * half)];

    private static Vec3[] Cyclic(double a, double b)
    {
        List<Vec3> points = [];
        foreach (double p in new[] { -a, a })
            foreach (double q in new[] { -b, b })
                points.AddRange([new(0, p, q), new(p, q, 0), new(q, 0, p)]);
        return [.. points];
    }

    private static Vec3[] Scaled(Vec3[] points, double by) => [.. points.Select(p => p * by)];
}
