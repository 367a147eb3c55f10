using Platewright.Build.Layers;
using Platewright.Geometry;

namespace Platewright.Tests.Build.Layers;

/// <summary>Open meshes come in all sizes: the tests bring them to one.</summary>
internal static class Scaled
{
    /// <summary>What a mesh is multiplied by to get a longest side.</summary>
    public static double By(Mesh mesh, double longestMm)
    {
        Vec3 size = mesh.Bounds.Size;
        return longestMm / Math.Max(size.X, Math.Max(size.Y, size.Z));
    }

    /// <summary>A mesh scaled to a longest side, cut into layers.</summary>
    public static LayeredPart Cut(Mesh mesh, double longestMm, double layerHeightMm, double rowPitchMm)
    {
        Mesh welded = Welding.Weld(mesh);
        Matrix3 linear = Matrix3.Identity * By(mesh, longestMm);
        return LayeredPart.Cut(welded, MeshTopology.Of(welded), linear, layerHeightMm, rowPitchMm, default);
    }
}
