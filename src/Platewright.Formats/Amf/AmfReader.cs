using Platewright.Formats.Packs;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Amf;

/// <summary>
/// AMF (ISO/ASTM 52915), plain or zipped. Objects in no constellation are parts where they are drawn; a constellation
/// that lies in no other is the plate, and each of its instances is a part. Curved triangles are read as flat ones.
/// </summary>
internal static class AmfReader
{
    public static ModelFile Read(ReadOnlyMemory<byte> bytes, ReadRequest request, UnpackBudget budget)
    {
        AmfModel model = ZipPack.IsZip(bytes.Span)
            ? ReadZipped(bytes, request, budget)
            : AmfParser.Parse(bytes, null, request);
        (LengthUnit unit, UnitSource source) = request.UnitOr(model.Unit);
        var notes = new NoteList();
        if (model.CurvedTriangles > 0)
            notes.Add(
                "curves_flattened", $"{model.CurvedTriangles} vertices or edges are curved and were read as flat.");
        List<ModelPart> parts = new AmfPlacing(model, request, notes).Parts(unit.ToMillimetres());
        if (parts.Count == 0) throw request.RefuseEmpty();
        return new ModelFile
        {
            File = request.File,
            Format = ModelFormat.Amf,
            Unit = unit,
            UnitSource = source,
            Parts = parts,
            Origin = new ModelOrigin(
                model.Metadata.GetValueOrDefault("name"),
                model.Metadata.GetValueOrDefault("author"),
                model.Metadata.GetValueOrDefault("license"),
                model.Metadata.GetValueOrDefault("copyright")),
            Notes = notes.Notes,
        };
    }

    private static AmfModel ReadZipped(ReadOnlyMemory<byte> bytes, ReadRequest request, UnpackBudget budget)
    {
        using ZipPack pack = ZipPack.Open(bytes, request, budget);
        ZipPackEntry[] entries = pack.Entries
            .Where(e => e.Name.EndsWith(".amf", StringComparison.OrdinalIgnoreCase))
            .ToArray();
        if (entries.Length == 0 && pack.Entries.Count == 1) entries = [pack.Entries[0]];
        return entries is [ZipPackEntry only]
            ? AmfParser.Parse(pack.UnpackPart(only), only.Name, request)
            : throw request.Refuse(
                null, $"the archive holds {entries.Length} AMF texts where it should hold one", "rename it to .zip");
    }
}
