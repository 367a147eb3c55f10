using System.Text;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>PLY, as text and as binary little-endian.</summary>
internal static class Ply
{
    public static byte[] Text(Model model)
    {
        Mesh mesh = model.Drawn;
        StringBuilder text = new(Header(mesh, "ascii"));
        foreach (Vec3 p in mesh.Vertices) text.Append($"{Numbers.Of(p)}\n");
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
            text.Append($"3 {corners[i]} {corners[i + 1]} {corners[i + 2]}\n");
        return Encoding.ASCII.GetBytes(text.ToString());
    }

    public static byte[] Binary(Model model)
    {
        Mesh mesh = model.Drawn;
        using MemoryStream stream = new();
        using BinaryWriter writer = new(stream);
        writer.Write(Encoding.ASCII.GetBytes(Header(mesh, "binary_little_endian")));
        foreach (Vec3 p in mesh.Vertices)
            foreach (double x in (ReadOnlySpan<double>)[p.X, p.Y, p.Z]) writer.Write((float)x);
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
        {
            writer.Write((byte)3);
            for (int k = 0; k < 3; k++) writer.Write(corners[i + k]);
        }
        return stream.ToArray();
    }

    private static string Header(Mesh mesh, string format) =>
        $"ply\nformat {format} 1.0\nelement vertex {mesh.Vertices.Length}\n" +
        "property float x\nproperty float y\nproperty float z\n" +
        $"element face {mesh.TriangleCount}\nproperty list uchar int vertex_indices\nend_header\n";
}
