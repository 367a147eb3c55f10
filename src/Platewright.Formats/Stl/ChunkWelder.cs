using System.Buffers.Binary;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Stl;

/// <summary>One thread's workplace for welding chunks of a binary STL file, used again for every chunk.</summary>
internal sealed class ChunkWelder(int chunkFacets)
{
    /// <summary>A facet's normal comes first; it is not used, the corners say it better.</summary>
    private const int NormalBytes = 12;

    private const uint MinusZero = 0x8000_0000;

    private readonly byte[] _facets = GC.AllocateUninitializedArray<byte>(chunkFacets * BinaryStl.FacetBytes);
    private readonly PositionTable _table = new(3 * chunkFacets);

    /// <summary>Fills in the corners, counted within the chunk, and returns the chunk's distinct positions.</summary>
    public FloatPosition[] Weld(ModelBytes bytes, int firstFacet, Span<int> corners, ReadRequest request)
    {
        int count = corners.Length / 3;
        Span<byte> facets = _facets.AsSpan(0, count * BinaryStl.FacetBytes);
        long offset = BinaryStl.SizeOf((uint)firstFacet);
        bytes.ReadAt(offset, facets, request);
        _table.Clear();
        for (int f = 0; f < count; f++)
        {
            ReadOnlySpan<byte> facet = facets.Slice(f * BinaryStl.FacetBytes, BinaryStl.FacetBytes);
            for (int k = 0; k < 3; k++)
            {
                ReadOnlySpan<byte> corner = facet.Slice(NormalBytes + 12 * k, 12);
                var position = new FloatPosition(Bits(corner), Bits(corner[4..]), Bits(corner[8..]));
                if (!position.IsFinite)
                {
                    throw request.Refuse(
                        $"byte {offset + f * BinaryStl.FacetBytes + NormalBytes + 12 * k}",
                        $"a corner of triangle {firstFacet + f + 1} is not a number");
                }
                corners[3 * f + k] = _table.PlaceOf(position);
            }
        }
        return _table.Positions.ToArray();
    }

    private static uint Bits(ReadOnlySpan<byte> number)
    {
        uint bits = BinaryPrimitives.ReadUInt32LittleEndian(number);
        return bits == MinusZero ? 0 : bits;
    }
}
