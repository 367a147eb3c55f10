using System.IO.Compression;
using System.Net;
using System.Text.Json.Nodes;
using Platewright.Study.Documents;
using Platewright.Tests.Cli;
using Platewright.Tests.Study;

namespace Platewright.Tests.Server;

/// <summary>What a user does in the app: put files in, ask, run, stop, change, share, compare.</summary>
public sealed class AppStudyTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Study_OfUploadedFiles_HasAProjectForEachFileAndFolder()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string id = await app.Begin("Small things", RunningApp.Boxes(_folder, ("clip.stl", 30), ("hood/shell.stl", 250), ("hood/seal.stl", 60)));
        RunDocument run = await app.RunToEnd(id);
        Assert.Equal("finished", run.State);
        JsonObject study = await app.Get($"/api/studies/{id}/result");
        Assert.Equal(["clip", "hood"], study["projects"]!.AsArray().Select(p => (string)p!["name"]!));
        Assert.Equal(3, study["parts"]!.AsArray().Count);
        JsonObject kept = await app.Get($"/api/studies/{id}");
        Assert.Equal((string)study["headline"]!, (string)kept["result"]!["headline"]!);
        Assert.True((bool)kept["result"]!["current"]!);
    }

    [Fact]
    public async Task Result_OfTheSameStudy_IsTheJsonThatTheCommandWrites()
    {
        TestModels.WriteBox(_folder["work", "models", "clip.stl"], 30, 20, 10);
        TestModels.WriteLump(_folder["work", "models", "lump.stl"], seed: 3);
        File.WriteAllText(_folder["work", "study.toml"], "name = \"Both ways\"\nfolder = \"models\"\nmachines = [\"generic-105-open\", \"generic-210-enclosed\"]\n");
        string file = _folder["work", "study.toml"];
        CommandResult command = BuiltCommand.Run("study", file, "--store", _folder["command-store"], "--out", _folder["out"]);
        Assert.Equal(0, command.ExitCode);

        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string id = app.Open(file).Segments[^1];
        await app.WaitUntil(id, r => r.State == "finished");
        JsonNode fromServer = JsonNode.Parse(await app.Client.GetStringAsync($"/api/studies/{id}/result", TestContext.Current.CancellationToken))!;
        JsonNode fromFile = JsonNode.Parse(File.ReadAllText(_folder["out", "study.json"]))!;
        fromServer["seconds"] = 0;
        fromFile["seconds"] = 0;
        Assert.Equal(fromFile.ToJsonString(), fromServer.ToJsonString());

        foreach (string export in (string[])["parts.csv", "report.html", "study.toml"])
            Assert.NotEmpty(await app.Client.GetStringAsync($"/api/studies/{id}/export/{export}", TestContext.Current.CancellationToken));
        Assert.Equal(File.ReadAllText(_folder["out", "parts.csv"]), await app.Client.GetStringAsync($"/api/studies/{id}/export/parts.csv", TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task Run_StoppedOrWithTheAppGone_GoesOnFromThere()
    {
        (string, string)[] lumps = [.. Enumerable.Range(0, 8).Select(i =>
        {
            string file = _folder["sent", $"lump{i}.stl"];
            TestModels.WriteLump(file, i, rings: 8);
            return ($"lump{i}.stl", file);
        })];
        string id;
        await using (RunningApp app = await RunningApp.Start(_folder["store"]))
        {
            id = await app.Begin("Stopped", lumps);
            await app.Sent(HttpMethod.Post, $"/api/studies/{id}/run");
            await app.WaitUntil(id, r => r.Stage == "Fitting parts" && r.Done >= 1);
            await app.Sent(HttpMethod.Post, $"/api/studies/{id}/stop");
            RunDocument stopped = await app.WaitUntil(id, r => r.State is "stopped" or "finished");
            Assert.Equal("stopped", stopped.State);
            Assert.Contains("kept", stopped.Sentence, StringComparison.Ordinal);
        }
        await using RunningApp again = await RunningApp.Start(_folder["store"]);
        Assert.Equal("stopped", (string)(await again.Get($"/api/studies/{id}"))["run"]!["state"]!);
        RunDocument finished = await again.RunToEnd(id);
        Assert.Equal("finished", finished.State);
        Assert.DoesNotContain("found 0 ", finished.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settings_ThatAreWrong_AreRefusedWithTheirKeysAndChangeNothing()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string id = await app.Begin("Asked", RunningApp.Boxes(_folder, ("clip.stl", 30)));
        JsonObject settings = (await app.Get($"/api/studies/{id}/settings"))["settings"]!.AsObject();
        settings["tight_mm"] = -3;
        settings["project"]![0]!["material"] = "PLLA";
        JsonObject refused = await app.Sent(HttpMethod.Put, $"/api/studies/{id}/settings", new { settings }, 422);
        Assert.Equal(
            ["project[1].material", "tight_mm"], refused["fields"]!.AsArray().Select(f => (string)f!["key"]!).Order(StringComparer.Ordinal));
        Assert.Null((await app.Get($"/api/studies/{id}/settings"))["settings"]!["tight_mm"]);

        settings["tight_mm"] = 3;
        settings["project"]![0]!["material"] = "PLA";
        await app.Sent(HttpMethod.Put, $"/api/studies/{id}/settings", new { settings });
        Assert.Equal(3, (double)(await app.Get($"/api/studies/{id}/settings"))["settings"]!["tight_mm"]!);
        Assert.Equal(3, (double)(await RunAndRead(app, id))["options"]!["tight_mm"]!);
    }

    [Fact]
    public async Task Upload_OfAZip_TakesItsModelsWithoutTheSharedFolder()
    {
        string zip = _folder["pack.zip"];
        using (ZipArchive pack = ZipFile.Open(zip, ZipArchiveMode.Create))
        {
            foreach ((string path, string file) in RunningApp.Boxes(_folder, ("things/clip.stl", 30), ("things/hood/shell.stl", 80)))
                pack.CreateEntryFromFile(file, path);
            pack.CreateEntry("things/readme.txt");
        }
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string id = await app.Begin("Packed", ("pack.zip", zip));
        JsonArray files = (await app.Get($"/api/studies/{id}/files"))["files"]!.AsArray();
        Assert.Equal(["clip.stl", "hood/shell.stl"], files.Select(f => (string)f!["path"]!));
        File.WriteAllBytes(zip, [1, 2, 3]);
        UploadDocument broken = await app.Send(id, ("broken.zip", zip));
        Assert.Contains("broken.zip", Assert.Single(broken.Refused).Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Upload_OfAnotherFileUnderAKnownName_WritesNothingOver()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        (string Path, string File)[] first = RunningApp.Boxes(_folder, ("clip.stl", 30));
        string id = await app.Begin("Twice", first);
        Assert.Equal(["clip.stl"], (await app.Send(id, first)).Kept);
        TestModels.WriteBox(first[0].File, 44, 22, 11);
        Assert.Equal(["clip (2).stl"], (await app.Send(id, first)).Kept);
        Assert.Equal(2, (await app.Get($"/api/studies/{id}/files"))["files"]!.AsArray().Count);
        using HttpResponseMessage deleted = await app.Client.DeleteAsync($"/api/studies/{id}/files?path=clip.stl", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, deleted.StatusCode);
        JsonArray projects = (await app.Get($"/api/studies/{id}/settings"))["settings"]!["project"]!.AsArray();
        Assert.Equal(["clip (2)"], projects.Select(p => (string)p!["name"]!));
    }

    [Fact]
    public async Task WhatIf_ChangesTheAnswerAndRemembersNothing_AssumeKeepsIt()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string id = await app.Begin("Asked", RunningApp.Boxes(_folder, ("clip.stl", 30), ("shell.stl", 120)));
        JsonObject before = await RunAndRead(app, id);
        Dictionary<string, double> changes = new() { ["cost.energy_per_kwh"] = 0.44 };
        JsonObject asked = await app.Sent(HttpMethod.Post, $"/api/studies/{id}/what-if", new { changes });
        Assert.True(Energy(asked) > Energy(before["sizing"]!));
        Assert.Null((await app.Get($"/api/studies/{id}/settings"))["settings"]!["cost"]);

        await app.Sent(HttpMethod.Post, $"/api/studies/{id}/assume", new { changes });
        Assert.False((bool)(await app.Get($"/api/studies/{id}"))["result"]!["current"]!);
        Assert.Equal(Energy(asked), Energy((await RunAndRead(app, id))["sizing"]!));
        await app.Sent(HttpMethod.Post, $"/api/studies/{id}/what-if", new { changes = new Dictionary<string, double> { ["cost.energy_per_kwh"] = -1 } }, 422);

        static double Energy(JsonNode sizing) => sizing["machines"]!.AsArray().Sum(m => (double?)m!["per_month"]?["energy"] ?? 0);
    }

    [Fact]
    public async Task Comparison_OfTwoStudies_NamesWhatDiffers()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string one = await app.Begin("One", RunningApp.Boxes(_folder, ("clip.stl", 30), ("shell.stl", 300)));
        string other = await app.Begin("Other", RunningApp.Boxes(_folder, ("clip.stl", 30), ("shell.stl", 90), ("hood.stl", 50)));
        await RunAndRead(app, one);
        await RunAndRead(app, other);
        JsonObject found = await app.Get($"/api/compare?first={one}&second={other}");
        Assert.Equal(["hood"], found["only_second"]!.AsArray().Select(n => (string)n!));
        Assert.Contains(found["changed"]!.AsArray(), c => (string)c!["project"]! == "shell");
        Assert.DoesNotContain(found["changed"]!.AsArray(), c => (string)c!["project"]! == "clip");
    }

    [Fact]
    public async Task Machine_FromTheInterview_TakesPartInAStudy()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        using MultipartFormDataContent form = new() { { new StringContent("Bench nine"), "name" }, { new StringContent("90, 90, 100"), "size" }, { new StringContent("250 EUR"), "price" } };
        using HttpResponseMessage made = await app.Client.PostAsync("/api/machines/interview", form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Created, made.StatusCode);
        string id = await app.Begin("Own machine", RunningApp.Boxes(_folder, ("clip.stl", 30)));
        JsonObject described = await app.Get($"/api/studies/{id}/settings");
        string value = (string)described["machine_choices"]!.AsArray().Single(c => (string)c!["name"]! == "Bench nine")!["value"]!;
        JsonObject settings = described["settings"]!.AsObject();
        settings["machines"] = new JsonArray(value, "generic-105-open");
        await app.Sent(HttpMethod.Put, $"/api/studies/{id}/settings", new { settings });
        Assert.Equal(["bench-nine", "generic-105-open"], (await RunAndRead(app, id))["machines"]!.AsArray().Select(m => (string)m!["id"]!));

        using MultipartFormDataContent wrong = new() { { new StringContent("Bench ten"), "name" }, { new StringContent("wide"), "size" } };
        using HttpResponseMessage refused = await app.Client.PostAsync("/api/machines/interview", wrong, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
        JsonNode why = JsonNode.Parse(await refused.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!;
        Assert.Equal("size", (string)why["fields"]![0]!["key"]!);
    }

    private static async Task<JsonObject> RunAndRead(RunningApp app, string id)
    {
        RunDocument run = await app.RunToEnd(id);
        Assert.True(run.State == "finished", run.Sentence);
        return await app.Get($"/api/studies/{id}/result");
    }
}
