namespace Platewright.Formats;

/// <summary>
/// How much a model file may ask of the reader before it is refused with a sentence. The defaults are generous for
/// parts that are printed and small enough for a desktop computer; every one of them is the user's to raise.
/// </summary>
public sealed record ReadLimits
{
    public static readonly ReadLimits Default = new();

    /// <summary>Greatest size of a file on disk, bytes. Default 1 GiB.</summary>
    public long FileBytes { get; init; } = 1L << 30;

    /// <summary>
    /// Most triangles in one file, all built instances counted. Default 20 million, at most 100 million.
    /// </summary>
    public int Triangles { get; init; } = 20_000_000;

    /// <summary>Greatest size of everything unpacked from one archive, bytes. Default 1 GiB.</summary>
    public long UnpackedBytes { get; init; } = 1L << 30;

    /// <summary>
    /// Greatest ratio of unpacked to packed bytes of one archive entry. Default 250: meshes as text pack about 4 to 40
    /// times, a file made to exhaust memory about 1,000 times. Entries of less than 1 MiB are not held to it.
    /// </summary>
    public double CompressionRatio { get; init; } = 250;

    /// <summary>Most files in one archive. Default 20,000.</summary>
    public int ArchiveEntries { get; init; } = 20_000;

    /// <summary>How deep archives may lie in archives; 1 is a plain pack of models. Default 3.</summary>
    public int ArchiveDepth { get; init; } = 3;

    /// <summary>How deep components of a model may lie in components, at most 1000. Default 32.</summary>
    public int ComponentDepth { get; init; } = 32;
}
