using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Fit;

/// <summary>Solids by their formulas, and cases made of them.</summary>
internal static class Solids
{
    private static readonly double Phi = (1 + Math.Sqrt(5)) / 2;

    public static Vec3[] Box(double x, double y, double z) =>
        [.. from a in Ends(x) from b in Ends(y) from c in Ends(z) select new Vec3(a, b, c)];

    /// <summary>Edge 1.</summary>
    public static Vec3[] Tetrahedron() =>
        [.. new Vec3[] { new(1, 1, 1), new(1, -1, -1), new(-1, 1, -1), new(-1, -1, 1) }.Select(v => v / Math.Sqrt(8))];

    /// <summary>Edge 1.</summary>
    public static Vec3[] Octahedron() =>
        [.. new[] { Vec3.UnitX, Vec3.UnitY, Vec3.UnitZ }.SelectMany(v => new[] { v, -v }).Select(v => v / Math.Sqrt(2))];

    /// <summary>Edge 1.</summary>
    public static Vec3[] Icosahedron() =>
        [.. from a in Ends(1) from b in Ends(Phi) from v in Cyclic(new Vec3(0, a, b)) select v];

    /// <summary>Edge 1.</summary>
    public static Vec3[] Dodecahedron() =>
        [.. Box(2, 2, 2).Concat(from a in Ends(2 / Phi) from b in Ends(2 * Phi) from v in Cyclic(new Vec3(0, a, b)) select v)
            .Select(v => v * (Phi / 2))];

    /// <summary>Edge 1.</summary>
    public static Vec3[] Cuboctahedron() =>
        [.. from a in Ends(2) from b in Ends(2) from v in Cyclic(new Vec3(a, b, 0)) select v / Math.Sqrt(2)];

    /// <summary>Points on a sphere, evenly by the golden angle.</summary>
    public static Vec3[] Sphere(int count, double radius) =>
        [.. Enumerable.Range(0, count).Select(i =>
        {
            double z = 1 - (2 * i + 1.0) / count, r = Math.Sqrt(1 - z * z), a = i * Math.PI * (3 - Math.Sqrt(5));
            return new Vec3(r * Math.Cos(a), r * Math.Sin(a), z) * radius;
        })];

    public static ReferenceCase IcosahedronInBox() =>
        new("icosahedron in a box", "free", [.. Icosahedron().Select(v => v * 70)], BoxMachine(120, 110, 100), 0, 0);

    public static ReferenceCase BoxInSquareBed() =>
        new("box on a square bed", "free", Box(265, 60, 40), BoxMachine(200, 200, 160), 0, 0);

    public static ReferenceCase TetrahedronInCylinder() =>
        new("tetrahedron in a cylinder", "free", [.. Tetrahedron().Select(v => v * 210)],
            new Machine { Name = "round", BuildVolume = new CylinderVolume(200, 180) }, 0, 0);

    public static Machine BoxMachine(double x, double y, double z) =>
        new() { Name = "box", BuildVolume = new BoxVolume(x, y, z) };

    private static double[] Ends(double length) => [-length / 2, length / 2];

    private static Vec3[] Cyclic(Vec3 v) => [v, new(v.Y, v.Z, v.X), new(v.Z, v.X, v.Y)];
}
