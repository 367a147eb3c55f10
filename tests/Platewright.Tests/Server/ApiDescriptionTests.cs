using System.Diagnostics;
using Platewright.Tests.Study;

namespace Platewright.Tests.Server;

/// <summary>
/// The committed OpenAPI description is what the app says of itself, and the committed TypeScript is what is generated from it. Run with
/// PLATEWRIGHT_APPROVE=1 to renew both, then read the difference.
/// </summary>
public sealed class ApiDescriptionTests : IDisposable
{
    private static readonly string Description = Path.Combine(Repository.Root, "docs", "api", "openapi.json");
    private static readonly string Types = Path.Combine(Repository.Root, "web", "src", "api.ts");

    private readonly ScratchFolder _folder = new();

    private static bool Approves => Environment.GetEnvironmentVariable("PLATEWRIGHT_APPROVE") == "1";

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Description_AndTypes_AreThoseOfTheApp()
    {
        await using RunningApp app = await RunningApp.Start(_folder["store"]);
        string received = (await app.Client.GetStringAsync("/api/openapi.json", TestContext.Current.CancellationToken)).ReplaceLineEndings("\n").TrimEnd() + "\n";
        if (Approves) File.WriteAllText(Description, received);
        Assert.Equal(File.ReadAllText(Description).ReplaceLineEndings("\n"), received);

        string generated = Approves ? Types : _folder["api.ts"];
        ProcessStartInfo start = new("node") { WorkingDirectory = Path.Combine(Repository.Root, "web"), UseShellExecute = false, RedirectStandardError = true, RedirectStandardOutput = true };
        foreach (string argument in (string[])["node_modules/openapi-typescript/bin/cli.js", "../docs/api/openapi.json", "--output", generated]) start.ArgumentList.Add(argument);
        using Process generator = Process.Start(start)!;
        string said = await generator.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await generator.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(generator.ExitCode == 0, said);
        Assert.Equal(File.ReadAllText(Types).ReplaceLineEndings("\n"), File.ReadAllText(generated).ReplaceLineEndings("\n"));
    }
}
