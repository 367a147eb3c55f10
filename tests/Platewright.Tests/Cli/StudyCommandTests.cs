using System.IO.Compression;
using System.Text.Json;
using Platewright.Tests.Study;

namespace Platewright.Tests.Cli;

/// <summary>The study from a folder to its files.</summary>
public sealed class StudyCommandTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Study_OfAMessyFolder_UsesWhatCanBeUsedAndListsTheRest()
    {
        TestModels.WriteBox(_folder["models", "loose.stl"], 30, 20, 10);
        TestModels.WriteBox(_folder["models", "lamp", "foot.stl"], 90, 90, 12);
        TestModels.WriteBox(_folder["models", "lamp", "deep", "shade.stl"], 180, 150, 140);
        TestModels.WriteBox(_folder["packed", "pin.stl"], 5, 5, 40);
        TestModels.WriteBox(_folder["packed", "cap.stl"], 15, 15, 6);
        ZipFile.CreateFromDirectory(_folder["packed"], _folder["models", "pack.zip"]);
        File.WriteAllText(_folder["models", "lamp", "broken.stl"], "solid broken\nfacet\n");

        CommandResult result = Study("out");

        Assert.Equal(1, result.ExitCode);
        using JsonDocument study = JsonDocument.Parse(File.ReadAllText(_folder["out", "study.json"]));
        JsonElement root = study.RootElement;
        Assert.Equal(["lamp", "loose", "pack"], root.GetProperty("projects").EnumerateArray().Select(p => p.GetProperty("name").GetString()));
        Assert.Equal(5, root.GetProperty("parts").GetArrayLength());
        JsonElement unusable = Assert.Single(root.GetProperty("unusable").EnumerateArray());
        Assert.Equal("lamp/broken.stl", unusable.GetProperty("file").GetString());
        Assert.True(File.Exists(_folder["out", "report.html"]));
        Assert.Contains("lamp/broken.stl", result.Output, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(_folder["out"], "*.part"));
    }

    [Fact]
    public void Study_SecondRun_ComputesNothingAndSaysTheSame()
    {
        WriteLumps(6);
        CommandResult first = Study("one"), second = Study("two");
        Assert.Contains("6 examine", first.Error, StringComparison.Ordinal);
        Assert.Contains("Computed: nothing.", second.Error, StringComparison.Ordinal);
        Assert.Equal(StudyResults.Json(_folder["one"]), StudyResults.Json(_folder["two"]));
        Assert.Equal(File.ReadAllText(_folder["one", "parts.csv"]), File.ReadAllText(_folder["two", "parts.csv"]));
    }

    [Fact]
    public void Study_AfterOneFileChanged_ComputesOnlyThatFile()
    {
        WriteLumps(4);
        Study("one");
        TestModels.WriteLump(_folder["models", "lump2.stl"], seed: 99);
        CommandResult second = Study("two");
        Assert.Contains("1 examine", second.Error, StringComparison.Ordinal);
        Assert.Contains("1 need", second.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Study_OfRenamedFile_KnowsItsContent()
    {
        WriteLumps(2);
        Study("one");
        File.Move(_folder["models", "lump1.stl"], _folder["models", "renamed.stl"]);
        CommandResult second = Study("two");
        // The sizing answer names parts and projects; nothing else knows what a file is called.
        Assert.Contains("Computed: 1 size.", second.Error, StringComparison.Ordinal);
        Assert.Contains("renamed.stl", File.ReadAllText(_folder["two", "study.json"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Study_OnOneAndOnManyThreads_SaysTheSame()
    {
        WriteLumps(6);
        string[] results = [.. new[] { 1, 4 }.Select(processors =>
        {
            string name = $"on{processors}";
            using BuiltCommand command = BuiltCommand.Start(
                processors, "study", _folder["models"], "--store", _folder[$"store{processors}"], "--out", _folder[name],
                "--machine", "generic-105-open", "--machine", "generic-330-enclosed");
            Assert.Equal(0, command.WaitForEnd().ExitCode);
            return StudyResults.Json(_folder[name]);
        })];
        Assert.Equal(results[0], results[1]);
    }

    [Fact]
    public void Study_FromAReadOnlyFolder_WritesNothingThere()
    {
        WriteLumps(1);
        string[] before = Directory.GetFileSystemEntries(_folder["models"]);
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(_folder["models"], UnixFileMode.UserRead | UnixFileMode.UserExecute);
        try
        {
            Assert.Equal(0, Study("out").ExitCode);
            Assert.Equal(before, Directory.GetFileSystemEntries(_folder["models"]));
        }
        finally
        {
            if (!OperatingSystem.IsWindows())
                File.SetUnixFileMode(_folder["models"], UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    [Fact]
    public void Study_WithoutModels_LeavesTheirGeometryOut()
    {
        TestModels.WriteBox(_folder["models", "loose.stl"], 30, 20, 10);
        Study("with");
        Study("without", "--no-models");
        Assert.Contains("\"model\":{", File.ReadAllText(_folder["with", "study.json"]), StringComparison.Ordinal);
        string without = File.ReadAllText(_folder["without", "study.json"]);
        Assert.Contains("\"model\":null", without, StringComparison.Ordinal);
        Assert.DoesNotContain("\"model\":{", without, StringComparison.Ordinal);
        Assert.Contains("\"picture\":\"data:image/png", without, StringComparison.Ordinal);
        Assert.DoesNotContain("\"positions\":", File.ReadAllText(_folder["without", "report.html"]), StringComparison.Ordinal);
    }

    // Two are enough to tell machines apart, and estimates take their time.
    private static readonly string[] Machines = ["--machine", "generic-105-open", "--machine", "generic-330-enclosed"];

    private void WriteLumps(int count)
    {
        for (int i = 0; i < count; i++) TestModels.WriteLump(_folder["models", $"lump{i}.stl"], seed: i);
    }

    private CommandResult Study(string folder, params string[] more) =>
        BuiltCommand.Run(["study", _folder["models"], "--store", _folder["store"], "--out", _folder[folder], .. Machines, .. more]);
}
