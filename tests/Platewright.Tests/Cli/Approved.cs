using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Platewright.Study.Documents;

namespace Platewright.Tests.Cli;

/// <summary>
/// Documents that others rely on, compared with approved ones beside the tests. A difference fails; run the test with
/// PLATEWRIGHT_APPROVE=1 to accept what is new, then read the difference before committing it.
/// </summary>
internal static class Approved
{
    // Processors and libraries differ in the last digits of a number.
    private const string NineDigits = "G9";

    public static void Check(string name, string json, string folder)
    {
        string path = Path.Combine(Repository.Root, "tests", "Platewright.Tests", "Cli", "Approved", $"{name}.json");
        JsonNode document = JsonNode.Parse(json.Replace(folder.Replace('\\', '/'), "FOLDER", StringComparison.Ordinal))!;
        string received = Steady(document)!.ToJsonString(DocumentJson.Indented).ReplaceLineEndings("\n") + "\n";
        if (Environment.GetEnvironmentVariable("PLATEWRIGHT_APPROVE") == "1")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, received);
        }
        string approved = File.Exists(path) ? File.ReadAllText(path).ReplaceLineEndings("\n") : "";
        Assert.Equal(approved, received);
    }

    private static JsonNode? Steady(JsonNode? node) => node switch
    {
        JsonObject o => new JsonObject(o.Select(p => KeyValuePair.Create(p.Key, p.Key switch
        {
            "seconds" => JsonValue.Create(0),
            "picture" => JsonValue.Create("a picture"),
            // Of several turns that reach the same scale any may be found.
            "rotation" when p.Value is JsonArray { Count: 4 } => JsonValue.Create("a unit quaternion"),
            "translation_mm" when p.Value is JsonArray { Count: 3 } => JsonValue.Create("a point"),
            _ => Steady(p.Value),
        }))),
        JsonArray a => new JsonArray([.. a.Select(Steady)]),
        JsonValue v when v.GetValueKind() == JsonValueKind.Number =>
            JsonValue.Create(double.Parse(v.GetValue<double>().ToString(NineDigits, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture)),
        _ => node?.DeepClone(),
    };
}
