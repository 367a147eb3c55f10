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

    /// <summary>A closed block of 12 triangles, outward.</summary>
    public static Mesh Block(Vec3 low, Vec3 high)
    {
        Vec3[] v = [.. Enumerable.Range(0, 8).Select(i => new Vec3(
            (i & 1) == 0 ? low.X : high.X, (i & 2) == 0 ? low.Y : high.Y, (i & 4) == 0 ? low.Z : high.Z))];
        int[] quads = [0, 2, 3, 1, 4, 5, 7, 6, 0, 1, 5, 4, 2, 6, 7, 3, 0, 4, 6, 2, 1, 3, 7, 5];
        return new Mesh(v, FromQuads(quads));
    }

    /// <summary>A closed torus about z, outward.</summary>
    public static Mesh Torus(double radius, double tube, int around = 48, int across = 24)
    {
        var v = new Vec3[around * across];
        List<int> quads = [];
        for (int i = 0; i < around; i++)
        {
            for (int j = 0; j < across; j++)
            {
                (double su, double cu) = Math.SinCos(2 * Math.PI * i / around);
                (double sv, double cv) = Math.SinCos(2 * Math.PI * j / across);
                v[i * across + j] = new Vec3((radius + tube * cv) * cu, (radius + tube * cv) * su, tube * sv);
                int k = (i + 1) % around, l = (j + 1) % across;
                quads.AddRange([i * across + j, k * across + j, k * across + l, i * across + l]);
            }
        }
        return new Mesh(v, FromQuads([.. quads]));
    }

    /// <summary>A closed ball of rings and sectors, outward.</summary>
    public static Mesh Ball(double radius, int sectors = 48, int rings = 24)
    {
        List<Vec3> v = [new(0, 0, -radius)];
        for (int j = 1; j < rings; j++)
        {
            for (int i = 0; i < sectors; i++)
            {
                (double s, double c) = Math.SinCos(2 * Math.PI * i / sectors);
                (double height, double wide) = Math.SinCos(Math.PI * j / rings - Math.PI / 2);
                v.Add(new Vec3(c * wide, s * wide, height) * radius);
            }
        }
        v.Add(new Vec3(0, 0, radius));
        List<int> corners = [];
        for (int i = 0; i < sectors; i++)
        {
            int k = (i + 1) % sectors, top = 1 + (rings - 2) * sectors;
            corners.AddRange([0, 1 + k, 1 + i, v.Count - 1, top + i, top + k]);
            for (int j = 0; j < rings - 2; j++)
            {
                int low = 1 + j * sectors, high = low + sectors;
                corners.AddRange(FromQuads([low + i, low + k, high + k, high + i]));
            }
        }
        return new Mesh([.. v], [.. corners]);
    }

    /// <summary>A closed gear blank of trapezoid teeth; with a twist (radians over its height) it is handed.</summary>
    public static Mesh Gear(int teeth, double twist)
    {
        const int levels = 8;
        double[] radii = [18, 20, 20, 18];
        int ring = 4 * teeth;
        List<Vec3> v = [];
        for (int level = 0; level <= levels; level++)
        {
            for (int i = 0; i < ring; i++)
            {
                double angle = 2 * Math.PI * i / ring + twist * level / levels;
                v.Add(new Vec3(radii[i % 4] * Math.Cos(angle), radii[i % 4] * Math.Sin(angle), 10.0 * level / levels));
            }
        }
        v.AddRange([new Vec3(0, 0, 0), new Vec3(0, 0, 10)]);
        List<int> corners = [];
        for (int i = 0; i < ring; i++)
        {
            int k = (i + 1) % ring, top = levels * ring;
            corners.AddRange([v.Count - 2, k, i, v.Count - 1, top + i, top + k]);
            for (int level = 0; level < levels; level++)
            {
                int low = level * ring, high = low + ring;
                corners.AddRange(FromQuads([low + i, low + k, high + k, high + i]));
            }
        }
        return new Mesh([.. v], [.. corners]);
    }

    /// <summary>The same triangles seen from the other side.</summary>
    public static Mesh InsideOut(Mesh mesh)
    {
        int[] corners = mesh.Corners.ToArray();
        for (int i = 0; i < corners.Length; i += 3) (corners[i + 1], corners[i + 2]) = (corners[i + 2], corners[i + 1]);
        return new Mesh(mesh.Vertices.ToArray(), corners);
    }

    public static Mesh Moved(Mesh mesh, Vec3 by) => mesh.Transformed(Matrix3.Identity, by);

    private static int[] FromQuads(int[] quads)
    {
        List<int> corners = [];
        for (int i = 0; i < quads.Length; i += 4)
            corners.AddRange([quads[i], quads[i + 1], quads[i + 2], quads[i], quads[i + 2], quads[i + 3]]);
        return [.. corners];
    }

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
