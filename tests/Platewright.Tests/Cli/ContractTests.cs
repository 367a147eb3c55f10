using System.Text.Json;
using Platewright.Tests.Study;

namespace Platewright.Tests.Cli;

/// <summary>The documents of the command-line contract for tiny inputs, word for word.</summary>
public sealed class ContractTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Inspect_Json_IsAsApproved()
    {
        TestModels.WriteBox(_folder["models", "plate.stl"], 120, 80, 6);
        CommandResult result = BuiltCommand.Run("inspect", _folder["models"], _folder["absent.stl"], "--json");
        Approved.Check("inspect", result.Output, _folder.Path);
    }

    [Fact]
    public void Fit_Json_IsAsApproved()
    {
        TestModels.WriteBox(_folder["plate.stl"], 120, 80, 6);
        CommandResult result = BuiltCommand.Run(
            "fit", _folder["plate.stl"], "--box", "125,85,10", "--cylinder", "130,60", "--material", "PETG", "--margin", "1", "--json");
        Assert.Equal(0, result.ExitCode);
        Approved.Check("fit", result.Output, _folder.Path);
    }

    [Fact]
    public void Study_Json_IsAsApproved()
    {
        TestModels.WriteBox(_folder["plate.stl"], 120, 80, 6);
        File.WriteAllText(_folder["small.toml"], """
            name = "A small study"

            [[project]]
            name = "shelf"

            [[project.part]]
            file = "plate.stl"
            quantity = 2
            material = "ASA"

            [[project.part]]
            name = "wish"
            dimensions_mm = [265, 240, 310]
            """);
        CommandResult result = BuiltCommand.Run(
            "study", _folder["small.toml"], "--store", _folder["store"], "--out", _folder["out"], "--no-models",
            "--machine", "generic-210-enclosed", "--json");
        Assert.True(result.ExitCode == 0, result.Error);
        Approved.Check("study", result.Output, _folder.Path);
        Assert.Equal(
            JsonDocument.Parse(File.ReadAllText(_folder["out", "study.json"])).RootElement.GetProperty("headline").GetString(),
            JsonDocument.Parse(result.Output).RootElement.GetProperty("headline").GetString());
    }

    [Fact]
    public void PartsCsv_IsAsRfc4180HasIt()
    {
        TestModels.WriteBox(_folder["models", "odd, \"quoted\".stl"], 12, 8, 6);
        BuiltCommand.Run("study", _folder["models"], "--store", _folder["store"], "--out", _folder["out"], "--machine", "generic-105-open");
        string[] lines = File.ReadAllText(_folder["out", "parts.csv"]).Split("\r\n");
        Assert.Equal(3, lines.Length);
        Assert.Equal("", lines[2]);
        Assert.StartsWith("project,part,file,object,", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("\"odd, \"\"quoted\"\"\",\"odd, \"\"quoted\"\"\",\"odd, \"\"quoted\"\".stl\",,false,1,", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_WithProof_IsAcceptedByVerify()
    {
        TestModels.WriteBox(_folder["plate.stl"], 120, 80, 6);
        Assert.Equal(0, BuiltCommand.Run("fit", _folder["plate.stl"], "--box", "110,110,60", "--proof", _folder["proof.json"]).ExitCode);
        CommandResult verified = BuiltCommand.Run("verify", _folder["proof.json"], "--json");
        Assert.Equal(0, verified.ExitCode);
        JsonElement proof = Assert.Single(JsonDocument.Parse(verified.Output).RootElement.GetProperty("proofs").EnumerateArray());
        Assert.True(proof.GetProperty("accepted").GetBoolean());
        File.WriteAllText(_folder["other.json"], "[]");
        Assert.Equal(2, BuiltCommand.Run("verify", _folder["other.json"]).ExitCode);
    }

    [Fact]
    public void MachineList_NamesEveryBundledMachine()
    {
        CommandResult result = BuiltCommand.Run("machine", "list");
        Assert.Equal(0, result.ExitCode);
        foreach (Platewright.Machines.Machine machine in Platewright.Machines.MachineCatalog.Bundled)
            Assert.Contains(machine.Id, result.Output, StringComparison.Ordinal);
    }
}
