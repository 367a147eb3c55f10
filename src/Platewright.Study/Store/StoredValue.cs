using System.IO.Compression;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;

namespace Platewright.Study.Store;

/// <summary>How a result becomes bytes and back: JSON, compressed where that makes it shorter, checked on the way back.</summary>
internal static class StoredValue
{
    // The first byte says how the rest is held.
    private const byte Plain = 0;
    private const byte Compressed = 1;
    private const int WorthCompressingBytes = 512;

    public static byte[] Pack<T>(T value, JsonTypeInfo<T> type)
    {
        byte[] json = JsonSerializer.SerializeToUtf8Bytes(value, type);
        using var packed = new MemoryStream();
        if (json.Length < WorthCompressingBytes)
        {
            packed.WriteByte(Plain);
            packed.Write(json);
            return packed.ToArray();
        }
        packed.WriteByte(Compressed);
        using (var zip = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true)) zip.Write(json);
        return packed.ToArray();
    }

    /// <exception cref="StoreException">The bytes are not what <see cref="Pack"/> wrote.</exception>
    public static T Unpack<T>(byte[] bytes, JsonTypeInfo<T> type)
    {
        try
        {
            using var packed = new MemoryStream(bytes);
            Stream json = packed.ReadByte() == Compressed ? new ZLibStream(packed, CompressionMode.Decompress) : packed;
            using (json)
            {
                return JsonSerializer.Deserialize(json, type) ?? throw new InvalidDataException("it is empty");
            }
        }
        catch (Exception e) when (e is InvalidDataException or JsonException or NotSupportedException)
        {
            throw new StoreException(
                $"The store holds a damaged result ({e.Message.TrimEnd('.')}); delete the store or name another folder " +
                "with --store: it holds only results that can be computed again.", e);
        }
    }
}
