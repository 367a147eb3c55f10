using System.Runtime.InteropServices;
using Platewright.Geometry;
using Platewright.Study.Documents;
using Platewright.Study.Pictures;

namespace Platewright.Study.Examining;

/// <summary>How a part looks: a still picture, and a light mesh to turn.</summary>
/// <param name="Picture">A data URI.</param>
/// <param name="Model">Null where the mesh could not be made light enough.</param>
public sealed record PartLook(string Picture, ModelDocument? Model)
{
    /// <summary>Most triangles of the light mesh: a thousand parts stay a file that opens.</summary>
    public const int MostTriangles = 2000;

    /// <summary>A part with a mesh.</summary>
    public static PartLook Of(Mesh mesh) => new(
        PartPicture.ToDataUri(PartPicture.Of(mesh)), mesh.TriangleCount <= MostTriangles ? ModelOf(mesh) : null);

    /// <summary>A wanted part, known by its dimensions alone.</summary>
    public static PartLook OfBox(Vec3 sizeMm) => new(PartPicture.ToDataUri(PartPicture.OfBox(sizeMm)), null);

    private static ModelDocument ModelOf(Mesh mesh)
    {
        var positions = new float[3 * mesh.Vertices.Length];
        for (int i = 0; i < mesh.Vertices.Length; i++)
        {
            Vec3 v = mesh.Vertices[i];
            (positions[3 * i], positions[3 * i + 1], positions[3 * i + 2]) = ((float)v.X, (float)v.Y, (float)v.Z);
        }
        return new ModelDocument(
            Convert.ToBase64String(MemoryMarshal.AsBytes<float>(positions)), Convert.ToBase64String(MemoryMarshal.AsBytes(mesh.Corners)));
    }
}
