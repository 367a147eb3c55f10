using Platewright.Formats.Toml;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Machines;

public sealed class MachineFileTests
{
    private const string Name = "name = \"probe\"";

    private const string Size = "size_mm = [200, 200, 180]";

    private const string Smallest = """
        name = "probe"
        [build_volume]
        shape = "box"
        size_mm = [200, 200, 180]
        """;

    [Fact]
    public void Read_SmallestFile_GivesBoxWithoutMarginsOrHeat()
    {
        Machine machine = MachineFile.Parse(Smallest, "probe.toml");

        Assert.Equal("probe", machine.Name);
        Assert.Equal("probe", machine.Id);
        Assert.Equal(new BoxVolume(200, 200, 180), machine.BuildVolume);
        Assert.Equal(Margins.None, machine.Margins);
        Assert.Empty(machine.KeepOuts);
        Assert.Null(machine.HeatsTo);
        Assert.Null(machine.Enclosed);
        Assert.Null(machine.Motion);
        Assert.False(machine.Generic);
    }

    [Fact]
    public void Read_FullFile_GivesEveryField()
    {
        Machine machine = MachineFile.Parse(FullMachine.Text, "full.toml");

        Assert.Equal("Bench One", machine.Name);
        Assert.Equal("bench-one", machine.Id);
        Assert.Equal(new Margins(5, 2, 2, 2, 1), machine.Margins);
        Assert.Equal([new Bounds3(new(0, 0, 0), new(20, 15, 3.5))], machine.KeepOuts);
        Assert.Equal(new HeatLimits(280, 100, 40), machine.HeatsTo);
        Assert.True(machine.Enclosed);
        Assert.Equal(new Price(499.90m, "EUR"), machine.Price);
        Assert.Equal(new Vec2(420, 440), machine.FootprintMm);
        Assert.Equal("second hand", machine.Note);
    }

    [Fact]
    public void Read_CylinderAndPrism_GiveTheirShapes()
    {
        Machine round = MachineFile.Parse(
            Shape("shape = \"cylinder\"\ndiameter_mm = 200\nheight_mm = 180"), "round.toml");
        Machine prism = MachineFile.Parse(
            Shape("shape = \"prism\"\npolygon_mm = [[0, 0], [100, 0], [50, 80]]\nheight_mm = 180"), "prism.toml");

        Assert.Equal(new CylinderVolume(200, 180), round.BuildVolume);
        Assert.Equal(new PrismVolume([new(0, 0), new(100, 0), new(50, 80)], 180), prism.BuildVolume);
    }

