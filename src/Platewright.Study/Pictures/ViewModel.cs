using System.Buffers.Binary;
using Platewright.Geometry;
using Platewright.Study.Documents;

namespace Platewright.Study.Pictures;

/// <summary>A part's geometry as the page turns it about: thinned to what the eye needs, in the part's own coordinates.</summary>
public static class ViewModel
{
    /// <summary>Triangles for each part, so that the page of a study with so many parts stays light to open.</summary>
    /// <remarks>In few steps, so that one more part seldom changes the models of all others.</remarks>
    public static int TrianglesFor(int parts) => parts switch
    {
        <= 20 => 3000,
        <= 60 => 1200,
        <= 200 => 600,
        _ => 300,
    };

    /// <param name="mesh">Any mesh; what is not finite is left out.</param>
    /// <param name="mostTriangles">At least 12.</param>
    public static ModelDocument Of(Mesh mesh, int mostTriangles)
    {
        Mesh thin = MeshThinner.Thin(mesh, mostTriangles);
        var positions = new byte[thin.Vertices.Length * 3 * sizeof(float)];
        for (int i = 0; i < thin.Vertices.Length; i++)
        {
            Vec3 v = thin.Vertices[i];
            Span<byte> at = positions.AsSpan(i * 3 * sizeof(float));
            BinaryPrimitives.WriteSingleLittleEndian(at, (float)v.X);
            BinaryPrimitives.WriteSingleLittleEndian(at[4..], (float)v.Y);
            BinaryPrimitives.WriteSingleLittleEndian(at[8..], (float)v.Z);
        }
        var corners = new byte[thin.Corners.Length * sizeof(uint)];
        for (int i = 0; i < thin.Corners.Length; i++)
            BinaryPrimitives.WriteUInt32LittleEndian(corners.AsSpan(i * sizeof(uint)), (uint)thin.Corners[i]);
        return new ModelDocument(Convert.ToBase64String(positions), Convert.ToBase64String(corners));
    }
}
