using System.Net;
using Platewright.Tests.Study;

namespace Platewright.Tests.Server;

/// <summary>The app answers only who asks it by a loopback name from a page of its own, and keeps paths inside its folders.</summary>
public sealed class GuardTests : IDisposable
{
    private readonly ScratchFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("rebound.example", null, null, HttpStatusCode.Forbidden)]
    [InlineData("127.0.0.1.rebound.example", null, null, HttpStatusCode.Forbidden)]
    [InlineData("localhost:1", null, null, HttpStatusCode.Forbidden)]
    [InlineData(null, "http://rebound.example", null, HttpStatusCode.Forbidden)]
    [InlineData(null, "null", null, HttpStatusCode.Forbidden)]
    [InlineData(null, "https://localhost:{port}", null, HttpStatusCode.Forbidden)]
    [InlineData(null, "http://localhost:1", null, HttpStatusCode.Forbidden)]
    [InlineData(null, null, "cross-site", HttpStatusCode.Forbidden)]
    [InlineData(null, null, "same-site", HttpStatusCode.Forbidden)]
    [InlineData(null, "http://localhost:{port}", "same-origin", HttpStatusCode.OK)]
    [InlineData("127.0.0.1:{port}", "http://127.0.0.1:{port}", null, HttpStatusCode.OK)]
    [InlineData(null, null, "none", HttpStatusCode.OK)]
    [InlineData(null, null, null, HttpStatusCode.OK)]
    public async Task Request_OfAnotherOrigin_IsRefused(string? host, string? origin, string? site, HttpStatusCode expected)
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        foreach (HttpMethod method in (HttpMethod[])[HttpMethod.Get, HttpMethod.Post])
        {
            using HttpRequestMessage request = new(method, "/api/studies");
            if (method == HttpMethod.Post) request.Content = new StringContent("{\"name\":\"x\"}", new System.Net.Http.Headers.MediaTypeHeaderValue("application/json"));
            if (host is not null) request.Headers.Host = WithPort(host);
            if (origin is not null) request.Headers.Add("Origin", WithPort(origin));
            if (site is not null) request.Headers.Add("Sec-Fetch-Site", site);
            using HttpResponseMessage response = await app.Client.SendAsync(request, TestContext.Current.CancellationToken);
            Assert.Equal(expected == HttpStatusCode.OK && method == HttpMethod.Post ? HttpStatusCode.Created : expected, response.StatusCode);
        }

        string WithPort(string text) => text.Replace("{port}", $"{app.Address.Port}", StringComparison.Ordinal);
    }

    [Fact]
    public async Task Answers_CarryAStrictPolicy()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        foreach (string path in (string[])["/", "/study/none", "/api/studies", "/api/none"])
        {
            using HttpResponseMessage response = await app.Client.GetAsync(path, TestContext.Current.CancellationToken);
            string policy = response.Headers.GetValues("Content-Security-Policy").Single();
            Assert.StartsWith("default-src 'none'; script-src 'sha256-", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe-eval", policy, StringComparison.Ordinal);
            Assert.Equal("nosniff", response.Headers.GetValues("X-Content-Type-Options").Single());
        }
    }

    [Theory]
    [InlineData("../outside.stl")]
    [InlineData("a/../../outside.stl")]
    [InlineData("/etc/outside.stl")]
    [InlineData("C:\\outside.stl")]
    [InlineData("a\\..\\..\\outside.stl")]
    [InlineData("a//b.stl")]
    [InlineData("aux.stl")]
    [InlineData("a/nul/b.stl")]
    [InlineData("dot./b.stl")]
    public async Task Upload_WithAPathThatLeavesTheStudy_IsRefused(string path)
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string file = _folder["box.stl"];
        TestModels.WriteBox(file, 10, 10, 10);
        string id = await app.Begin("guarded");
        var sent = await app.Send(id, (path, file), ("kept.stl", file));
        Assert.Equal(["kept.stl"], sent.Kept);
        Assert.Single(sent.Refused);
        Assert.Empty(Directory.EnumerateFiles(_folder.Path, "outside.stl", SearchOption.AllDirectories));
    }

    [Theory]
    [InlineData("..")]
    [InlineData("..%2F..")]
    [InlineData("%2Fetc")]
    [InlineData(".guarded.new")]
    public async Task Study_IdThatIsAPath_IsNotFound(string id)
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        using HttpResponseMessage response = await app.Client.GetAsync($"/api/studies/{id}/settings", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.NotFound, response.StatusCode);
    }

    [Fact]
    public async Task Upload_LargerThanTheLimit_IsRefusedAndLeavesNothing()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"], s => s with { MostUploadBytes = 4096 });
        string id = await app.Begin("full");
        using MultipartFormDataContent form = [];
        form.Add(new ByteArrayContent(new byte[20_000]), "files", "large.stl");
        using HttpResponseMessage response = await app.Client.PostAsync($"/api/studies/{id}/files", form, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, response.StatusCode);
        Assert.DoesNotContain(
            Directory.EnumerateFiles(_folder["store"], "*", SearchOption.AllDirectories),
            f => f.EndsWith(".stl", StringComparison.Ordinal) || f.EndsWith(".part", StringComparison.Ordinal));
    }
}
