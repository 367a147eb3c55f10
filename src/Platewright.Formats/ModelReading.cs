namespace Platewright.Formats;

/// <summary>What came of reading one path: a pack gives several files, and some of each kind.</summary>
/// <param name="Files">The files that can be used, in the order of their names.</param>
/// <param name="Unusable">The files that cannot, in the order of their names.</param>
public sealed record ModelReading(IReadOnlyList<ModelFile> Files, IReadOnlyList<UnusableFile> Unusable);

/// <summary>A file that cannot be used, and why.</summary>
/// <param name="File">The name to show, as in <see cref="ModelFile.File"/>.</param>
/// <param name="Place">Byte, line or element where it goes wrong; null where it is the file as a whole.</param>
/// <param name="Message">One sentence with file, place, what is wrong and what to do.</param>
public sealed record UnusableFile(string File, string? Place, string Message);
