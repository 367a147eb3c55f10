using System.Text.Json;

namespace Platewright.Tests.Cli;

/// <summary>
/// Every readable mesh of the shared folder through <c>inspect</c>, against the values of its manifest: counts by exact welding,
/// measures by CGAL 5.5.1 (see the manifest's <c>tools</c>); tolerances are the manifest's own.
/// </summary>
public sealed class SharedModelsInspectTests
{
    private const double Relative = 1e-5;
    private const double BoxSlack = 1.005;

    [Fact]
    public void Inspect_SharedModels_AgreesWithTheManifest()
    {
        string folder = Repository.SharedOrSkip("models");
        using JsonDocument manifest = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "manifest.json")));
        CommandResult result = BuiltCommand.Run("inspect", folder, "--json");
        using JsonDocument found = JsonDocument.Parse(result.Output);
        ILookup<string, JsonElement> models = found.RootElement.GetProperty("models").EnumerateArray()
            .ToLookup(m => Path.GetFileName(m.GetProperty("file").GetString()!));
        List<string> wrong = [];
        int compared = 0;
        foreach (JsonElement file in manifest.RootElement.GetProperty("files").EnumerateArray())
        {
            string name = Path.GetFileName(file.GetProperty("file").GetString()!);
            if (!file.GetProperty("valid").GetBoolean()) continue;
            // Files of several objects are compared object by object in the tests of the readers.
            if (models[name].Count() != 1)
            {
                if (!models[name].Any()) wrong.Add($"{name} was not read.");
                continue;
            }
            compared++;
            wrong.AddRange(Compare(name, file, models[name].Single()));
        }
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.True(compared > 0, "Nothing was compared.");
    }

    private static IEnumerable<string> Compare(string name, JsonElement expected, JsonElement found)
    {
        double diagonal = Math.Sqrt(Numbers(expected, "extents_mm").Sum(e => e * e));
        foreach ((string theirs, string ours) in new[] { ("triangles", "triangles"), ("vertices_welded", "vertices"), ("components", "shells") })
        {
            if (expected.GetProperty(theirs).GetInt64() != found.GetProperty(ours).GetInt64())
                yield return $"{name}: {ours} {found.GetProperty(ours)}, expected {expected.GetProperty(theirs)}.";
        }
        bool closed = expected.GetProperty("watertight").GetBoolean();
        if (closed != found.GetProperty("closed").GetBoolean()) yield return $"{name}: closed should be {closed}.";
        if (closed && !Agree(expected, "volume_mm3", found, "volume_mm3")) yield return $"{name}: volume {found.GetProperty("volume_mm3")}.";
        if (!closed && found.GetProperty("volume_mm3").ValueKind != JsonValueKind.Null) yield return $"{name}: an open mesh has no volume.";
        if (!Agree(expected, "area_mm2", found, "area_mm2")) yield return $"{name}: area {found.GetProperty("area_mm2")}.";
        if (!Agree(expected, "convex_hull_volume_mm3", found, "hull_volume_mm3")) yield return $"{name}: hull {found.GetProperty("hull_volume_mm3")}.";
        foreach (string corner in new[] { "min", "max" })
        {
            double[] theirs = Numbers(expected.GetProperty("bbox_mm"), corner), ours = Numbers(found.GetProperty("bounds_mm"), corner);
            if (theirs.Zip(ours).Any(p => Math.Abs(p.First - p.Second) > Relative * diagonal)) yield return $"{name}: bounds {corner}.";
        }
        double[] box = Numbers(found, "tightest_box_mm");
        if (box.Length == 3 && expected.GetProperty("obb_volume_mm3").ValueKind == JsonValueKind.Number &&
            box[0] * box[1] * box[2] > BoxSlack * expected.GetProperty("obb_volume_mm3").GetDouble())
            yield return $"{name}: tightest box {box[0] * box[1] * box[2]}, expected {expected.GetProperty("obb_volume_mm3")}.";
    }

    private static bool Agree(JsonElement expected, string theirs, JsonElement found, string ours)
    {
        if (expected.GetProperty(theirs).ValueKind != JsonValueKind.Number) return true;
        double value = expected.GetProperty(theirs).GetDouble();
        return found.GetProperty(ours).ValueKind == JsonValueKind.Number &&
            Math.Abs(found.GetProperty(ours).GetDouble() - value) <= Relative * Math.Abs(value);
    }

    private static double[] Numbers(JsonElement e, string name) => [.. e.GetProperty(name).EnumerateArray().Select(n => n.GetDouble())];
}
