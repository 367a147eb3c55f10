using System.Runtime.InteropServices;
using System.Security.Cryptography;
using Platewright.Geometry;

namespace Platewright.Study.Examining;

/// <summary>All that later stages need of a part, without its mesh.</summary>
public sealed record ExaminedPart
{
    /// <summary>The file it came from, as shown to the user.</summary>
    public required string File { get; init; }

    /// <summary>Name of the object inside a file of several; null where the file is one part.</summary>
    public string? Object { get; init; }

    /// <summary>stl, obj, ply, 3mf or amf.</summary>
    public required string Format { get; init; }

    /// <summary>Symbol of the unit its numbers were taken in.</summary>
    public required string Unit { get; init; }

    /// <summary>Material and colour in the file's own words, null where it does not say.</summary>
    public string? Material { get; init; }

    public string? Colour { get; init; }

    /// <summary>Who made the model and under which terms, as <see cref="OriginText"/> leaves the file's words; null where it does not say.</summary>
    public string? MadeBy { get; init; }

    public string? Licence { get; init; }

    public required int Triangles { get; init; }

    public required int Vertices { get; init; }

    public required int Shells { get; init; }

    public required bool Closed { get; init; }

    /// <summary>Null where the mesh is not closed.</summary>
    public double? VolumeMm3 { get; init; }

    public required double AreaMm2 { get; init; }

    public required Bounds3 Bounds { get; init; }

    public required double HullVolumeMm3 { get; init; }

    /// <summary>Edges of the smallest box around it in any pose, mm, largest first.</summary>
    public required IReadOnlyList<double> TightestBoxMm { get; init; }

    public double? ThinnestWallMm { get; init; }

    public required IReadOnlyList<Finding> Findings { get; init; }

    /// <summary>Content hash of its mesh: equal meshes share their estimates, whatever file they lie in.</summary>
    public required string MeshKey { get; init; }

    /// <summary>What tells whether another part is the same shape; null where the mesh has no area.</summary>
    public ShapeSignature? Signature { get; init; }

    /// <summary>Null where nobody wants to look at it.</summary>
    public PartLook? Look { get; init; }

    /// <summary>Corners of its convex hull: x, y, z as little-endian float64.</summary>
    public required byte[] Hull { get; init; }

    /// <summary>Content hash of the hull: equal shapes share their fits, whatever file they lie in.</summary>
    public string ShapeKey => KeyOf(Hull);

    /// <summary>The hull, built anew.</summary>
    public ConvexHull ToHull() => HullOf(Hull);

    public static ConvexHull HullOf(byte[] packed) => ConvexHull.Of(MemoryMarshal.Cast<byte, Vec3>(packed));

    public static byte[] Packed(ConvexHull hull) => MemoryMarshal.AsBytes(hull.Vertices).ToArray();

    public static string KeyOf(Mesh mesh)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(MemoryMarshal.AsBytes(mesh.Vertices));
        hash.AppendData(MemoryMarshal.AsBytes(mesh.Corners));
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    public static string KeyOf(byte[] hull) => Convert.ToHexStringLower(SHA256.HashData(hull));
}
