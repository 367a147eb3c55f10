using System.Text.Json.Nodes;
using Platewright.Formats.Toml;

namespace Platewright.Tests.Machines;

/// <summary>A TOML text as the JSON value a schema can check, and the keys a reader knows at each place.</summary>
internal static class TomlAsJson
{
    public static JsonNode Convert(string text)
    {
        JsonNode? json = null;
        try
        {
            TomlFile.Parse<object>(text, "test.toml", root =>
            {
                json = Of(root);
                return json;
            });
        }
        catch (DescriptionException) when (json is not null)
        {
            // Nobody asked for the keys; only the tree is wanted here.
        }
        return json!;
    }

    private static JsonNode? Of(TomlNode node) => node switch
    {
        TomlTable table => new JsonObject(table.Entries.Select(e => KeyValuePair.Create(e.Key, Of(e.Value)))),
        TomlList list => new JsonArray([.. list.Items.Select(Of)]),
        TomlScalar { Value: string text } => JsonValue.Create(text),
        TomlScalar { Value: long whole } => JsonValue.Create(whole),
        TomlScalar { Value: double number } => JsonValue.Create(number),
        TomlScalar { Value: bool flag } => JsonValue.Create(flag),
        _ => throw new NotSupportedException(node.Described),
    };
}
