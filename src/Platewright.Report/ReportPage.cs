using System.Text.Json;
using Platewright.Study.Documents;

namespace Platewright.Report;

/// <summary>The one self-contained HTML page: the bundle built from web/ with a study inside it.</summary>
public static class ReportPage
{
    private const string ResourceName = "Platewright.Report.page.html";
    private const string Placeholder = "\"the study goes here\"";

    /// <summary>The page as text. It needs no network and no file beside it.</summary>
    public static string Render(StudyDocument study)
    {
        string bundle = ReadBundle();
        int at = bundle.IndexOf(Placeholder, StringComparison.Ordinal);
        if (at < 0) throw new InvalidOperationException($"Bug in Platewright: the page has no place for {Placeholder}.");
        string json = JsonForHtml(JsonSerializer.Serialize(study, PageJson.Options));
        return string.Concat(bundle.AsSpan(0, at), json, bundle.AsSpan(at + Placeholder.Length));
    }

    /// <summary>
    /// JSON that may stand inside a script element: without <c>&lt;</c> nothing in it can end the element or open a
    /// comment, and the two line separators that old script readers trip over are escaped. Outside strings JSON has none
    /// of these characters, so the value stays the same.
    /// </summary>
    public static string JsonForHtml(string json) => json
        .Replace("<", "\\u003C", StringComparison.Ordinal)
        .Replace("\u2028", "\\u2028", StringComparison.Ordinal)
        .Replace("\u2029", "\\u2029", StringComparison.Ordinal);

    internal static string ReadBundle()
    {
        using Stream stream = typeof(ReportPage).Assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException("Bug in Platewright: the page was not built into the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
