using System.Globalization;
using System.Text;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>The text formats: numbers with at most four decimals, lines that end in a line feed.</summary>
internal static class MeshText
{
    public static byte[] Stl(Model model)
    {
        StringBuilder text = new();
        foreach (Body body in model.Bodies)
        {
            text.Append($"solid {body.Name}\n");
            for (int i = 0; i < body.Mesh.TriangleCount; i++)
            {
                (Vec3 a, Vec3 b, Vec3 c) = body.Mesh.Triangle(i);
                Vec3 n = (b - a).Cross(c - a);
                text.Append($"facet normal {Numbers(n.Length > 0 ? n.Normalized() : default)}\n outer loop\n");
                foreach (Vec3 p in (ReadOnlySpan<Vec3>)[a, b, c]) text.Append($"  vertex {Numbers(p / model.Unit)}\n");
                text.Append(" endloop\nendfacet\n");
            }
            text.Append($"endsolid {body.Name}\n");
        }
        return Bytes(text);
    }

    public static byte[] Obj(Model model)
    {
        StringBuilder text = new();
        int first = 1;
        foreach (Body body in model.Bodies)
        {
            text.Append($"o {body.Name}\n");
            foreach (Vec3 p in body.Mesh.Vertices) text.Append($"v {Numbers(p / model.Unit)}\n");
            ReadOnlySpan<int> corners = body.Mesh.Corners;
            for (int i = 0; i < corners.Length; i += 3)
                text.Append($"f {first + corners[i]} {first + corners[i + 1]} {first + corners[i + 2]}\n");
            first += body.Mesh.Vertices.Length;
        }
        return Bytes(text);
    }

    public static byte[] Ply(Model model)
    {
        Mesh mesh = model.Bodies[0].Mesh;
        StringBuilder text = new();
        text.Append($"ply\nformat ascii 1.0\ncomment {model.Bodies[0].Name}\nelement vertex {mesh.Vertices.Length}\n");
        text.Append("property float x\nproperty float y\nproperty float z\n");
        text.Append($"element face {mesh.TriangleCount}\nproperty list uchar int vertex_indices\nend_header\n");
        foreach (Vec3 p in mesh.Vertices) text.Append($"{Numbers(p / model.Unit)}\n");
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3) text.Append($"3 {corners[i]} {corners[i + 1]} {corners[i + 2]}\n");
        return Bytes(text);
    }

    public static byte[] Amf(Model model)
    {
        StringBuilder text = new();
        text.Append("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n<amf unit=\"millimeter\" version=\"1.1\">\n");
        for (int i = 0; i < model.Bodies.Count; i++)
        {
            Body body = model.Bodies[i];
            if (body.Material is not null)
                text.Append($" <material id=\"{i + 1}\">\n  <metadata type=\"name\">{body.Material}</metadata>\n </material>\n");
            text.Append($" <object id=\"{i}\">\n  <metadata type=\"name\">{body.Name}</metadata>\n");
            text.Append("  <mesh>\n   <vertices>\n");
            foreach (Vec3 p in body.Mesh.Vertices)
                text.Append($"    <vertex><coordinates>{Element("x", p.X)}{Element("y", p.Y)}{Element("z", p.Z)}")
                    .Append("</coordinates></vertex>\n");
            string material = body.Material is null ? "" : $" materialid=\"{i + 1}\"";
            text.Append($"   </vertices>\n   <volume{material}>\n");
            ReadOnlySpan<int> corners = body.Mesh.Corners;
            for (int k = 0; k < corners.Length; k += 3)
                text.Append($"    <triangle><v1>{corners[k]}</v1><v2>{corners[k + 1]}</v2>")
                    .Append($"<v3>{corners[k + 2]}</v3></triangle>\n");
            text.Append("   </volume>\n  </mesh>\n </object>\n");
        }
        return Bytes(text.Append("</amf>\n"));
    }

    internal static string Number(double x) => Math.Round(x, 4).ToString("0.####", CultureInfo.InvariantCulture);

    private static string Element(string name, double x) => $"<{name}>{Number(x)}</{name}>";

    private static string Numbers(Vec3 p) => $"{Number(p.X)} {Number(p.Y)} {Number(p.Z)}";

    private static byte[] Bytes(StringBuilder text) => Encoding.UTF8.GetBytes(text.Replace("-0 ", "0 ").ToString());
}
