using System.Text.Json;
using Platewright.Tests.Study;

namespace Platewright.Tests.Cli;

/// <summary>The exit codes and the purity of standard output, as the command-line contract has them.</summary>
public sealed class ExitCodeTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("--bogus")]
    [InlineData("inspect", "--bogus", "a.stl")]
    [InlineData("fit", "a.stl")]
    [InlineData("fit", "a.stl", "--box", "10,10")]
    [InlineData("fit", "a.stl", "--box", "10,10,10", "--material", "CHEESE")]
    [InlineData("fit", "a.stl", "--machine", "no-such-machine")]
    [InlineData("fit", "a.stl", "--box", "10,10,10", "--tolerance", "7")]
    [InlineData("fit", "a.stl", "--box", "10,10,10", "--unit", "furlong")]
    [InlineData("inspect")]
    [InlineData("study", "no-such-folder")]
    [InlineData("nonsense")]
    public void WrongUsage_Exits2WithASentenceAndNothingOnStandardOutput(params string[] arguments)
    {
        CommandResult result = BuiltCommand.Run(arguments);
        Assert.Equal(2, result.ExitCode);
        Assert.Empty(result.Output);
        Assert.NotEmpty(result.Error);
        Assert.DoesNotContain("   at ", result.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Inspect_GoodAndBadFile_Exits1AndUsesTheGoodOne()
    {
        TestModels.WriteBox(_folder["good.stl"], 10, 20, 30);
        File.WriteAllText(_folder["bad.stl"], "solid x\nfacet normal 0 0 0\nouter loop\nvertex 1 2\n");
        CommandResult result = BuiltCommand.Run("inspect", _folder["good.stl"], _folder["bad.stl"], _folder["absent.stl"], "--json");
        Assert.Equal(1, result.ExitCode);
        using JsonDocument found = JsonDocument.Parse(result.Output);
        JsonElement model = Assert.Single(found.RootElement.GetProperty("models").EnumerateArray());
        Assert.Equal(6000, model.GetProperty("volume_mm3").GetDouble(), 9);
        Assert.Equal(2, found.RootElement.GetProperty("unusable").GetArrayLength());
        Assert.StartsWith("""{"format":1,""", result.Output.ReplaceLineEndings("").Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Inspect_AllGood_Exits0()
    {
        TestModels.WriteBox(_folder["good.stl"], 10, 20, 30);
        Assert.Equal(0, BuiltCommand.Run("inspect", _folder["good.stl"]).ExitCode);
    }

    [Fact]
    public void Study_MachineFileWithUnknownKey_Exits2NamingFileLineAndKey()
    {
        TestModels.WriteBox(_folder["models", "a.stl"], 10, 20, 30);
        File.WriteAllText(_folder["odd.toml"], "name = \"odd\"\n[build_volume]\nshape = \"box\"\nsize_mm = [1, 2, 3]\ncolour = \"red\"\n");
        CommandResult result = BuiltCommand.Run(
            "study", _folder["models"], "--machine", _folder["odd.toml"], "--store", _folder["store"], "--out", _folder["out"]);
        Assert.Equal(2, result.ExitCode);
        Assert.Contains("odd.toml, line 5", result.Error, StringComparison.Ordinal);
        Assert.Contains("colour", result.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(_folder["out"]));
    }

    [Fact]
    public void Study_StoreThatIsNone_Exits2WithASentence()
    {
        TestModels.WriteBox(_folder["models", "a.stl"], 10, 20, 30);
        File.WriteAllText(_folder["store", "store.db"], new string('x', 4096));
        CommandResult result = BuiltCommand.Run("study", _folder["models"], "--store", _folder["store"], "--out", _folder["out"]);
        Assert.Equal(2, result.ExitCode);
        Assert.Contains("store.db is damaged", result.Error, StringComparison.Ordinal);
    }
}
