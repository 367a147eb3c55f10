using Platewright.Build.Layers;
using Platewright.Geometry;

namespace Platewright.Tests.Build.Layers;

/// <summary>Shapes of a formula, and how the tests cut them.</summary>
internal static class Cuts
{
    public const double RowPitch = 0.45 / 8;

    public static LayeredPart Of(Mesh mesh, double layerHeight = 0.2, Matrix3? linear = null)
    {
        Mesh welded = Welding.Weld(mesh);
        return LayeredPart.Cut(
            welded, MeshTopology.Of(welded), linear ?? Matrix3.Identity, layerHeight, RowPitch, default);
    }

    public static Matrix3 TurnedZ(double degrees) =>
        Rotation.About(Vec3.UnitZ, degrees * Math.PI / 180).ToMatrix();

    /// <summary>A closed body of revolution about z through rings of (radius, height); a radius of 0 is a
    /// tip.</summary>
    public static Mesh Turned(int sides, params (double Radius, double Height)[] rings)
    {
        List<Vec3> v = [];
        foreach ((double radius, double height) in rings)
        {
            for (int i = 0; i < sides; i++)
            {
                (double s, double c) = Math.SinCos(2 * Math.PI * i / sides);
                v.Add(new Vec3(radius * c, radius * s, height));
            }
        }
        (int below, int above) = (v.Count, v.Count + 1);
        v.AddRange([new Vec3(0, 0, rings[0].Height), new Vec3(0, 0, rings[^1].Height)]);
        List<int> corners = [];
        for (int i = 0; i < sides; i++)
        {
            int k = (i + 1) % sides, top = (rings.Length - 1) * sides;
            if (rings[0].Radius > 0) corners.AddRange([below, k, i]);
            if (rings[^1].Radius > 0) corners.AddRange([above, top + i, top + k]);
            for (int r = 0; r + 1 < rings.Length; r++)
            {
                int low = r * sides, high = low + sides;
                if (rings[r].Radius > 0) corners.AddRange([low + i, low + k, high + k]);
                if (rings[r + 1].Radius > 0) corners.AddRange([low + i, high + k, high + i]);
            }
        }
        return new Mesh([.. v], [.. corners]);
    }

    /// <summary>A right prism over a polygon, counter-clockwise, star-shaped about its first corner.</summary>
    public static Mesh Prism(double height, params Vec2[] polygon)
    {
        int n = polygon.Length;
        Vec3[] v = [.. polygon.Select(p => new Vec3(p.X, p.Y, 0)), .. polygon.Select(p => new Vec3(p.X, p.Y, height))];
        List<int> corners = [];
        for (int i = 0; i < n; i++)
        {
            int k = (i + 1) % n;
            corners.AddRange([i, k, n + k, i, n + k, n + i]);
            if (i > 0 && k > 0) corners.AddRange([0, k, i, n, n + i, n + k]);
        }
        return new Mesh(v, [.. corners]);
    }

    /// <summary>Area of a regular polygon inside a circle.</summary>
    public static double PolygonArea(int sides, double radius) =>
        sides / 2.0 * radius * radius * Math.Sin(2 * Math.PI / sides);
}
