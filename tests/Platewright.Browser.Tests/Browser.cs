using Microsoft.Playwright;
using Platewright.Report;
using Platewright.Tests.Report;

[assembly: AssemblyFixture(typeof(Platewright.Browser.Tests.Browser))]

namespace Platewright.Browser.Tests;

/// <summary>One Chromium for all tests, and the fixture's reports on disk. Without a Chromium the tests are skipped.</summary>
public sealed class Browser : IAsyncLifetime
{
    private const float PatienceMs = 60_000;

    private readonly string _folder = Path.Combine(Path.GetTempPath(), $"platewright-report-{Guid.NewGuid():N}");
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public string Report => Path.Combine(_folder, "report.html");

    public string ReportWithoutModels => Path.Combine(_folder, "report-no-models.html");

    public string ReportWithoutBuilds => Path.Combine(_folder, "report-no-builds.html");

    public async ValueTask InitializeAsync()
    {
        // Other tests keep the processors busy: a slow answer is no wrong one.
        Assertions.SetDefaultExpectTimeout(PatienceMs);
        if (FindChromium() is not { } chromium) return;
        Directory.CreateDirectory(_folder);
        ReportWriter.Write(FixtureStudy.WithModels, Report);
        ReportWriter.Write(FixtureStudy.WithoutModels, ReportWithoutModels);
        ReportWriter.Write(FixtureStudy.WithoutBuilds, ReportWithoutBuilds);
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = chromium,
            // Software drawing, so that 3D is tested on machines without a graphics card.
            Args = ["--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader",
                "--disable-background-networking"],
        });
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (Directory.Exists(_folder)) Directory.Delete(_folder, recursive: true);
    }

    /// <summary>The report opened from disk with the network off.</summary>
    public async Task<OpenReport> OpenAsync(
        string? file = null, int width = 1280, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        IBrowserContext context = await NewContextAsync(width, height, scheme, offline: true);
        var open = new OpenReport(context, await context.NewPageAsync());
        await open.GoAsync(new Uri(file ?? Report));
        return open;
    }

    /// <summary>A browser of its own, with nothing remembered. Without a Chromium the test is skipped.</summary>
    public async Task<IBrowserContext> NewContextAsync(int width, int height, ColorScheme scheme, bool offline)
    {
        Assert.SkipWhen(_browser is null, "No Chromium on the PATH; on Debian: apt-get install chromium.");
        return await _browser!.NewContextAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            ColorScheme = scheme,
            ReducedMotion = ReducedMotion.Reduce,
            Offline = offline,
            Locale = "en-GB",
        });
    }

    private static string? FindChromium()
    {
        string[] names = OperatingSystem.IsWindows() ? ["chrome.exe"] : ["chromium", "chromium-browser"];
        return (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .SelectMany(folder => names.Select(name => Path.Combine(folder, name)))
            .FirstOrDefault(File.Exists);
    }
}
