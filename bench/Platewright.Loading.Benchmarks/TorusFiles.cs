using System.Globalization;
using Platewright.Formats.Stl;
using Platewright.Formats.ThreeMf;
using Platewright.Geometry;

namespace Platewright.Loading.Benchmarks;

/// <summary>The same torus of a million triangles in every way it may come.</summary>
internal static class TorusFiles
{
    public const int Triangles = 2 * Around * Tube;

    private const int Around = 1000;
    private const int Tube = 500;

    private static readonly Mesh Ordered = Torus();

    public static readonly (string Name, Action<string> Write)[] All =
    [
        ("torus.stl", path => WriteStl(path, Ordered)),
        ("shuffled.stl", path => WriteStl(path, Shuffled(Ordered))),
        ("soup.stl", path => WriteStl(path, Apart(Ordered))),
        ("ascii.stl", WriteAscii),
        ("torus.obj", WriteObj),
        ("torus.ply", WritePly),
        ("torus.3mf", WriteThreeMf),
    ];

    private static Mesh Torus()
    {
        var vertices = new Vec3[Around * Tube];
        var corners = new int[3 * Triangles];
        int n = 0;
        for (int i = 0; i < Around; i++)
        {
            for (int j = 0; j < Tube; j++)
            {
                double u = 2 * Math.PI * i / Around, v = 2 * Math.PI * j / Tube, r = 80 + 20 * Math.Cos(v);
                (double x, double y, double z) = (r * Math.Cos(u), r * Math.Sin(u), 20 * Math.Sin(v));
                vertices[i * Tube + j] = new Vec3((float)x, (float)y, (float)z);
                int a = i * Tube + j, b = (i + 1) % Around * Tube + j;
                int c = (i + 1) % Around * Tube + (j + 1) % Tube, d = i * Tube + (j + 1) % Tube;
                foreach (int corner in (ReadOnlySpan<int>)[a, b, c, a, c, d]) corners[n++] = corner;
            }
        }
        return new Mesh(vertices, corners);
    }

    /// <summary>Neighbours far apart in the file: the worst order for a cache.</summary>
    private static Mesh Shuffled(Mesh mesh)
    {
        int[][] triangles = mesh.Corners.ToArray().Chunk(3).ToArray();
        new Random(1).Shuffle(triangles);
        return new Mesh(mesh.Vertices.ToArray(), triangles.SelectMany(t => t).ToArray());
    }

    /// <summary>No two triangles share a corner.</summary>
    private static Mesh Apart(Mesh mesh)
    {
        var vertices = new Vec3[mesh.Corners.Length];
        for (int i = 0; i < vertices.Length; i++) vertices[i] = mesh.Vertices[mesh.Corners[i]] * (1 + i * 1e-6);
        return new Mesh(vertices, Enumerable.Range(0, vertices.Length).ToArray());
    }

    private static void WriteStl(string path, Mesh mesh)
    {
        using FileStream stream = File.Create(path);
        StlWriter.Write(stream, mesh);
    }

    private static void WriteThreeMf(string path)
    {
        using FileStream stream = File.Create(path);
        ThreeMfWriter.Write(stream, [new BuildItem(Ordered)]);
    }

    private static void WriteAscii(string path)
    {
        using StreamWriter text = File.CreateText(path);
        text.WriteLine("solid torus");
        for (int t = 0; t < Ordered.TriangleCount; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = Ordered.Triangle(t);
            text.WriteLine("  facet normal 0 0 0\n    outer loop");
            foreach (Vec3 p in (ReadOnlySpan<Vec3>)[a, b, c]) text.WriteLine("      vertex " + Words(p, "e6"));
            text.WriteLine("    endloop\n  endfacet");
        }
        text.WriteLine("endsolid torus");
    }

    private static void WriteObj(string path)
    {
        using StreamWriter text = File.CreateText(path);
        foreach (Vec3 p in Ordered.Vertices) text.WriteLine("v " + Words(p, "f6"));
        for (int i = 0; i < Ordered.Corners.Length; i += 3)
            text.WriteLine($"f {Ordered.Corners[i] + 1} {Ordered.Corners[i + 1] + 1} {Ordered.Corners[i + 2] + 1}");
    }

    private static void WritePly(string path)
    {
        using FileStream stream = File.Create(path);
        using var bytes = new BinaryWriter(stream);
        bytes.Write(System.Text.Encoding.ASCII.GetBytes(
            $"ply\nformat binary_little_endian 1.0\nelement vertex {Ordered.Vertices.Length}\nproperty float x\n"
            + $"property float y\nproperty float z\nelement face {Triangles}\n"
            + "property list uchar int vertex_indices\nend_header\n"));
        foreach (Vec3 p in Ordered.Vertices)
        {
            bytes.Write((float)p.X);
            bytes.Write((float)p.Y);
            bytes.Write((float)p.Z);
        }
        for (int i = 0; i < Ordered.Corners.Length; i++)
        {
            if (i % 3 == 0) bytes.Write((byte)3);
            bytes.Write(Ordered.Corners[i]);
        }
    }

    private static string Words(Vec3 p, string format) => string.Join(
        ' ', new[] { p.X, p.Y, p.Z }.Select(n => n.ToString(format, CultureInfo.InvariantCulture)));
}
