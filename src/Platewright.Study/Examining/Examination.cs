using Platewright.Formats;

namespace Platewright.Study.Examining;

/// <summary>What came of reading and examining one file or pack: every part that can be used, every file that cannot.</summary>
public sealed record Examination(IReadOnlyList<ExaminedPart> Parts, IReadOnlyList<UnusableFile> Unusable)
{
    // Stands for the file's name in what is kept, so that a moved or renamed file is known again. A private-use letter of
    // Unicode: it appears in no name that people give.
    internal const string NamePlaceholder = "\uE0F1";

    /// <summary>The same with the placeholder replaced by the name to show.</summary>
    internal Examination Named(string name) => new(
        [.. Parts.Select(p => p with { File = Replace(p.File, name) })],
        [.. Unusable.Select(u => new UnusableFile(Replace(u.File, name), u.Place, Replace(u.Message, name)))]);

    private static string Replace(string text, string name) =>
        text.Replace(NamePlaceholder, name, StringComparison.Ordinal);
}
