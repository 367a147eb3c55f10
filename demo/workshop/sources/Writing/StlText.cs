using System.Text;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>STL as text.</summary>
internal static class StlText
{
    public static byte[] Bytes(Model model)
    {
        StringBuilder text = new($"solid {model.Name}\n");
        Mesh mesh = model.Drawn;
        for (int i = 0; i < mesh.TriangleCount; i++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
            Vec3 n = (b - a).Cross(c - a);
            text.Append($"facet normal {Numbers.Of(n.Length > 0 ? n.Normalized() : default)}\n outer loop\n");
            foreach (Vec3 p in (ReadOnlySpan<Vec3>)[a, b, c]) text.Append($"  vertex {Numbers.Of(p)}\n");
            text.Append(" endloop\nendfacet\n");
        }
        return Encoding.ASCII.GetBytes(text.Append($"endsolid {model.Name}\n").ToString());
    }
}
