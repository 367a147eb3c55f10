using System.Globalization;
using System.Text;
using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

/// <summary>Small meshes and the texts of files, made by the tests themselves.</summary>
internal static class TestMeshes
{
    /// <summary>
    /// Random triangles over a few random vertices, with coordinates that single precision holds exactly.
    /// </summary>
    public static readonly Gen<Mesh> Random =
        from vertices in Gen.Select(Coordinate, Coordinate, Coordinate, (x, y, z) => new Vec3(x, y, z)).Array[3, 40]
        from corners in Gen.Int[0, vertices.Length - 1].Array[1, 60]
        select new Mesh(
            vertices,
            Enumerable.Range(0, corners.Length / 3 * 3 + 3).Select(i => corners[i % corners.Length]).ToArray());

    private static Gen<double> Coordinate => Gen.Float[-1e4f, 1e4f].Select(f => (double)f);

    /// <summary>A box from the origin, faces outward.</summary>
    public static Mesh Box(double x, double y, double z)
    {
        var vertices = new Vec3[8];
        for (int i = 0; i < 8; i++) vertices[i] = new Vec3((i & 1) * x, (i >> 1 & 1) * y, (i >> 2 & 1) * z);
        int[] corners =
        [
            0, 2, 1, 1, 2, 3, 4, 5, 6, 5, 7, 6, 0, 1, 4, 1, 5, 4, 2, 6, 3, 3, 6, 7, 0, 4, 2, 2, 4, 6, 1, 3, 5, 3, 7, 5,
        ];
        return new Mesh(vertices, corners);
    }

    public static byte[] BinaryStl(Mesh mesh)
    {
        using var stream = new MemoryStream();
        Platewright.Formats.Stl.StlWriter.Write(stream, mesh);
        return stream.ToArray();
    }

    public static string AsciiStl(Mesh mesh)
    {
        var text = new StringBuilder("solid test\n");
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            text.Append("facet normal 0 0 0\n outer loop\n");
            foreach (Vec3 p in (ReadOnlySpan<Vec3>)[a, b, c]) text.Append(Inv($"  vertex {p.X:R} {p.Y:R} {p.Z:R}\n"));
            text.Append(" endloop\nendfacet\n");
        }
        return text.Append("endsolid test\n").ToString();
    }

    public static string Obj(Mesh mesh)
    {
        var text = new StringBuilder();
        foreach (Vec3 p in mesh.Vertices) text.Append(Inv($"v {p.X:R} {p.Y:R} {p.Z:R}\n"));
        for (int i = 0; i < mesh.Corners.Length; i += 3)
            text.Append(Inv($"f {mesh.Corners[i] + 1} {mesh.Corners[i + 1] + 1} {mesh.Corners[i + 2] + 1}\n"));
        return text.ToString();
    }

    /// <summary>
    /// The three positions of every triangle, in order: what a format must keep whatever it does to indices.
    /// </summary>
    public static Vec3[] Positions(Mesh mesh)
    {
        var positions = new Vec3[mesh.Corners.Length];
        for (int i = 0; i < positions.Length; i++) positions[i] = mesh.Vertices[mesh.Corners[i]] + default(Vec3);
        return positions;
    }

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
