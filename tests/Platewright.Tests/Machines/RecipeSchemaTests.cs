using System.Text.Json;
using Json.Schema;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>The published schema of recipes and the reader say the same.</summary>
public sealed class RecipeSchemaTests
{
    private static readonly string SchemaText =
        File.ReadAllText(Path.Combine(Repository.Root, "docs", "schema", "recipe.schema.json"));

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    private static string BundledFolder => Path.Combine(Repository.Root, "src", "Platewright.Machines", "BundledRecipes");

    [Fact]
    public void Schema_SoundRecipes_AreValid()
    {
        Assert.True(IsValid(RecipeFileTests.Smallest));
        Assert.True(IsValid(RecipeFileTests.Full));
        string page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "recipe-file.md"));
        Assert.All(Fenced.Toml(page), example => Assert.True(IsValid(example)));
        Assert.All(Directory.GetFiles(BundledFolder, "*.toml"), f => Assert.True(IsValid(File.ReadAllText(f)), f));
    }

    [Theory]
    [InlineData("layer_height_mm = 0.25", "layer_height_mm = 0")]
    [InlineData("bead_width_mm = 0.6", "")]
    [InlineData("walls = 3", "walls = 2.5")]
    [InlineData("solid_layers = 0", "solid_layers = -1")]
    [InlineData("infill_share = 1", "infill_share = 100")]
    [InlineData("\"gyroid\"", "\"honey\"")]
    [InlineData("support = true", "support = \"all\"")]
    [InlineData("overhang_angle_deg = 50", "overhang_angle_deg = 90")]
    [InlineData("brim_mm = \"material\"", "brim_mm = \"wide\"")]
    [InlineData("minimum_layer_time_s = \"material\"", "minimum_layer_time_s = -1")]
    [InlineData("walls = 50\n", "")]
    [InlineData("travel = 250", "travl = 250")]
    [InlineData("name = \"Bench check\"", "name = \"--\"")]
    public void Schema_BrokenRecipe_IsRefusedAsByTheReader(string right, string wrong)
    {
        string broken = RecipeFileTests.Full.Replace(right, wrong, StringComparison.Ordinal);

        Assert.NotEqual(RecipeFileTests.Full, broken);
        Assert.False(IsValid(broken));
        Assert.Throws<DescriptionException>(() => RecipeFile.Parse(broken, "broken.toml"));
    }

    [Fact]
    public void Schema_Keys_AreThoseTheReaderKnows() => Assert.Equal(
        SchemaKeys.Of(SchemaText),
        ReaderKeys.Of("zzzz = 1\nspeed_mm_s = { zzzz = 1 }", text => RecipeFile.Parse(text, "probe.toml")));

    private static bool IsValid(string toml) =>
        Schema.Evaluate(JsonSerializer.SerializeToElement(TomlJson.Read(toml, "test.toml"))).IsValid;
}
