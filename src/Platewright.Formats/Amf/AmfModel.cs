using Platewright.Geometry;

namespace Platewright.Formats.Amf;

/// <summary>An AMF text as its XML says it, in its own unit.</summary>
internal sealed class AmfModel
{
    /// <summary>Null where the file states none.</summary>
    public LengthUnit? Unit { get; set; }

    public Dictionary<string, AmfObject> Objects { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, AmfConstellation> Constellations { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, AmfMaterial> Materials { get; } = new(StringComparer.Ordinal);

    public Dictionary<string, string> Metadata { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Normals and edges that make triangles curved.</summary>
    public int CurvedTriangles { get; set; }
}

/// <param name="Colour">#RRGGBB of the object as a whole; null where it has none.</param>
/// <param name="Volumes">In the order of the file.</param>
internal sealed record AmfObject(
    string Id, string? Name, string? Colour, Mesh? Mesh, IReadOnlyList<AmfVolume> Volumes, string Place);

/// <summary>A region of an object of one material.</summary>
internal sealed record AmfVolume(string? MaterialId, string? Colour, int Triangles);

internal sealed record AmfMaterial(string? Name, string? Colour);

internal sealed record AmfConstellation(string Id, string? Name, IReadOnlyList<AmfInstance> Instances, string Place);

/// <summary>An object or constellation put somewhere: turned about x, then y, then z (degrees), then moved.</summary>
internal sealed record AmfInstance(string TargetId, Vec3 Degrees, Vec3 Offset, string Place)
{
    public Rotation Rotation =>
        Turn(Vec3.UnitZ, Degrees.Z) * Turn(Vec3.UnitY, Degrees.Y) * Turn(Vec3.UnitX, Degrees.X);

    private static Rotation Turn(Vec3 axis, double degrees) => Rotation.About(axis, degrees * Math.PI / 180);
}
