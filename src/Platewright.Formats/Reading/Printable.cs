namespace Platewright.Formats.Reading;

/// <summary>Words of files we do not know, made fit to be shown.</summary>
internal static class Printable
{
    /// <summary>The text with a question mark for each control character, line ends included.</summary>
    public static string OneLine(string text) =>
        text.Any(char.IsControl) ? new string(text.Select(c => char.IsControl(c) ? '?' : c).ToArray()) : text;
}
