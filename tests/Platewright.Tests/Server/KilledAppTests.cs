using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Platewright.Tests.Cli;
using Platewright.Tests.Study;

namespace Platewright.Tests.Server;

/// <summary>The app's process killed again and again, while files come in and a study runs: nothing that was kept is lost.</summary>
public sealed class KilledAppTests : IDisposable
{
    private const int Parts = 10;

    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task App_KilledAtAnyMoment_GoesOnWithTheSameResult()
    {
        for (int i = 0; i < Parts; i++) TestModels.WriteLump(_folder["models", $"lump{i}.stl"], seed: i, rings: 8);
        string id = "";
        for (int kill = 0; kill < 4; kill++)
        {
            int wait = kill;
            await With(async client =>
            {
                if (kill == 0) id = await Begin(client);
                JsonNode study = await Read(client, $"/api/studies/{id}");
                Assert.Equal(Parts, (int)study["files"]!);
                if (kill > 0) Assert.Contains((string)study["run"]!["state"]!, (string[])["stopped", "finished"]);
                (await client.PostAsync($"/api/studies/{id}/run", null, TestContext.Current.CancellationToken)).EnsureSuccessStatusCode();
                await Task.Delay(150 + 350 * wait, TestContext.Current.CancellationToken);
            });
        }
        JsonNode? rough = null;
        await With(async client =>
        {
            (await client.PostAsync($"/api/studies/{id}/run", null, TestContext.Current.CancellationToken)).EnsureSuccessStatusCode();
            JsonNode study;
            do
            {
                await Task.Delay(100, TestContext.Current.CancellationToken);
                study = await Read(client, $"/api/studies/{id}");
            }
            while ((string)study["run"]!["state"]! is "going" or "waiting");
            Assert.Equal("finished", (string)study["run"]!["state"]!);
            rough = await Read(client, $"/api/studies/{id}/result");
        });
        string file = Path.Combine(_folder["store", "studies"], id, "study.toml");
        Assert.Equal(0, BuiltCommand.Run("study", file, "--store", _folder["calm-store"], "--out", _folder["calm"]).ExitCode);
        JsonNode calm = JsonNode.Parse(File.ReadAllText(_folder["calm", "study.json"]))!;
        calm["seconds"] = 0;
        rough!["seconds"] = 0;
        Assert.Equal(calm.ToJsonString(), rough.ToJsonString());
    }

    private async Task<string> Begin(HttpClient client)
    {
        using HttpResponseMessage made = await client.PostAsJsonAsync("/api/studies", new { name = "Rough" }, TestContext.Current.CancellationToken);
        string id = (string)JsonNode.Parse(await made.Content.ReadAsStringAsync(TestContext.Current.CancellationToken))!["id"]!;
        using MultipartFormDataContent form = [];
        foreach (string path in Directory.EnumerateFiles(_folder["models"]))
            form.Add(new ByteArrayContent(await File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken)), "files", Path.GetFileName(path));
        (await client.PostAsync($"/api/studies/{id}/files", form, TestContext.Current.CancellationToken)).EnsureSuccessStatusCode();
        return id;
    }

    private static async Task<JsonNode> Read(HttpClient client, string path) =>
        JsonNode.Parse(await client.GetStringAsync(path, TestContext.Current.CancellationToken))!;

    /// <summary>Starts the app as a process, does something, and kills it.</summary>
    private async Task With(Func<HttpClient, Task> action)
    {
        using ServedApp app = await ServedApp.Start(_folder["store"]);
        using HttpClient client = new() { BaseAddress = app.Address };
        await action(client);
    }
}
