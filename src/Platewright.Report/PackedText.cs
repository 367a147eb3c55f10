using System.IO.Compression;

namespace Platewright.Report;

/// <summary>Bytes as text that may stand in any element: gzip (RFC 1952), then base64 (RFC 4648).</summary>
internal static class PackedText
{
    public static string Of(ReadOnlySpan<byte> bytes)
    {
        using var packed = new MemoryStream();
        using (var gzip = new GZipStream(packed, CompressionLevel.Optimal, leaveOpen: true)) gzip.Write(bytes);
        return Convert.ToBase64String(packed.GetBuffer().AsSpan(0, (int)packed.Length));
    }
}
