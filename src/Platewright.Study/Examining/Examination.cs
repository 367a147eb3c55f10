using Platewright.Formats;

namespace Platewright.Study.Examining;

/// <summary>What came of reading and examining one file or pack: every part that can be used, every file that cannot.</summary>
public sealed record Examination(IReadOnlyList<ExaminedPart> Parts, IReadOnlyList<UnusableFile> Unusable)
{
    /// <summary>
    /// Stands for the file's name in what is kept, so that a moved or renamed file is known again. It ends in the extension, which
    /// decides the format, and has a private-use letter of Unicode, which appears in no name that people give.
    /// </summary>
    internal static string PlaceholderFor(string path) => "\uE0F1" + Path.GetExtension(path).ToLowerInvariant();

    /// <summary>The same with the placeholder of <paramref name="path"/> replaced by the name to show.</summary>
    internal Examination Named(string path, string shownAs)
    {
        string placeholder = PlaceholderFor(path);
        return new Examination(
            [.. Parts.Select(p => p with { File = Named(p.File) })],
            [.. Unusable.Select(u => new UnusableFile(Named(u.File), u.Place, Named(u.Message)))]);

        string Named(string text) => text.Replace(placeholder, shownAs, StringComparison.Ordinal);
    }
}
