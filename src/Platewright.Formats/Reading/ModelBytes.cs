using Microsoft.Win32.SafeHandles;

namespace Platewright.Formats.Reading;

/// <summary>The bytes of a model: a file on disk read at any place, or memory.</summary>
internal sealed class ModelBytes : IDisposable
{
    private readonly SafeFileHandle? _handle;
    private readonly ReadOnlyMemory<byte> _memory;

    private ModelBytes(SafeFileHandle handle, long length) => (_handle, Length) = (handle, length);

    public ModelBytes(ReadOnlyMemory<byte> memory) => (_memory, Length) = (memory, memory.Length);

    public long Length { get; }

    /// <exception cref="ModelFileException">The file is absent, empty, too large or may not be read.</exception>
    public static ModelBytes Open(string path, ReadRequest request)
    {
        try
        {
            // The length is asked before opening: a pipe or device has none, and opening it could wait for ever.
            var info = new FileInfo(path);
            if (!info.Exists) throw request.Refuse(null, "there is no such file", "check the name");
            if (info.ResolveLinkTarget(returnFinalTarget: true) is FileInfo target) info = target;
            CheckLength(info.Length, request);
            SafeFileHandle handle = File.OpenHandle(info.FullName, options: FileOptions.SequentialScan);
            try
            {
                CheckLength(RandomAccess.GetLength(handle), request);
                return new ModelBytes(handle, RandomAccess.GetLength(handle));
            }
            catch
            {
                handle.Dispose();
                throw;
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw request.Refuse(null, $"it cannot be opened ({Reason(e)})", "check that it may be read");
        }
    }

    private static string Reason(Exception e) =>
        e is UnauthorizedAccessException ? "no permission" : "the disk reports an error";

    private static void CheckLength(long length, ReadRequest request)
    {
        if (length == 0) throw request.Refuse(null, "it is empty");
        if (length > request.Limits.FileBytes)
            throw request.Refuse(
                null, $"it is larger than {request.Limits.FileBytes} bytes", "raise the file size limit");
    }

    /// <summary>Fills the span with the bytes from the offset on.</summary>
    /// <exception cref="ModelFileException">The bytes are not there, though the length promised them.</exception>
    public void ReadAt(long offset, Span<byte> into, ReadRequest request)
    {
        if (_handle is null)
        {
            _memory.Span.Slice(checked((int)offset), into.Length).CopyTo(into);
            return;
        }
        try
        {
            while (into.Length > 0)
            {
                int got = RandomAccess.Read(_handle, into, offset);
                if (got == 0)
                    throw request.Refuse($"byte {offset}", "it became shorter while it was read", "read it again");
                into = into[got..];
                offset += got;
            }
        }
        catch (IOException)
        {
            throw request.Refuse($"byte {offset}", "the disk reports an error", "copy it to another disk");
        }
    }

    /// <summary>Every byte, in memory.</summary>
    public ReadOnlyMemory<byte> All(ReadRequest request)
    {
        if (_handle is null) return _memory;
        if (Length > Array.MaxLength)
            throw request.Refuse(null, $"text of more than {Array.MaxLength} bytes cannot be read", "split it");
        byte[] all = GC.AllocateUninitializedArray<byte>((int)Length);
        ReadAt(0, all, request);
        return all;
    }

    public void Dispose() => _handle?.Dispose();
}
