using System.Text.Encodings.Web;
using System.Text.Json;

namespace Platewright.Study.Documents;

/// <summary>How documents become JSON: snake_case keys, full precision, text left readable, nulls written.</summary>
public static class DocumentJson
{
    /// <summary>One line.</summary>
    public static JsonSerializerOptions Compact { get; } = Options(indented: false);

    /// <summary>For files that people open.</summary>
    public static JsonSerializerOptions Indented { get; } = Options(indented: true);

    private static JsonSerializerOptions Options(bool indented)
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.SnakeCaseLower,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            WriteIndented = indented,
            NewLine = "\n",
        };
        options.MakeReadOnly(populateMissingResolver: true);
        return options;
    }
}
