using System.Globalization;
using System.Text.Json;
using Platewright.Machines;
using Platewright.Tests.Study;

namespace Platewright.Tests.Cli;

/// <summary>platewright machine new, as scripts call it.</summary>
public sealed class MachineNewTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void New_SixAnswers_WritesAFileThatReadsBackAndSaysWhereValuesCameFrom()
    {
        string file = _folder["bench.toml"];
        CommandResult result = BuiltCommand.Run(
            "machine", "new", file, "--size", "235,230,260", "--enclosure", "open", "--watts", "360", "--bed-minutes", "5",
            "--bed-c", "80", "--price", "410 eur");

        Assert.True(result.ExitCode == 0, result.Error);
        Machine machine = MachineFile.Read(file);
        Assert.Equal("bench", machine.Name);
        Assert.Equal(new BoxVolume(235, 230, 260), machine.BuildVolume);
        Assert.Equal(new Price(410, "EUR"), machine.Price);
        Assert.Equal(360, machine.Heating!.SupplyW);
        Assert.True(machine.Motion!.MovingBed);
        Assert.Contains("motion.acceleration_mm_s2", machine.Ranges.Keys);
        string text = File.ReadAllText(file);
        Assert.Contains("# stated", text, StringComparison.Ordinal);
        Assert.Contains("# from 5 min to 80 °C", text, StringComparison.Ordinal);
        Assert.Contains("# typical of open machines with a moving bed", text, StringComparison.Ordinal);

        CommandResult shown = BuiltCommand.Run("machine", "show", file);
        Assert.Equal(0, shown.ExitCode);
        Assert.Matches(@"Greatest acceleration along the path +2000 +mm/s² +700 and 4000", shown.Output);
    }

    [Theory]
    [InlineData("open")]
    [InlineData("closed")]
    public void New_EveryValueSaysWhereItCameFrom(string enclosure)
    {
        string file = _folder["bench.toml"];
        CommandResult result = BuiltCommand.Run(
            "machine", "new", file, "--size", "235,230,260", "--enclosure", enclosure, "--price", "410 EUR");

        Assert.True(result.ExitCode == 0, result.Error);
        string[] values = File.ReadAllText(file).Split("[range.")[0].Split('\n');
        Assert.All(
            values.Where(l => l.Contains(" = ", StringComparison.Ordinal)),
            l => Assert.Contains(" # ", l, StringComparison.Ordinal));
    }

    [Fact]
    public void New_SizeAlone_IsEnough()
    {
        CommandResult result = BuiltCommand.Run("machine", "new", _folder["round.toml"], "--size", "200x180", "--name", "the round one");

        Assert.True(result.ExitCode == 0, result.Error);
        Machine machine = MachineFile.Read(_folder["round.toml"]);
        Assert.Equal(new CylinderVolume(200, 180), machine.BuildVolume);
        Assert.Equal("the-round-one", machine.Id);
        Assert.Null(machine.Enclosed);
        Assert.Null(machine.HeatsTo);
    }

    [Theory]
    [InlineData(0.96)]
    [InlineData(1.2)]
    public void New_MeasuredJob_IsWhatTheEstimateThenSays(double factor)
    {
        string model = _folder["block.stl"], guess = _folder["guess.toml"], fitted = _folder["fitted.toml"];
        TestModels.WriteBox(model, 60, 50, 30);
        string[] known = ["--size", "220,220,250", "--enclosure", "open", "--bed-minutes", "3"];
        Assert.Equal(0, BuiltCommand.Run(["machine", "new", guess, .. known]).ExitCode);
        double minutes = Minutes(guess) * factor;

        CommandResult result = BuiltCommand.Run(
            ["machine", "new", fitted, .. known, "--job", string.Create(CultureInfo.InvariantCulture, $"{model},{minutes:0.00} min")]);

        Assert.True(result.ExitCode == 0, result.Error);
        Assert.InRange(Minutes(fitted) / minutes, 0.98, 1.02);
        Assert.Contains("# from the job measured at", File.ReadAllText(fitted), StringComparison.Ordinal);

        double Minutes(string machine)
        {
            CommandResult estimate = BuiltCommand.Run("estimate", model, "--machine", machine, "--recipe", "use", "--material", "PLA", "--json");
            JsonElement time = JsonDocument.Parse(estimate.Output).RootElement.GetProperty("estimates")[0].GetProperty("time_s");
            return (time.GetProperty("total").GetDouble() - time.GetProperty("release").GetDouble()) / 60;
        }
    }

    [Fact]
    public void New_ProgramAsJob_IsWhatItsReTimingThenSays()
    {
        string program = _folder["zigzag.gcode"], guess = _folder["guess.toml"], fitted = _folder["fitted.toml"];
        File.WriteAllText(program, Zigzag);
        Assert.Equal(0, BuiltCommand.Run("machine", "new", guess, "--program", program).ExitCode);
        double minutes = Minutes(guess) * 1.1;
        string job = string.Create(CultureInfo.InvariantCulture, $"{program},{minutes:0.000} min");

        CommandResult result = BuiltCommand.Run("machine", "new", fitted, "--program", program, "--job", job);

        Assert.True(result.ExitCode == 0, result.Error);
        Assert.InRange(Minutes(fitted) / minutes, 0.99, 1.01);
        Machine machine = MachineFile.Read(fitted);
        Assert.Equal(new BoxVolume(180, 199, 2), machine.BuildVolume);
        Assert.Contains("# at least: as far as ", File.ReadAllText(fitted), StringComparison.Ordinal);
        Assert.Contains("# To check: ", File.ReadAllText(fitted), StringComparison.Ordinal);
        Assert.Contains("asks for nozzle 210 °C, bed 60 °C", result.Output, StringComparison.Ordinal);

        double Minutes(string machine)
        {
            CommandResult estimate = BuiltCommand.Run("estimate", program, "--machine", machine, "--material", "PLA", "--json");
            Assert.True(estimate.ExitCode == 0, estimate.Error);
            JsonElement time = JsonDocument.Parse(estimate.Output).RootElement.GetProperty("estimates")[0].GetProperty("time_s");
            return (time.GetProperty("total").GetDouble() - time.GetProperty("release").GetDouble()) / 60;
        }
    }

    /// <summary>A hundred lines of 160 mm in each of five layers, at the speed a slow machine reaches.</summary>
    private static string Zigzag => "M140 S60\nM104 S210\nG90\nM83\n" + string.Concat(
        from layer in Enumerable.Range(1, 5)
        from row in Enumerable.Range(0, 100)
        select string.Create(
            CultureInfo.InvariantCulture,
            $"G0 X20 Y{row * 2} Z{layer * 0.4:0.0} F9000\nG1 X180 Y{row * 2 + 1} E5 F9000\n"));

    [Fact]
    public void New_ExistingFile_IsNotTouched()
    {
        File.WriteAllText(_folder["mine.toml"], "precious");
        CommandResult result = BuiltCommand.Run("machine", "new", _folder["mine.toml"], "--size", "200,200,200");

        Assert.Equal(2, result.ExitCode);
        Assert.Contains("exists already", result.Error, StringComparison.Ordinal);
        Assert.Equal("precious", File.ReadAllText(_folder["mine.toml"]));
    }

    [Theory]
    [InlineData("--size", "--enclosure", "open")]
    [InlineData("--size", "--size", "200")]
    [InlineData("--size", "--size", "200,200,-1")]
    [InlineData("--enclosure", "--size", "200,200,200", "--enclosure", "ajar")]
    [InlineData("--watts", "--size", "200,200,200", "--watts", "lots")]
    [InlineData("--bed-minutes", "--size", "200,200,200", "--bed-minutes", "0")]
    [InlineData("--bed-minutes", "--size", "200,200,200", "--bed-minutes", "4", "--bed-c", "20")]
    [InlineData("--job", "--size", "200,200,200", "--job", "absent.stl,2:35")]
    [InlineData("--job", "--size", "200,200,200", "--job", "absent.stl,155")]
    [InlineData("--job", "--size", "200,200,200", "--job", "absent.gcode,2:35")]
    [InlineData("--program", "--size", "200,200,200", "--program", "absent.gcode")]
    [InlineData("--program", "--size", "200,200,200", "--program", "model.stl")]
    [InlineData("--price", "--size", "200,200,200", "--price", "450")]
    [InlineData("--name", "--size", "200,200,200", "--name", "***")]
    public void New_WrongAnswer_Exits2NamingTheOption(string option, params string[] arguments)
    {
        string file = _folder["new.toml"];
        CommandResult result = BuiltCommand.Run(["machine", "new", file, .. arguments]);

        Assert.Equal(2, result.ExitCode);
        Assert.StartsWith(option, result.Error, StringComparison.Ordinal);
        Assert.Empty(result.Output);
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void RecipeCommands_ListAndShowWhatIsBundled()
    {
        string listed = BuiltCommand.Run("recipe", "list").Output;
        Assert.All(RecipeCatalog.Bundled, r => Assert.Contains(r.Id, listed, StringComparison.Ordinal));
        CommandResult shown = BuiltCommand.Run("recipe", "show", "use");
        Assert.Equal(0, shown.ExitCode);
        Assert.Matches(@"layer height +0\.2 mm", shown.Output);
        File.WriteAllText(_folder["odd.toml"], "name = \"odd\"\nlayer_hight_mm = 0.2\n");
        CommandResult refused = BuiltCommand.Run("recipe", "show", _folder["odd.toml"]);
        Assert.Equal(2, refused.ExitCode);
        Assert.Contains("odd.toml, line 2, layer_hight_mm: unknown key. Did you mean \"layer_height_mm\"?", refused.Error, StringComparison.Ordinal);
    }
}
