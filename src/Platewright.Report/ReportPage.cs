using System.Text;
using System.Text.Json;
using Platewright.Study.Documents;

namespace Platewright.Report;

/// <summary>
/// The one self-contained HTML page: the bundle built from web/ with a study inside it. The study lies packed in an element of its
/// own; each model and each picture too, once however many parts look like it, so that the page unpacks only what it shows.
/// </summary>
public static class ReportPage
{
    private const string ResourceName = "Platewright.Report.page.html";
    private const string Placeholder = "<!-- the study goes here -->";

    /// <summary>The page as text. It needs no network and no file beside it.</summary>
    public static string Render(StudyDocument study)
    {
        string bundle = ReadBundle();
        int at = bundle.IndexOf(Placeholder, StringComparison.Ordinal);
        if (at < 0) throw new InvalidOperationException($"Bug in Platewright: the page has no place for {Placeholder}.");
        var page = new StringBuilder();
        page.Append(bundle, 0, at);
        AppendStudy(page, study);
        page.Append(bundle, at + Placeholder.Length, bundle.Length - at - Placeholder.Length);
        return page.ToString();
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

    private static void AppendStudy(StringBuilder page, StudyDocument study)
    {
        Distinct models = new(), pictures = new();
        PageStudy opened = new(
            study with { Parts = [.. study.Parts.Select(p => p with { Model = null, Picture = null })] },
            [.. study.Parts.Select(p => models.NumberOf(p.Model is null ? null : PackedModel.Of(p.Model)))],
            [.. study.Parts.Select(p => pictures.NumberOf(p.Picture))]);
        AppendElement(page, "study", PackedText.Of(JsonSerializer.SerializeToUtf8Bytes(opened, PageJson.Options)));
        for (int i = 0; i < models.Texts.Count; i++) AppendElement(page, $"model-{i}", models.Texts[i]);
        for (int i = 0; i < pictures.Texts.Count; i++)
            AppendElement(page, $"picture-{i}", JsonForHtml(JsonSerializer.Serialize(pictures.Texts[i], DocumentJson.Compact)));
    }

    // A type that browsers do not know: they keep the text and run nothing.
    private static void AppendElement(StringBuilder page, string id, string text) =>
        page.Append("<script type=\"text/plain\" id=\"").Append(id).Append("\">").Append(text).Append("</script>\n");

    internal static string ReadBundle()
    {
        using Stream stream = typeof(ReportPage).Assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException("Bug in Platewright: the page was not built into the program.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
