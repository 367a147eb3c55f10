using System.Text.Json;
using Platewright.Tests.Study;

namespace Platewright.Tests.Cli;

/// <summary><c>estimate</c> and <c>learn</c> as scripts use them.</summary>
public sealed class EstimateCommandTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public EstimateCommandTests()
    {
        TestModels.WriteBox(_folder["box.stl"], 20, 20, 20);
        File.WriteAllText(_folder["probe.toml"], """
            name = "probe"
            [build_volume]
            shape = "box"
            size_mm = [200, 200, 180]
            [motion]
            speed_mm_s = 150
            acceleration_mm_s2 = 3000
            contour_tolerance_mm = 0.05
            """);
        File.WriteAllText(_folder["plain.toml"], """
            name = "plain"
            layer_height_mm = 0.2
            bead_width_mm = 0.45
            walls = 2
            solid_layers = 4
            infill_share = 1
            infill_pattern = "lines"
            support = false
            brim_mm = 0
            speed_mm_s = 60
            """);
        File.WriteAllText(_folder["line.gcode"], "G21 G90\nM83\nG28\nM104 S210\nG1 X100 Y50 Z0.2 F6000\nG1 X150 E2 F1800\nG4 S3\n");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Estimate_OfASolidCubeOnTheSmallestMachine_AgreesWithItsFormulas()
    {
        JsonElement e = Estimate("box.stl", "--recipe", _folder["plain.toml"], "--full");
        Assert.Equal(100, e.GetProperty("layers").GetInt32());
        // Volume conservation; 982.6087 mm of bead a layer and 1637.68 s at 60 mm/s at least: physics-cases.json bt-06.
        Assert.Equal(8000, e.GetProperty("material_mm3").GetDouble(), 40.0);
        Assert.InRange(Total(e), 1637.68, 2 * 1637.68);
        Assert.Equal(e.GetProperty("material_mm3").GetDouble() / 2.405282, e.GetProperty("filament_mm").GetDouble(), 0.01);
        JsonElement times = e.GetProperty("time_s");
        Assert.Equal(Total(e), times.EnumerateObject().Where(p => p.Name != "total").Sum(p => p.Value.GetDouble()), 1e-6);
        Assert.Equal(0, times.GetProperty("warm_up").GetDouble());
        Assert.Equal(0, times.GetProperty("release").GetDouble());
        Assert.Equal(0, e.GetProperty("relative_error").GetDouble());
    }

    [Fact]
    public void Estimate_OfAMotionProgram_ReportsExtrudingAndWaiting()
    {
        JsonElement e = Estimate("line.gcode");
        JsonElement times = e.GetProperty("time_s");
        // 50 mm at 30 mm/s and 3000 mm/s², entered at full speed round a wide corner and left at rest: d/v + v/2a.
        Assert.Equal(50 / 30.0 + 30.0 / 6000, times.GetProperty("extruding").GetDouble(), 1e-6);
        Assert.Equal(3, times.GetProperty("waiting").GetDouble(), 1e-9);
        Assert.False(times.TryGetProperty("walls", out _));
        Assert.Equal(2, e.GetProperty("filament_mm").GetDouble(), 1e-9);
        Assert.Equal(JsonValueKind.Null, e.GetProperty("recipe").ValueKind);
    }

    [Fact]
    public void Estimate_OfAProgramThatLeavesTheMachine_SaysWhereAndByHowMuch()
    {
        File.WriteAllText(_folder["line.gcode"], "G21 G90\nG1 X20 Y20 F6000\nG1 X212 F6000\n");
        JsonElement e = Estimate("line.gcode");
        Assert.Contains(e.GetProperty("notes").EnumerateArray(), n => n.GetString()!.Contains("line 3: it would run out of travel in x by 12 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void Estimate_WithoutARecipeForAModel_IsWrongUsage()
    {
        CommandResult result = BuiltCommand.Run("estimate", _folder["box.stl"], "--machine", _folder["probe.toml"]);
        Assert.Equal(2, result.ExitCode);
        Assert.Contains("name a recipe", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Estimate_OnAMachineWithoutMotion_IsWrongUsage()
    {
        CommandResult result = BuiltCommand.Run("estimate", _folder["box.stl"], "--box", "100,100,100", "--recipe", "use");
        Assert.Equal(2, result.ExitCode);
        Assert.Contains("[motion]", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Learn_FromThreeJobs_CorrectsTheNextEstimate()
    {
        double before = Total(Estimate("box.stl", "--recipe", _folder["plain.toml"]));
        TimeSpan measured = TimeSpan.FromSeconds(1.2 * before);
        string line = $"box.stl,probe.toml,plain.toml,{(int)measured.TotalHours}:{measured:mm\\:ss}\n";
        File.WriteAllText(_folder["log.csv"], $"file,machine,recipe,measured_time\n{line}{line}{line}");
        CommandResult learned = BuiltCommand.Run("learn", _folder["log.csv"], "--store", _folder["store"]);
        Assert.True(learned.ExitCode == 0, learned.Error);
        JsonElement after = Estimate("box.stl", "--recipe", _folder["plain.toml"]);
        Assert.InRange(Total(after) / before, 1.12, 1.2);
        Assert.Equal("log", after.GetProperty("time_error").GetProperty("source").GetString());
    }

    private static double Total(JsonElement estimate) => estimate.GetProperty("time_s").GetProperty("total").GetDouble();

    private JsonElement Estimate(string model, params string[] more)
    {
        CommandResult result = BuiltCommand.Run(
            ["estimate", _folder[model], "--machine", _folder["probe.toml"], "--store", _folder["store"], "--json", .. more]);
        Assert.True(result.ExitCode == 0, result.Error);
        return Assert.Single(JsonDocument.Parse(result.Output).RootElement.GetProperty("estimates").EnumerateArray());
    }
}
