using System.Text;
using Platewright.Geometry;

namespace Platewright.Demo.Writing;

/// <summary>OBJ with one object.</summary>
internal static class Obj
{
    public static byte[] Bytes(Model model)
    {
        Mesh mesh = model.Drawn;
        StringBuilder text = new($"o {model.Name}\n");
        foreach (Vec3 p in mesh.Vertices) text.Append($"v {Numbers.Of(p)}\n");
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
            text.Append($"f {corners[i] + 1} {corners[i + 1] + 1} {corners[i + 2] + 1}\n");
        return Encoding.ASCII.GetBytes(text.ToString());
    }
}
