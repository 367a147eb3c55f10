using System.IO.Compression;
using System.IO.Hashing;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Packs;

/// <summary>A zip archive that nobody vouches for, held to the limits and to its own checksums.</summary>
internal sealed class ZipPack : IDisposable
{
    /// <summary>Entries smaller than this may be packed as tightly as they like.</summary>
    private const long SmallBytes = 1 << 20;

    private const int FirstBuffer = 1 << 16;

    private readonly ZipArchive _archive;
    private readonly ReadRequest _request;
    private readonly UnpackBudget _budget;
    private readonly long _archiveBytes;

    private ZipPack(ZipArchive archive, long archiveBytes, ReadRequest request, UnpackBudget budget)
    {
        _archive = archive;
        _archiveBytes = archiveBytes;
        _request = request;
        _budget = budget;
        Entries = archive.Entries.Where(e => !e.FullName.EndsWith('/') && !e.FullName.EndsWith('\\'))
            .Select(e => new ZipPackEntry(e, e.FullName.Replace('\\', '/').TrimStart('/')))
            .OrderBy(e => e.Name, StringComparer.Ordinal)
            .ToArray();
    }

    /// <summary>The files in it, by name.</summary>
    public IReadOnlyList<ZipPackEntry> Entries { get; }

    /// <summary>Whether the bytes begin as a zip archive does.</summary>
    public static bool IsZip(ReadOnlySpan<byte> start) =>
        start.StartsWith("PK\x03\x04"u8) || start.StartsWith("PK\x05\x06"u8);

    public static ZipPack Open(ReadOnlyMemory<byte> bytes, ReadRequest request, UnpackBudget budget)
    {
        // Every entry costs memory before it can be counted, so its signatures are counted first.
        if (bytes.Span.Count("PK\x01\x02"u8) > request.Limits.ArchiveEntries)
        {
            throw request.Refuse(
                null, $"it holds more than {request.Limits.ArchiveEntries} files", "split it or raise the limit");
        }
        return Guarded(request, null, () =>
        {
            System.Runtime.InteropServices.MemoryMarshal.TryGetArray(bytes, out ArraySegment<byte> array);
            var stream = new MemoryStream(array.Array ?? bytes.ToArray(), array.Offset, bytes.Length, writable: false);
            return new ZipPack(new ZipArchive(stream, ZipArchiveMode.Read), bytes.Length, request, budget);
        });
    }

    /// <summary>The entry with that name, upper and lower case taken for equal; null where there is none.</summary>
    public ZipPackEntry? Find(string name) =>
        Entries.FirstOrDefault(e => e.Name.Equals(name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Everything in the entry, unpacked and checked; for a part of one file.</summary>
    public byte[] UnpackPart(ZipPackEntry entry) => Unpack(entry, _request, entry.Name);

    /// <summary>Everything in the entry, unpacked and checked; for an entry that is a file of its own.</summary>
    /// <param name="request">What that file is read under.</param>
    public byte[] Unpack(ZipPackEntry entry, ReadRequest request) => Unpack(entry, request, null);

    public void Dispose() => _archive.Dispose();

    private byte[] Unpack(ZipPackEntry entry, ReadRequest request, string? place)
    {
        if (entry.Entry.IsEncrypted)
            throw request.Refuse(place, "it is encrypted", "unpack it with its password first");
        return Guarded(request, place, () =>
        {
            using Stream unpacking = entry.Entry.Open();
            byte[] bytes = ReadAll(unpacking, entry.Entry, request, place);
            _budget.Spend(bytes.Length);
            if (bytes.Length != entry.Entry.Length || Crc32.HashToUInt32(bytes) != entry.Entry.Crc32)
                throw request.Refuse(
                    place, "the bytes do not agree with the archive's checksum", "download or pack it again");
            return bytes;
        });
    }

    private byte[] ReadAll(Stream unpacking, ZipArchiveEntry entry, ReadRequest request, string? place)
    {
        long packed = Math.Min(entry.CompressedLength, _archiveBytes);
        double byRatio = Math.Max(SmallBytes, packed * request.Limits.CompressionRatio);
        // The stated length is believed only as far as the packed bytes make it likely.
        long first = Math.Min(Math.Max(entry.Length, 0) + 1, Math.Max(FirstBuffer, packed * 4));
        byte[] buffer = new byte[Math.Min(first, Array.MaxLength)];
        int length = 0;
        while (true)
        {
            request.Cancel.ThrowIfCancellationRequested();
            int got = unpacking.Read(buffer, length, buffer.Length - length);
            if (got == 0) break;
            length += got;
            if (length > _budget.Left)
            {
                throw request.Refuse(
                    place, $"the archive unpacks to more than {request.Limits.UnpackedBytes} bytes", "raise the limit");
            }
            if (length > byRatio)
            {
                throw request.Refuse(
                    place, $"it unpacks to more than {request.Limits.CompressionRatio} times its packed size",
                    "do not trust the file, or raise the limit");
            }
            if (length == buffer.Length) Array.Resize(ref buffer, (int)Math.Min(2L * length, Array.MaxLength));
            if (length == buffer.Length)
                throw request.Refuse(place, $"it unpacks to more than {length} bytes", "split it");
        }
        Array.Resize(ref buffer, length);
        return buffer;
    }

    /// <summary>What the archive code throws at damaged archives, as a sentence.</summary>
    private static T Guarded<T>(ReadRequest request, string? place, Func<T> read)
    {
        try
        {
            return read();
        }
        catch (Exception e) when (
            e is InvalidDataException or IOException or NotSupportedException or ArgumentException or OverflowException)
        {
            throw request.Refuse(place, "the archive is damaged", "download or pack it again");
        }
    }
}

/// <summary>A file in an archive.</summary>
/// <param name="Name">With forward slashes, not beginning with one.</param>
internal sealed record ZipPackEntry(ZipArchiveEntry Entry, string Name);
