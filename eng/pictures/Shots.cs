using Microsoft.Playwright;

namespace Platewright.Pictures;

/// <summary>One picture of one place.</summary>
/// <param name="Name">Of the file, without its extension.</param>
/// <param name="Path">In the app.</param>
/// <param name="At">What is scrolled to the top; null for the top of the page.</param>
internal sealed record Shot(string Name, string Path, string? At, int Width, int Height, ColorScheme Scheme = ColorScheme.Light);

internal static class Shots
{
    private const int Wide = 1280, Phone = 360, Patience = 600_000;

    public static IEnumerable<Shot> OfReadme(Uri study) =>
    [
        new("size-line", study.AbsolutePath, "#size-line", Wide, 1180),
        new("sheet", study.AbsolutePath, "#sheet", Wide, 860),
        new("matrix", study.AbsolutePath, "#matrix", Wide, 900),
        new("part", study.AbsolutePath, "#part", Wide, 900, ColorScheme.Dark),
        new("set-up", $"{study.AbsolutePath}/set-up", "#projects", Wide, 900),
    ];

    public static IEnumerable<Shot> Everything(Uri study)
    {
        (string Name, string Path, string? At)[] places =
        [
            ("shelf", "/", null), ("study", study.AbsolutePath, null), ("line", study.AbsolutePath, "#size-line"), ("sheet", study.AbsolutePath, "#sheet"),
            ("matrix", study.AbsolutePath, "#matrix"), ("part", study.AbsolutePath, "#part"),
            ("choice", study.AbsolutePath, "#choice"), ("set-up", $"{study.AbsolutePath}/set-up", null), ("machines", "/machines", null),
            ("interview", "/machines/new", null), ("machine", "/machines/generic-210-enclosed", null), ("recipes", "/recipes/use", null),
            ("compare", $"/compare/{study.Segments[^1]}/{study.Segments[^1]}", null),
        ];
        foreach ((string name, string path, string? at) in places)
        {
            yield return new($"{name}-wide", path, at, 1400, 1100);
            yield return new($"{name}-phone", path, at, Phone, 1400, ColorScheme.Dark);
        }
    }

    public static async Task Take(IBrowser browser, Uri app, Shot shot, string folder)
    {
        await using IBrowserContext context = await browser.NewContextAsync(new()
        {
            ViewportSize = new() { Width = shot.Width, Height = shot.Height },
            ColorScheme = shot.Scheme,
            ReducedMotion = ReducedMotion.Reduce,
            Locale = "en-GB",
        });
        IPage page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(app, shot.Path).AbsoluteUri);
        bool study = shot.Path.StartsWith("/study/", StringComparison.Ordinal) && !shot.Path.EndsWith("/set-up", StringComparison.Ordinal);
        await page.Locator(study ? "#size-line [role=slider]" : "h1").First.WaitForAsync(new() { Timeout = Patience });
        if (shot.At is { } place)
        {
            await page.Locator(place).WaitForAsync();
            await page.Locator(place).EvaluateAsync("e => e.scrollIntoView({ block: 'start' })");
        }
        await page.WaitForTimeoutAsync(2500);
        await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{shot.Name}.png") });
        Console.WriteLine($"{shot.Name}.png");
    }

    public static string Root()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Platewright.slnx"))) at = at.Parent;
        return at?.FullName ?? throw new InvalidOperationException("Platewright.slnx is not above this program.");
    }

    public static string Chromium() => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(f => new[] { Path.Combine(f, "chromium"), Path.Combine(f, "chromium-browser") })
        .FirstOrDefault(File.Exists) ?? throw new InvalidOperationException("No chromium on the PATH; on Debian: apt-get install chromium.");
}
