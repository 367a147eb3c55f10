namespace Platewright.Formats.Toml;

/// <summary>Where something stands in a TOML file.</summary>
/// <param name="File">The file as the user named it.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Key">
/// Dotted key with list positions counted from 1, as <c>project[2].part[1].file</c>; empty for the file itself.
/// </param>
public sealed record TomlPlace(string File, int Line, string Key)
{
    public override string ToString() => Key.Length == 0 ? $"{File}, line {Line}" : $"{File}, line {Line}, {Key}";
}
