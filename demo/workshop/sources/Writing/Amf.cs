using System.Text;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>AMF, not packed, with one object and its material's name.</summary>
internal static class Amf
{
    public static byte[] Bytes(Model model)
    {
        Mesh mesh = model.Drawn;
        StringBuilder text = new();
        text.Append("<?xml version=\"1.0\" encoding=\"utf-8\"?>\n<amf unit=\"millimeter\" version=\"1.1\">\n");
        if (model.Origin is { } origin)
            text.Append($" <metadata type=\"author\">{origin.MadeBy}</metadata>\n <metadata type=\"license\">{origin.Licence}</metadata>\n");
        if (model.Material is not null)
            text.Append($" <material id=\"1\">\n  <metadata type=\"name\">{model.Material}</metadata>\n </material>\n");
        text.Append($" <object id=\"0\">\n  <metadata type=\"name\">{model.Name}</metadata>\n");
        text.Append("  <mesh>\n   <vertices>\n");
        foreach (Vec3 p in mesh.Vertices)
            text.Append($"    <vertex><coordinates>{Element("x", p.X)}{Element("y", p.Y)}{Element("z", p.Z)}")
                .Append("</coordinates></vertex>\n");
        text.Append($"   </vertices>\n   <volume{(model.Material is null ? "" : " materialid=\"1\"")}>\n");
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int k = 0; k < corners.Length; k += 3)
            text.Append($"    <triangle><v1>{corners[k]}</v1><v2>{corners[k + 1]}</v2>")
                .Append($"<v3>{corners[k + 2]}</v3></triangle>\n");
        return Encoding.UTF8.GetBytes(text.Append("   </volume>\n  </mesh>\n </object>\n</amf>\n").ToString());
    }

    private static string Element(string name, double x) => $"<{name}>{Numbers.Of(x)}</{name}>";
}
