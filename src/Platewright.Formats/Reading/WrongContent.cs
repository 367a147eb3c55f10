using System.Text;
using Platewright.Formats.Packs;

namespace Platewright.Formats.Reading;

/// <summary>Common mistakes that make a file something else than its name says, told by how it begins.</summary>
internal static class WrongContent
{
    private const int SampleBytes = 64;

    public static void Check(ModelBytes bytes, ReadRequest request)
    {
        Span<byte> start = stackalloc byte[(int)Math.Min(SampleBytes, bytes.Length)];
        bytes.ReadAt(0, start, request);
        string extension = Path.GetExtension(request.File).ToLowerInvariant();
        if (start.StartsWith("version https://git-lfs"u8))
            throw request.Refuse(
                "line 1", "it is a pointer to a file in large file storage, not the file", "fetch the real file");
        if (extension is ".stl" or ".obj" or ".ply" && ZipPack.IsZip(start))
            throw request.Refuse("byte 0", "it is a zip archive", "rename it to .zip, or to .3mf or .amf if it is one");
        string text = Encoding.ASCII.GetString(start).TrimStart('?', ' ', '\t', '\r', '\n');
        if (text.StartsWith("<!DOCTYPE html", StringComparison.OrdinalIgnoreCase)
            || text.StartsWith("<html", StringComparison.OrdinalIgnoreCase))
        {
            throw request.Refuse("byte 0", "it is a web page, not a model", "download the file itself");
        }
    }
}
