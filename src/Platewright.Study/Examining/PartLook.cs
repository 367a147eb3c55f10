using Platewright.Geometry;
using Platewright.Study.Documents;
using Platewright.Study.Pictures;

namespace Platewright.Study.Examining;

/// <summary>How a part looks: a still picture, and a light mesh to turn.</summary>
/// <param name="Picture">A data URI.</param>
/// <param name="Model">Null for a part without a mesh.</param>
public sealed record PartLook(string Picture, ModelDocument? Model)
{
    /// <summary>
    /// Most triangles of the light mesh. Fixed, so that one more part changes nothing of the others; a page of a thousand parts stays
    /// below 25 MB, which a browser test holds.
    /// </summary>
    public const int MostTriangles = 1200;

    /// <summary>A part with a mesh.</summary>
    public static PartLook Of(Mesh mesh) => new(PartPicture.ToDataUri(PartPicture.Of(mesh)), ViewModel.Of(mesh, MostTriangles));

    /// <summary>A wanted part, known by its dimensions alone.</summary>
    public static PartLook OfBox(Vec3 sizeMm) => new(PartPicture.ToDataUri(PartPicture.OfBox(sizeMm)), null);
}
