using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>A mesh to write into a 3MF file and where it stands there. Items of one mesh share an object.</summary>
/// <param name="Mesh">At least one triangle, mm.</param>
public sealed record BuildItem(Mesh Mesh)
{
    public string? Name { get; init; }

    /// <summary>Name of the material; null for none.</summary>
    public string? Material { get; init; }

    /// <summary>#RRGGBB; null for none. A material without a colour is written grey, because 3MF demands one.</summary>
    public string? Colour { get; init; }

    /// <summary>Applied to the mesh first; not flat.</summary>
    public Matrix3 Linear { get; init; } = Matrix3.Identity;

    /// <summary>Added then, mm.</summary>
    public Vec3 Offset { get; init; }
}
