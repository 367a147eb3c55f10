using System.Collections.Immutable;

namespace Platewright.Formats.Toml;

/// <summary>One thing wrong in what a user wrote.</summary>
/// <param name="Message">What was wrong and what was expected.</param>
/// <param name="File">The file, null for an argument of the command line.</param>
/// <param name="Line">Line counted from 1, null where the error is about no line.</param>
/// <param name="Key">The dotted key or the name of the argument; null where the error is about none.</param>
public sealed record DescriptionError(string Message, string? File = null, int? Line = null, string? Key = null)
{
    /// <summary>For an unknown key: the keys known at that place, in alphabetical order.</summary>
    public ImmutableArray<string> KnownKeys { get; init; } = [];

    public static DescriptionError At(TomlPlace place, string message) =>
        new(message, place.File, place.Line, place.Key.Length == 0 ? null : place.Key);

    /// <summary>The place, then the message: <c>probe.toml, line 4, build_volume.shape: …</c></summary>
    public override string ToString()
    {
        string?[] place = [File, Line is { } line ? $"line {line}" : null, Key];
        string where = string.Join(", ", place.Where(p => !string.IsNullOrEmpty(p)));
        return where.Length == 0 ? Message : $"{where}: {Message}";
    }
}
