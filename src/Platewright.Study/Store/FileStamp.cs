namespace Platewright.Study.Store;

/// <summary>What a file is recognised by without reading it.</summary>
/// <param name="Path">Full path.</param>
/// <param name="Length">Size, bytes.</param>
/// <param name="ModifiedTicks">Time of its last change, in ticks of 100 ns, UTC.</param>
public readonly record struct FileStamp(string Path, long Length, long ModifiedTicks)
{
    // A file written again within the resolution of the clock that stamps it would keep its stamp.
    private static readonly TimeSpan ClockResolution = TimeSpan.FromSeconds(2);

    /// <exception cref="IOException">The file is not there or may not be looked at.</exception>
    public static FileStamp Of(string path)
    {
        var file = new FileInfo(path);
        return new FileStamp(file.FullName, file.Length, file.LastWriteTimeUtc.Ticks);
    }

    /// <summary>Whether the file has rested long enough for its stamp to tell a later change.</summary>
    public bool IsSettled(DateTime utcNow) => utcNow.Ticks - ModifiedTicks > ClockResolution.Ticks;
}
