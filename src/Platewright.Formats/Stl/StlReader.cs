using System.Buffers.Binary;
using Platewright.Formats.Reading;
using Platewright.Geometry;

namespace Platewright.Formats.Stl;

/// <summary>
/// STL, binary or ASCII. The first word decides nothing, because binary files begin with "solid" too: a size that
/// agrees with the count of facets makes the file binary, otherwise text that speaks of facets makes it ASCII.
/// </summary>
internal static class StlReader
{
    private const int SampleBytes = 4096;

    public static ModelFile Read(ModelBytes bytes, ReadRequest request)
    {
        (LengthUnit unit, UnitSource source) = request.UnitOr(stated: null);
        var notes = new List<ModelNote>();
        Mesh mesh = IsAscii(bytes, request)
            ? AsciiStl.Read(bytes.All(request), unit.ToMillimetres(), request, notes)
            : BinaryStl.Read(bytes, FacetCount(bytes, request, notes), unit.ToMillimetres(), request);
        return new ModelFile
        {
            File = request.File,
            Format = ModelFormat.Stl,
            Unit = unit,
            UnitSource = source,
            Parts = [new ModelPart { Mesh = mesh }],
            Notes = notes,
        };
    }

    private static bool IsAscii(ModelBytes bytes, ReadRequest request)
    {
        if (bytes.Length >= BinaryStl.HeaderBytes && bytes.Length == BinaryStl.SizeOf(PromisedFacets(bytes, request)))
            return false;
        Span<byte> sample = stackalloc byte[(int)Math.Min(bytes.Length, SampleBytes)];
        bytes.ReadAt(0, sample, request);
        return AsciiStl.LooksLike(sample);
    }

    /// <summary>Whether the start holds a byte 0, as every count of facets below 16 million does and no text.</summary>
    private static bool HoldsZero(ModelBytes bytes, ReadRequest request)
    {
        Span<byte> sample = stackalloc byte[(int)Math.Min(bytes.Length, SampleBytes)];
        bytes.ReadAt(0, sample, request);
        return sample.Contains((byte)0);
    }

    private static uint PromisedFacets(ModelBytes bytes, ReadRequest request)
    {
        Span<byte> count = stackalloc byte[sizeof(uint)];
        bytes.ReadAt(BinaryStl.CountOffset, count, request);
        return BinaryPrimitives.ReadUInt32LittleEndian(count);
    }

    /// <summary>The count of facets, which the size of the file must bear out.</summary>
    private static int FacetCount(ModelBytes bytes, ReadRequest request, List<ModelNote> notes)
    {
        const string place = "byte 80";
        if (bytes.Length < BinaryStl.HeaderBytes)
            throw request.Refuse(null, $"{bytes.Length} bytes are too few for an STL file", ReadRequest.ExportAgain);
        uint promised = PromisedFacets(bytes, request);
        long held = (bytes.Length - BinaryStl.HeaderBytes) / BinaryStl.FacetBytes;
        if (promised > held && !HoldsZero(bytes, request))
            throw request.Refuse(null, "it is text, but not that of an STL file");
        if (promised > held)
            throw request.Refuse(place, $"the header promises {promised} triangles but the file ends after {held}");
        request.CheckTriangles(promised, place);
        long over = bytes.Length - BinaryStl.SizeOf(promised);
        if (promised == 0 && over > 0 && held > 0)
            throw request.Refuse(place, $"the header promises no triangles but {over} bytes follow it");
        if (promised == 0) throw request.RefuseEmpty();
        if (over > 0 && over % BinaryStl.FacetBytes == 0)
            throw request.Refuse(place, $"the header promises {promised} triangles but the file holds {held}");
        if (over > 0)
            notes.Add(new ModelNote("trailing_bytes", $"{over} bytes after the last triangle were passed over."));
        return (int)promised;
    }
}
