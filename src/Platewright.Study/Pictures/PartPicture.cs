using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>
/// A small still picture of a part: a PNG in greys on nothing, so that it can stand on light and dark pages. The same
/// mesh gives the same bytes.
/// </summary>
public static class PartPicture
{
    /// <summary>Width and height, pixels.</summary>
    public const int EdgePixels = 144;

    /// <summary>A part with a mesh, seen from its front left and above. A mesh without triangles gives an empty picture.</summary>
    public static byte[] Of(Mesh mesh)
    {
        Viewpoint view = Viewpoint.Onto(mesh.Vertices, EdgePixels * Canvas.SamplesPerPixel);
        var surface = new SurfaceBuffer(EdgePixels * Canvas.SamplesPerPixel);
        for (int i = 0; i < mesh.TriangleCount; i++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
            surface.Add(view, a, b, c);
        }
        return Canvas.Of(surface).ToPng();
    }

    /// <summary>A wanted part, known by its dimensions (mm, each above 0) alone: a box in dashes.</summary>
    public static byte[] OfBox(Vec3 sizeMm)
    {
        if (!(sizeMm.X > 0 && sizeMm.Y > 0 && sizeMm.Z > 0))
            throw new ArgumentException($"A wanted part needs three sizes above 0 mm, got {sizeMm}.", nameof(sizeMm));
        return BoxPicture.Draw(sizeMm, EdgePixels).ToPng();
    }

    /// <summary>The picture as documents carry it.</summary>
    public static string ToDataUri(byte[] png) => "data:image/png;base64," + Convert.ToBase64String(png);
}
