using System.Text;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>The binary formats, little-endian.</summary>
internal static class MeshBinary
{
    public static byte[] Stl(Model model)
    {
        using MemoryStream stream = new();
        using BinaryWriter writer = new(stream);
        byte[] header = new byte[80];
        Encoding.ASCII.GetBytes(model.Bodies[0].Name, header);
        writer.Write(header);
        writer.Write((uint)model.Bodies.Sum(b => b.Mesh.TriangleCount));
        foreach (Body body in model.Bodies)
            for (int i = 0; i < body.Mesh.TriangleCount; i++)
            {
                (Vec3 a, Vec3 b, Vec3 c) = body.Mesh.Triangle(i);
                Vec3 n = (b - a).Cross(c - a);
                Write(writer, n.Length > 0 ? n.Normalized() : default);
                Write(writer, a / model.Unit);
                Write(writer, b / model.Unit);
                Write(writer, c / model.Unit);
                writer.Write((ushort)0);
            }
        return stream.ToArray();
    }

    public static byte[] Ply(Model model)
    {
        Mesh mesh = model.Bodies[0].Mesh;
        using MemoryStream stream = new();
        using BinaryWriter writer = new(stream);
        writer.Write(Encoding.ASCII.GetBytes(
            $"ply\nformat binary_little_endian 1.0\nelement vertex {mesh.Vertices.Length}\n" +
            "property float x\nproperty float y\nproperty float z\n" +
            $"element face {mesh.TriangleCount}\nproperty list uchar int vertex_indices\nend_header\n"));
        foreach (Vec3 p in mesh.Vertices) Write(writer, p / model.Unit);
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
        {
            writer.Write((byte)3);
            for (int k = 0; k < 3; k++) writer.Write(corners[i + k]);
        }
        return stream.ToArray();
    }

    private static void Write(BinaryWriter writer, Vec3 p)
    {
        writer.Write((float)p.X);
        writer.Write((float)p.Y);
        writer.Write((float)p.Z);
    }
}
