using Platewright.Formats.Reading;

namespace Platewright.Formats.Packs;

/// <summary>
/// A zip pack of models: every model in it is a file of its own, and a bad one does not spoil the others.
/// </summary>
internal static class PackReader
{
    public static ModelReading Read(ReadOnlyMemory<byte> bytes, ReadRequest request, UnpackBudget budget, int depth)
    {
        if (depth > request.Limits.ArchiveDepth)
        {
            throw request.Refuse(
                null, $"archives lie more than {request.Limits.ArchiveDepth} deep", "unpack it or raise the limit");
        }
        if (!ZipPack.IsZip(bytes.Span)) throw request.Refuse("byte 0", "it is not a zip archive");
        using ZipPack pack = ZipPack.Open(bytes, request, budget);
        var files = new List<ModelFile>();
        var unusable = new List<UnusableFile>();
        foreach (ZipPackEntry entry in pack.Entries.Where(e => ModelFolder.IsModelName(e.Name)))
        {
            request.Cancel.ThrowIfCancellationRequested();
            ModelReading reading = ReadEntry(
                pack, entry, request with { File = $"{request.File}/{Printable.OneLine(entry.Name)}" }, budget, depth);
            files.AddRange(reading.Files);
            unusable.AddRange(reading.Unusable);
        }
        if (files.Count == 0 && unusable.Count == 0)
            throw request.Refuse(
                null, "the archive holds no model files", $"put files of {ModelFolder.KnownExtensions} in it");
        return new ModelReading(files, unusable);
    }

    private static ModelReading ReadEntry(
        ZipPack pack, ZipPackEntry entry, ReadRequest request, UnpackBudget budget, int depth)
    {
        try
        {
            using var bytes = new ModelBytes(pack.Unpack(entry, request));
            return ModelReader.ReadKnown(bytes, request, budget, depth);
        }
        catch (ModelFileException e)
        {
            return new ModelReading([], [e.ToUnusable()]);
        }
    }
}