    [Theory]
    [InlineData(Size, "size_mn = [200, 200, 180]", 4, "build_volume.size_mn", "Did you mean \"size_mm\"")]
    [InlineData(Size, "size_mm = [200, 200]", 4, "build_volume.size_mm", "found a list of 2")]
    [InlineData(Size, "size_mm = [200, -1, 180]", 4, "build_volume.size_mm[2]", "greater than 0")]
    [InlineData(Size, "size_mm = [200, inf, 180]", 4, "build_volume.size_mm[2]", "at most 100000 mm")]
    [InlineData(Size, "size_mm = [200, nan, 180]", 4, "build_volume.size_mm[2]", "found NaN")]
    [InlineData(Size, "size_mm = \"200\"", 4, "build_volume.size_mm", "found the text \"200\"")]
    [InlineData("shape = \"box\"", "shape = \"bx\"", 3, "build_volume.shape", "Did you mean \"box\"")]
    [InlineData("shape = \"box\"", "shape = \"cylinder\"", 4, "build_volume.size_mm", "belongs to the shape \"box\"")]
    [InlineData(Name, "name = 3", 1, "name", "expected a text")]
    [InlineData(Name, "nmae = \"probe\"", 1, "nmae", "Did you mean \"name\"")]
    [InlineData(Name, "name = \"probe\"\nname = \"again\"", 2, "name", "already the text \"probe\" on line 1")]
    [InlineData(Name, "name = \"--\"", 1, "name", "a letter or a digit")]
    [InlineData("[build_volume]", "[build_volum]", 2, "build_volum", "Did you mean \"build_volume\"")]
    public void Read_WrongFile_SaysLineKeyAndExpectation(string right, string wrong, int line, string key, string says)
    {
        DescriptionException refused = Refused(Smallest.Replace(right, wrong, StringComparison.Ordinal));

        Assert.Contains(refused.Errors, e =>
            e.File == "probe.toml" && e.Line == line && e.Key == key
            && e.Message.Contains(says, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("[[0, 0], [50, 80], [100, 0]]", "clockwise")]
    [InlineData("[[0, 0], [100, 0]]", "at least 3 corners")]
    [InlineData("[[0, 0], [100, 0], [100, 100], [50, 20]]", "not convex at corner 4")]
    [InlineData("[[0, 0], [50, 0], [100, 0], [50, 80]]", "not convex at corner 2")]
    [InlineData("[[0, 0], [100, 0], [100, 0], [50, 80]]", "corner 3 repeats")]
    [InlineData("[[0, 100], [-59, -81], [95, 31], [-95, 31], [59, -81]]", "crosses itself")]
    public void Read_PolygonNotConvexCounterClockwise_SaysWhy(string polygon, string says)
    {
        string text = Shape($"shape = \"prism\"\nheight_mm = 100\npolygon_mm = {polygon}");

        DescriptionError error = Assert.Single(Refused(text).Errors);
        Assert.Contains(says, error.Message, StringComparison.Ordinal);
        Assert.Equal("build_volume.polygon_mm", error.Key);
        Assert.Equal(5, error.Line);
    }

    [Theory]
    [InlineData("[margins]\nside_mm = 100", "leave nothing of 200 mm width")]
    [InlineData("[margins]\nfront_mm = 150\nback_mm = 50", "leave nothing of 200 mm depth")]
    [InlineData("[margins]\ntop_mm = 180", "nothing of the height")]
    [InlineData("[margins]\nside_mm = -1", "from 0 to")]
    [InlineData("[[keep_out]]\nmin_mm = [0, 0, 0]\nmax_mm = [300, 10, 10]", "not inside the build volume")]
    [InlineData("[[keep_out]]\nmin_mm = [0, 0, 5]\nmax_mm = [10, 10, 5]", "greater than the same one of min_mm")]
    [InlineData("[[keep_out]]\nmin_mm = [0, 0, 0]", "missing; expected a list of 3 numbers")]
    [InlineData("[[keep_out]]\nmin_mm = [0, 0, 0]\nmax_mm = [200, 200, 180]", "cover the whole build volume")]
    [InlineData("[heats_to]\nnozzle_c = 2500", "from 60 to 600 °C")]
    [InlineData("[heats_to]\nbed_c = 60", "missing; expected a number from 60")]
    [InlineData("[price]\namount = 100\ncurrency = \"euro\"", "ISO 4217")]
    [InlineData("[motion]\nspeed_mm_s = 0\nacceleration_mm_s2 = 1\ncontour_tolerance_mm = 0.05", "greater than 0")]
    [InlineData("heats_to = 3", "expected a table, found 3")]
    public void Read_NonsenseInFurtherTables_IsRefused(string addition, string says)
    {
        string text = addition.StartsWith('[') ? Smallest + "\n" + addition : addition + "\n" + Smallest;

        Assert.Contains(
            Refused(text).Errors, e => e.Message.Contains(says, StringComparison.Ordinal) && e.Line is not null);
    }

    [Fact]
    public void Read_KeepOutsCoveringTogether_AreRefusedButNotOneMillimetreLess()
    {
        string halves = Smallest + """

            [margins]
            side_mm = 5
            [[keep_out]]
            min_mm = [0, 0, 0]
            max_mm = [100, 200, 180]
            [[keep_out]]
            min_mm = [100, 0, 0]
            max_mm = [195, 200, 180]
            """;

        Assert.Contains("cover the whole", Refused(halves).Message, StringComparison.Ordinal);
        MachineFile.Parse(halves.Replace("[195,", "[194,", StringComparison.Ordinal), "probe.toml");
    }

    [Fact]
    public void Read_RoundSurface_TakesOneMarginAllRound()
    {
        string round = Shape("shape = \"cylinder\"\ndiameter_mm = 200\nheight_mm = 180") + "\n[margins]\nside_mm = 4\n";

        Assert.Equal(new Margins(4, 4, 4, 4, 0), MachineFile.Parse(round, "probe.toml").Margins);
        Assert.Contains("only a box has four sides", Refused(round + "left_mm = 3").Message, StringComparison.Ordinal);
        DescriptionException wide = Refused(round.Replace("= 4", "= 100", StringComparison.Ordinal));
        Assert.Contains("nothing of the diameter", wide.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_PrismMargin_MustStayBelowTheInscribedCircle()
    {
        // A right triangle with legs 30 and 40 has the inscribed radius (30 + 40 − 50) / 2 = 10 (Euclid IV.4).
        string prism = Shape("shape = \"prism\"\npolygon_mm = [[0, 0], [40, 0], [0, 30]]\nheight_mm = 9");
        string triangle = prism + "\n[margins]\nside_mm = ";

        MachineFile.Parse(triangle + "9.99", "probe.toml");
        Assert.Contains("nothing of the polygon", Refused(triangle + "10.01").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_SeveralMistakes_AreReportedTogetherInOrder()
    {
        DescriptionException refused = Refused(
            "nam = 1\n[build_volume]\nshape = \"box\"\nsize_mm = [1]\n[heats_to]\nnozzle_c = true\n");

        Assert.Equal([1, 1, 4, 6], refused.Errors.Select(e => e.Line!.Value));
    }

    private static DescriptionException Refused(string text) =>
        Assert.Throws<DescriptionException>(() => MachineFile.Parse(text, "probe.toml"));

    private static string Shape(string table) => $"name = \"probe\"\n[build_volume]\n{table}";
}
