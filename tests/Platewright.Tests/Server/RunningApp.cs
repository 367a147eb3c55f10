using System.Net.Http.Json;
using System.Text.Json;
using System.Text.Json.Nodes;
using Platewright.Server;
using Platewright.Study.Documents;
using Platewright.Tests.Study;

namespace Platewright.Tests.Server;

/// <summary>The local app on a free port with a store of its own, and a client that asks it.</summary>
internal sealed class RunningApp : IAsyncDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(3);

    private readonly LocalApp _app;

    private RunningApp(LocalApp app)
    {
        _app = app;
        Client = new HttpClient { BaseAddress = app.Address, Timeout = Patience };
    }

    public HttpClient Client { get; }

    public Uri Address => _app.Address;

    public static async Task<RunningApp> Start(string store, Func<LocalAppSettings, LocalAppSettings>? change = null)
    {
        LocalAppSettings settings = new(store, Port: 0);
        return new RunningApp(await LocalApp.Start(change?.Invoke(settings) ?? settings, TestContext.Current.CancellationToken));
    }

    public Uri Open(string path) => _app.Open(path);

    /// <summary>Begins a study with models, each under the path given.</summary>
    public async Task<string> Begin(string name, params (string Path, string File)[] files)
    {
        string id = (string)(await Sent(HttpMethod.Post, "/api/studies", new { name }))["id"]!;
        if (files.Length > 0) await Send(id, files);
        return id;
    }

    public async Task<UploadDocument> Send(string id, params (string Path, string File)[] files)
    {
        using MultipartFormDataContent form = [];
        foreach ((string path, string file) in files) form.Add(new ByteArrayContent(File.ReadAllBytes(file)), "files", path);
        using HttpResponseMessage response = await Client.PostAsync($"/api/studies/{id}/files", form);
        Assert.True(response.IsSuccessStatusCode, await response.Content.ReadAsStringAsync());
        return (await response.Content.ReadFromJsonAsync<UploadDocument>(DocumentJson.Compact))!;
    }

    public async Task<JsonObject> Get(string path) => JsonNode.Parse(await Client.GetStringAsync(path))!.AsObject();

    public async Task<JsonObject> Sent(HttpMethod method, string path, object? body = null, int status = 0)
    {
        using HttpRequestMessage request = new(method, path);
        if (body is not null) request.Content = JsonContent.Create(body, options: DocumentJson.Compact);
        using HttpResponseMessage response = await Client.SendAsync(request);
        string text = await response.Content.ReadAsStringAsync();
        if (status == 0) Assert.True(response.IsSuccessStatusCode, text);
        else Assert.True((int)response.StatusCode == status, $"{(int)response.StatusCode}: {text}");
        return text.Length == 0 ? [] : JsonNode.Parse(text)!.AsObject();
    }

    /// <summary>Starts a study and waits for its end.</summary>
    public async Task<RunDocument> RunToEnd(string id)
    {
        await Sent(HttpMethod.Post, $"/api/studies/{id}/run");
        return await WaitUntil(id, run => run.State is "finished" or "failed" or "stopped");
    }

    /// <summary>Listens to the run's events until one is as wanted.</summary>
    public async Task<RunDocument> WaitUntil(string id, Func<RunDocument, bool> wanted)
    {
        using CancellationTokenSource patience = new(Patience);
        using Stream stream = await Client.GetStreamAsync($"/api/studies/{id}/progress", patience.Token);
        using StreamReader reader = new(stream);
        while (await reader.ReadLineAsync(patience.Token) is { } line)
        {
            if (!line.StartsWith("data: ", StringComparison.Ordinal)) continue;
            RunDocument run = JsonSerializer.Deserialize<RunDocument>(line["data: ".Length..], DocumentJson.Compact)!;
            if (wanted(run)) return run;
        }
        throw new InvalidOperationException("The events ended before the one that was waited for.");
    }

    public async ValueTask DisposeAsync()
    {
        Client.Dispose();
        await _app.DisposeAsync();
    }

    /// <summary>A folder of boxes: quick to study.</summary>
    public static (string Path, string File)[] Boxes(ScratchFolder folder, params (string Path, double Edge)[] boxes) =>
    [
        .. boxes.Select(b =>
        {
            string file = folder["sent", b.Path.Replace('/', '_')];
            TestModels.WriteBox(file, b.Edge, b.Edge / 2, b.Edge / 3);
            return (b.Path, file);
        }),
    ];
}
