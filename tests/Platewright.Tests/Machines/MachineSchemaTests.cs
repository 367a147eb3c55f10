using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Json.Schema;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>The published schema and the reader say the same.</summary>
public sealed class MachineSchemaTests
{
    private static readonly string SchemaText =
        File.ReadAllText(Path.Combine(Repository.Root, "docs", "schema", "machine.schema.json"));

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    public static TheoryData<string> Bundled() =>
        [.. Directory.GetFiles(BundledFolder, "*.toml").Order(StringComparer.Ordinal).Select(f => Path.GetFileName(f))];

    [Theory]
    [MemberData(nameof(Bundled))]
    public void Schema_BundledMachine_IsValid(string file) =>
        Assert.True(IsValid(File.ReadAllText(Path.Combine(BundledFolder, file))));

    [Fact]
    public void Schema_FullMachine_IsValid()
    {
        Assert.True(IsValid(FullMachine.Text));
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "machine-file.md"));
        Assert.All(Fenced.Toml(page), example => Assert.True(IsValid(example)));
    }

    [Theory]
    [InlineData("enclosed = true", "enclosed = \"yes\"")]
    [InlineData("note = ", "nota = ")]
    [InlineData("shape = \"box\"", "shape = \"bowl\"")]
    [InlineData("shape = \"box\"", "shape = \"cylinder\"")]
    [InlineData("[212.5, 208, 230]", "[212.5, 208]")]
    [InlineData("[212.5, 208, 230]", "[212.5, 0, 230]")]
    [InlineData("left_mm = 5", "left_mm = -5")]
    [InlineData("max_mm = [20, 15, 3.5]", "")]
    [InlineData("noise_db = 47", "noise_db = 470")]
    [InlineData("exhaust = \"filter\"", "exhaust = \"chimney\"")]
    [InlineData("door_mm = 300", "door_mm = -1")]
    [InlineData("life_years = 6", "life_years = 0")]
    [InlineData("residual_share = 0.2", "residual_share = 1.2")]
    [InlineData("nozzle_c = 280", "nozzle_c = 2800")]
    [InlineData("currency = \"EUR\"", "currency = \"euro\"")]
    [InlineData("speed_mm_s = 150", "speed_mm_s = 0")]
    [InlineData("contour_tolerance_mm = 0.05", "")]
    [InlineData("contour_tolerance_mm = 0.05", "contour_tolerance_mm = 0.05\nspeed_jump_mm_s = 8")]
    [InlineData("axis_speed_mm_s = [200, 150, 12]", "axis_speed_mm_s = [200, 150]")]
    [InlineData("moving_bed = true", "moving_bed = \"yes\"")]
    [InlineData("melt_rate_mm3_s = 18", "melt_rate_mm3_s = 0")]
    [InlineData("start_s = 75", "start_s = -1")]
    [InlineData("supply_w = 500", "supply_w = 0")]
    [InlineData("mass_kg = 1.1", "mass_kg = 1.1\ncapacity_j_k = 900")]
    [InlineData("mass_kg = 1.1", "")]
    [InlineData("power_w = 45\n", "")]
    [InlineData("wall_mm = 4", "")]
    [InlineData("[1500, 6000]", "[1500, 6000, 7000]")]
    [InlineData("y = [100, 180]", "w = [100, 180]")]
    [InlineData("name = \"Bench One\"", "")]
    public void Schema_BrokenMachine_IsRefusedAsByTheReader(string right, string wrong)
    {
        string broken = FullMachine.Text.Replace(right, wrong, StringComparison.Ordinal);

        Assert.NotEqual(FullMachine.Text, broken);
        Assert.False(IsValid(broken));
        Assert.Throws<DescriptionException>(() => MachineFile.Parse(broken, "broken.toml"));
    }

    [Fact]
    public void Schema_Keys_AreThoseTheReaderKnows() => Assert.Equal(
        SchemaKeys.Of(SchemaText),
        ReaderKeys.Of(
            """
            zzzz = 1
            name = "probe"
            [build_volume]
            zzzz = 1
            shape = "box"
            size_mm = [9, 9, 9]
            [margins]
            zzzz = 1
            [floor]
            zzzz = 1
            [upkeep]
            zzzz = 1
            [[keep_out]]
            zzzz = 1
            [heats_to]
            zzzz = 1
            [price]
            zzzz = 1
            [motion]
            zzzz = 1
            [extruder]
            zzzz = 1
            [handling]
            zzzz = 1
            [heating]
            zzzz = 1
            bed = { zzzz = 1 }
            nozzle = { zzzz = 1 }
            chamber = { zzzz = 1 }
            enclosure = { zzzz = 1 }
            [range]
            zzzz = 1
            [range.motion]
            zzzz = 1
            axis_speed_mm_s = { zzzz = 1 }
            axis_acceleration_mm_s2 = { zzzz = 1 }
            [range.extruder]
            zzzz = 1
            [range.handling]
            zzzz = 1
            [range.heating]
            zzzz = 1
            bed = { zzzz = 1 }
            nozzle = { zzzz = 1 }
            chamber = { zzzz = 1 }
            enclosure = { zzzz = 1 }
            """,
            text => MachineFile.Parse(text, "probe.toml")));

    private static string BundledFolder => Path.Combine(Repository.Root, "src", "Platewright.Machines", "Bundled");

    private static bool IsValid(string toml) =>
        Schema.Evaluate(JsonSerializer.SerializeToElement(TomlJson.Read(toml, "test.toml"))).IsValid;
}

/// <summary>Every key of a schema, by the place it stands: <c>margins.side_mm</c>, <c>keep_out[].min_mm</c>.</summary>
internal static class SchemaKeys
{
    public static SortedSet<string> Of(string schemaText)
    {
        JsonNode root = JsonNode.Parse(schemaText)!;
        SortedSet<string> keys = new(StringComparer.Ordinal);
        Collect(root, root, "", keys);
        return keys;
    }

    private static void Collect(JsonNode root, JsonNode schema, string at, SortedSet<string> keys)
    {
        if (schema["$ref"]?.GetValue<string>() is { } reference)
            Collect(root, root["$defs"]![reference["#/$defs/".Length..]]!, at, keys);
        foreach ((string key, JsonNode? inner) in schema["properties"]?.AsObject() ?? [])
        {
            string place = at.Length == 0 ? key : $"{at}.{key}";
            keys.Add(place);
            Collect(root, inner!, place, keys);
        }
        foreach (string choice in (string[])["oneOf", "anyOf", "allOf"])
            foreach (JsonNode? inner in schema[choice]?.AsArray() ?? []) Collect(root, inner!, at, keys);
        if (schema["items"] is { } items) Collect(root, items, at, keys);
    }
}

/// <summary>
/// The same from a reader: it is given an unknown key in every table and names the keys it knows there.
/// </summary>
internal static class ReaderKeys
{
    private static readonly Regex ListPosition = new(@"\[\d+\]", RegexOptions.NonBacktracking);

    public static SortedSet<string> Of(string probe, Action<string> read)
    {
        DescriptionException refused = Assert.Throws<DescriptionException>(() => read(probe));
        SortedSet<string> keys = new(StringComparer.Ordinal);
        foreach (DescriptionError error in refused.Errors.Where(e => !e.KnownKeys.IsEmpty))
        {
            string at = ListPosition.Replace(error.Key![..^"zzzz".Length], "");
            foreach (string key in error.KnownKeys) keys.Add(at + key);
        }
        return keys;
    }
}
