using System.Buffers.Binary;
using System.IO.Compression;

namespace Platewright.Study.Pictures;

/// <summary>Writes 8-bit grey-with-opacity PNG (ISO/IEC 15948: colour type 4, no filter: few greys pack best that way).</summary>
internal static class PngWriter
{
    private const int BytesPerPixel = 2;
    private const byte FilterNone = 0;

    private static readonly uint[] CrcTable = MakeCrcTable();

    /// <param name="pixels">Grey and opacity for each pixel, row by row from the top.</param>
    public static byte[] GreyWithOpacity(int width, int height, ReadOnlySpan<byte> pixels)
    {
        if (pixels.Length != width * height * BytesPerPixel)
            throw new ArgumentException($"Expected {width * height * BytesPerPixel} bytes of pixels, got {pixels.Length}.", nameof(pixels));
        using var png = new MemoryStream();
        png.Write([0x89, (byte)'P', (byte)'N', (byte)'G', (byte)'\r', (byte)'\n', 0x1A, (byte)'\n']);
        Span<byte> header = stackalloc byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header[4..], height);
        header[8] = 8;
        header[9] = 4;
        WriteChunk(png, "IHDR"u8, header);
        WriteChunk(png, "IDAT"u8, Compress(width, height, pixels));
        WriteChunk(png, "IEND"u8, []);
        return png.ToArray();
    }

    private static byte[] Compress(int width, int height, ReadOnlySpan<byte> pixels)
    {
        int stride = width * BytesPerPixel;
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
        {
            for (int y = 0; y < height; y++)
            {
                zlib.WriteByte(FilterNone);
                zlib.Write(pixels.Slice(y * stride, stride));
            }
        }
        return packed.ToArray();
    }

    private static void WriteChunk(Stream png, ReadOnlySpan<byte> type, ReadOnlySpan<byte> data)
    {
        Span<byte> number = stackalloc byte[4];
        BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
        png.Write(number);
        png.Write(type);
        png.Write(data);
        uint crc = ~Crc(Crc(uint.MaxValue, type), data);
        BinaryPrimitives.WriteUInt32BigEndian(number, crc);
        png.Write(number);
    }

    private static uint Crc(uint crc, ReadOnlySpan<byte> data)
    {
        foreach (byte b in data) crc = CrcTable[(byte)(crc ^ b)] ^ (crc >> 8);
        return crc;
    }

    private static uint[] MakeCrcTable()
    {
        var table = new uint[256];
        for (uint n = 0; n < 256; n++)
        {
            uint c = n;
            for (int bit = 0; bit < 8; bit++) c = (c & 1) != 0 ? 0xEDB88320 ^ (c >> 1) : c >> 1;
            table[n] = c;
        }
        return table;
    }
}
