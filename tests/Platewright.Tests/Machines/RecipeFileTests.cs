using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

public sealed class RecipeFileTests
{
    /// <summary>The smallest recipe of the command-line contract.</summary>
    internal const string Smallest = """
        name = "probe"
        layer_height_mm = 0.2
        bead_width_mm = 0.45
        walls = 2
        solid_layers = 4
        infill_share = 0.2
        infill_pattern = "lines"
        support = false
        brim_mm = 0
        speed_mm_s = 100
        """;

    internal const string Full = """
        name = "Bench check"
        purpose = "To see whether it mates."
        material = "PETG"
        layer_height_mm = 0.25
        bead_width_mm = 0.6
        walls = 3
        solid_layers = 0
        infill_share = 1
        infill_pattern = "gyroid"
        support = true
        overhang_angle_deg = 50
        support_share = 0.1
        brim_mm = "material"
        minimum_layer_time_s = "material"

        [speed_mm_s]
        walls = 50
        solid_faces = 60
        infill = 110
        support = 90
        brim = 30
        travel = 250
        """;

    [Fact]
    public void Read_SmallestRecipe_IsAsTheContractSays()
    {
        Recipe recipe = RecipeFile.Parse(Smallest, "probe.toml");

        Assert.Equal(
            new Recipe
            {
                Name = "probe",
                LayerHeightMm = 0.2,
                BeadWidthMm = 0.45,
                Walls = 2,
                SolidLayers = 4,
                InfillShare = 0.2,
                InfillPattern = InfillPattern.Lines,
                Support = false,
                BrimMm = 0,
                Speeds = PathSpeeds.All(100),
                MinimumLayerTimeS = 0,
            },
            recipe);
        Assert.Equal(0, recipe.MinimumLayerTimeFor(MaterialCatalog.Find("PLA")!));
        Assert.Equal(0, recipe.BrimFor(MaterialCatalog.Find("PLA")!));
    }

    [Fact]
    public void Read_FullRecipe_GivesEveryField()
    {
        Recipe recipe = RecipeFile.Parse(Full, "full.toml");

        Assert.Equal(
            new Recipe
            {
                Name = "Bench check",
                Purpose = "To see whether it mates.",
                Material = "PETG",
                LayerHeightMm = 0.25,
                BeadWidthMm = 0.6,
                Walls = 3,
                SolidLayers = 0,
                InfillShare = 1,
                InfillPattern = InfillPattern.Gyroid,
                Support = true,
                OverhangAngleDeg = 50,
                SupportShare = 0.1,
                BrimMm = null,
                MinimumLayerTimeS = null,
                Speeds = new PathSpeeds(50, 60, 110, 90, 30, 250),
            },
            recipe);
        Assert.Equal("bench-check", recipe.Id);
        Assert.Equal(MaterialCatalog.Find("PETG")!.BrimMm, recipe.BrimFor(MaterialCatalog.Find("PETG")!));
        Assert.Equal(
            MaterialCatalog.Find("PETG")!.MinimumLayerTimeS, recipe.MinimumLayerTimeFor(MaterialCatalog.Find("PETG")!));
    }

    [Fact]
    public void Read_SpeedTable_LeftOutKindsGoAsFastAsWallsAndTravelAsTheMachine()
    {
        Recipe recipe = RecipeFile.Parse(
            Smallest.Replace("speed_mm_s = 100", "speed_mm_s = { walls = 50, infill = 90 }", StringComparison.Ordinal), "x.toml");

        Assert.Equal(new PathSpeeds(50, 50, 90, 50, 50, null), recipe.Speeds);
    }

    [Theory]
    [InlineData("minimum_layer_time_s = 7.5", 7.5)]
    [InlineData("minimum_layer_time_s = 0", 0)]
    public void Read_MinimumLayerTime_AsNumber(string line, double seconds) =>
        Assert.Equal(seconds, RecipeFile.Parse(Smallest + "\n" + line, "x.toml").MinimumLayerTimeS);

    [Theory]
    [InlineData("name = \"probe\"", "", 1, "name", "missing")]
    [InlineData("layer_height_mm = 0.2", "layer_height_mm = 0", 2, "layer_height_mm", "greater than 0")]
    [InlineData("bead_width_mm = 0.45", "bead_width_mm = 0.1", 3, "bead_width_mm", "narrower than its layer height")]
    [InlineData("walls = 2", "walls = 2.5", 4, "walls", "a whole number from 0 to 50")]
    [InlineData("walls = 2", "", 1, "walls", "missing; expected a whole number")]
    [InlineData("infill_share = 0.2", "infill_share = 20", 6, "infill_share", "from 0 to 1")]
    [InlineData("\"lines\"", "\"line\"", 7, "infill_pattern", "Did you mean \"lines\"?")]
    [InlineData("support = false", "support = 0", 8, "support", "true or false")]
    [InlineData("support = false", "suport = false", 8, "suport", "Did you mean \"support\"?")]
    [InlineData("brim_mm = 0", "brim_mm = \"metal\"", 9, "brim_mm", "from 0 to 100 mm, or \"material\"")]
    [InlineData("speed_mm_s = 100", "", 1, "speed_mm_s", "missing")]
    [InlineData("speed_mm_s = 100", "speed_mm_s = \"fast\"", 10, "speed_mm_s", "or a table of speeds")]
    [InlineData("speed_mm_s = 100", "speed_mm_s = -1", 10, "speed_mm_s", "greater than 0")]
    [InlineData("speed_mm_s = 100", "speed_mm_s = { infill = 9 }", 10, "speed_mm_s.walls", "missing")]
    [InlineData("speed_mm_s = 100", "speed_mm_s = { walls = 9, wall = 9 }", 10, "speed_mm_s.wall", "Did you mean")]
    [InlineData("speed_mm_s = 100", "speed_mm_s = { walls = 9, travel = 0 }", 10, "speed_mm_s.travel", "greater than 0")]
    public void Read_WrongRecipe_SaysLineKeyAndExpectation(string right, string wrong, int line, string key, string says)
    {
        string broken = Smallest.Replace(right, wrong, StringComparison.Ordinal);
        DescriptionException refused = Assert.Throws<DescriptionException>(() => RecipeFile.Parse(broken, "probe.toml"));

        DescriptionError error = Assert.Single(refused.Errors);
        Assert.Equal(("probe.toml", line, key), (error.File, error.Line, error.Key));
        Assert.Contains(says, error.Message, StringComparison.Ordinal);
    }
}
