using System.Buffers.Binary;
using Platewright.Geometry;

namespace Platewright.Formats.Stl;

/// <summary>Writes binary STL, mm.</summary>
public static class StlWriter
{
    private const int FacetsPerBlock = 1024;

    /// <summary>Does not begin with "solid", so that no reader takes the file for text.</summary>
    private static ReadOnlySpan<byte> Header => "Binary STL, lengths in mm"u8;

    /// <summary>Writes every triangle with its unit normal (0 0 0 where it has no area).</summary>
    /// <exception cref="ArgumentOutOfRangeException">A coordinate is beyond the range of single precision, ±3.4e38
    /// mm.</exception>
    public static void Write(Stream stream, Mesh mesh)
    {
        Span<byte> head = stackalloc byte[BinaryStl.HeaderBytes];
        head.Clear();
        Header.CopyTo(head);
        BinaryPrimitives.WriteUInt32LittleEndian(head[BinaryStl.CountOffset..], (uint)mesh.TriangleCount);
        stream.Write(head);

        byte[] block = new byte[FacetsPerBlock * BinaryStl.FacetBytes];
        int filled = 0;
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            WriteFacet(block.AsSpan(filled, BinaryStl.FacetBytes), mesh.Triangle(t), t);
            filled += BinaryStl.FacetBytes;
            if (filled < block.Length) continue;
            stream.Write(block);
            filled = 0;
        }
        stream.Write(block, 0, filled);
    }

    private static void WriteFacet(Span<byte> facet, (Vec3 A, Vec3 B, Vec3 C) triangle, int index)
    {
        Vec3 cross = (triangle.B - triangle.A).Cross(triangle.C - triangle.A);
        Vec3 normal = cross.Length > 0 && cross.IsFinite ? cross.Normalized() : default;
        WriteVector(facet, normal, index);
        WriteVector(facet[12..], triangle.A, index);
        WriteVector(facet[24..], triangle.B, index);
        WriteVector(facet[36..], triangle.C, index);
        facet[48..].Clear();
    }

    private static void WriteVector(Span<byte> bytes, Vec3 v, int index)
    {
        WriteNumber(bytes, v.X, index);
        WriteNumber(bytes[4..], v.Y, index);
        WriteNumber(bytes[8..], v.Z, index);
    }

    private static void WriteNumber(Span<byte> bytes, double number, int index)
    {
        float single = (float)number;
        if (!float.IsFinite(single))
        {
            throw new ArgumentOutOfRangeException(
                nameof(number), number, $"Triangle {index} has a coordinate beyond ±{float.MaxValue} mm.");
        }
        BinaryPrimitives.WriteSingleLittleEndian(bytes, single);
    }
}
