using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Platewright.Formats.Toml;

/// <summary>
/// TOML text as the JSON value that a schema describes and a form edits, and back. Comments are lost on the way; dates and
/// times, which no key of ours takes, become text.
/// </summary>
public static class TomlJson
{
    private static readonly JsonSerializerOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What a TOML text says, whatever keys it has.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">How errors name it.</param>
    /// <exception cref="DescriptionException">It is not TOML, or sets a key twice.</exception>
    public static JsonObject Read(string text, string file) => (JsonObject)Of(TomlFile.Tree(text, file))!;

    /// <summary>The TOML text that says the same as <paramref name="value"/>; what is null is left out.</summary>
    /// <exception cref="DescriptionException">A list holds tables beside other values, or null.</exception>
    public static string Write(JsonObject value)
    {
        StringBuilder text = new();
        WriteTable(text, value, "");
        return text.ToString().TrimStart('\n');
    }

    private static JsonNode? Of(TomlNode node) => node switch
    {
        TomlTable table => new JsonObject(table.Entries.Select(e => KeyValuePair.Create(e.Key, Of(e.Value)))),
        TomlList list => new JsonArray([.. list.Items.Select(Of)]),
        TomlScalar { Value: string text } => JsonValue.Create(text),
        TomlScalar { Value: long whole } => JsonValue.Create(whole),
        TomlScalar { Value: double number } => double.IsFinite(number) ? JsonValue.Create(number) : JsonValue.Create(number.ToString(CultureInfo.InvariantCulture)),
        TomlScalar { Value: bool flag } => JsonValue.Create(flag),
        TomlScalar { Value: TomlMoment moment } => JsonValue.Create(moment.Text),
        _ => throw new InvalidOperationException($"Bug in Platewright: {node.Described} is no value of TOML."),
    };

    // Plain values first: what follows a header would belong to the table it opens.
    private static void WriteTable(StringBuilder text, JsonObject table, string path)
    {
        foreach ((string key, JsonNode? value) in table)
            if (value is not null and not JsonObject && !IsTables(value)) text.Append(Key(key)).Append(" = ").Append(Inline(value)).Append('\n');
        foreach ((string key, JsonNode? value) in table)
        {
            string inner = path.Length == 0 ? Key(key) : $"{path}.{Key(key)}";
            if (value is JsonObject child)
            {
                text.Append("\n[").Append(inner).Append("]\n");
                WriteTable(text, child, inner);
            }
            else if (value is JsonArray list && IsTables(value))
            {
                foreach (JsonNode? item in list)
                {
                    text.Append("\n[[").Append(inner).Append("]]\n");
                    WriteTable(text, (JsonObject)item!, inner);
                }
            }
        }
    }

    private static bool IsTables(JsonNode value) => value is JsonArray { Count: > 0 } list && list.All(i => i is JsonObject);

    private static string Inline(JsonNode? value) => value switch
    {
        JsonArray list => $"[{string.Join(", ", list.Select(Inline))}]",
        JsonObject table => $"{{ {string.Join(", ", table.Where(e => e.Value is not null).Select(e => $"{Key(e.Key)} = {Inline(e.Value)}"))} }}",
        JsonValue scalar => Scalar(scalar),
        _ => throw new DescriptionException(new DescriptionError("a list may not hold an empty place.")),
    };

    private static string Scalar(JsonValue value) => value.GetValueKind() switch
    {
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        JsonValueKind.Number => Number(value),
        _ => Quoted(value.GetValue<string>()),
    };

    // 1e3 is a float in TOML too; 5.0 stays one.
    private static string Number(JsonValue value) => value.ToJsonString();

    private static string Key(string key) =>
        key.Length > 0 && key.All(c => char.IsAsciiLetterOrDigit(c) || c is '_' or '-') ? key : Quoted(key);

    // Strings of JSON are basic strings of TOML 1.0, but for U+007F, which TOML wants escaped.
    private static string Quoted(string text) =>
        JsonSerializer.Serialize(text, Readable).Replace("\u007f", "\\u007F", StringComparison.Ordinal);
}
