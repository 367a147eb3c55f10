using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>What touches, what sticks out, pieces, findings: in words and in the scene.</summary>
public sealed class PartSceneTests(Browser browser)
{
    [Fact]
    public async Task Pieces_PulledApartByKeyboard_AreDrawnApart()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ChooseAsync(report, "in_pieces");
        ILocator apart = report.Page.Locator("#part input[type='range']");
        string first = await DrawnAsync(report);
        await apart.PressAsync("End");
        string wide = await DrawnAsync(report);
        await apart.PressAsync("Home");
        string together = await DrawnAsync(report);

        Assert.Equal("0 of 100", await apart.GetAttributeAsync("aria-valuetext"));
        Assert.Equal(3, new[] { first, wide, together }.Distinct().Count());
    }

    [Fact]
    public async Task Pieces_OneInItsPlace_IsToldAndDrawnByItself()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ChooseAsync(report, "in_pieces");
        string whole = await WordsAsync(report);
        Assert.Contains("Sticks out", whole, StringComparison.Ordinal);
        string together = await DrawnAsync(report);
        await report.Page.GetByText("piece 1 in its place").ClickAsync();

        Assert.NotEqual(together, await DrawnAsync(report));
        Assert.NotEqual(whole, await WordsAsync(report));
        Assert.True(await report.Page.Locator("#part input[type='range']").IsDisabledAsync());
    }

    [Fact]
    public async Task Part_ThatDoesNotFit_SaysByHowMuchAtWhichWall()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ChooseAsync(report, "no");

        Assert.Matches(@"Sticks out \d+\.\d mm at the \w+", (await WordsAsync(report)).Replace('\u00a0', ' '));
        Assert.True(await report.Page.Locator("#part .label.beyond").CountAsync() > 0);
    }

    [Fact]
    public async Task Finding_Chosen_TurnsTheViewAndIsMarkedAlone()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.Locator("#part select").First.SelectOptionAsync(new SelectOptionValue { Label = "Vane" });
        await report.Page.Locator("#part .stage").ScrollIntoViewIfNeededAsync();
        await report.Page.Locator("#part .label.finding").First.WaitForAsync();
        ILocator where = report.Page.GetByRole(AriaRole.Button, new() { Name = "Show where finding 1 is" });
        for (int i = 0; i < 8; i++) await report.Page.Locator("#part .stage").PressAsync("ArrowLeft");
        await where.FocusAsync();
        string before = await DrawnAsync(report);
        await report.Page.Keyboard.PressAsync("Enter");

        Assert.NotEqual(before, await DrawnAsync(report));
        Assert.Equal("true", await where.GetAttributeAsync("aria-pressed"));
        Assert.Equal("1", await report.Page.Locator("#part .label.finding").TextContentAsync());
        Assert.Contains("2 marked, and 3 more", await report.Page.Locator("#part .places").TextContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Picture_Saved_IsAPngNamedAfterPartAndMachine()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ChooseAsync(report, "in_pieces");
        await DrawnAsync(report);
        IDownload download = await report.Page.RunAndWaitForDownloadAsync(
            () => report.Page.GetByRole(AriaRole.Button, new() { Name = "Save picture" }).ClickAsync());
        byte[] file = await File.ReadAllBytesAsync(await download.PathAsync(), TestContext.Current.CancellationToken);

        Assert.EndsWith(".png", download.SuggestedFilename, StringComparison.Ordinal);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], file[..4]);
        Assert.True(file.Length > 2000, $"The picture has {file.Length} bytes.");
    }

    [Theory]
    [InlineData(ColorScheme.Light, 1280)]
    [InlineData(ColorScheme.Dark, 360)]
    public async Task Part_InPieces_HasNoAccessibilityViolations(ColorScheme scheme, int width)
    {
        await using OpenReport report = await browser.OpenAsync(scheme: scheme, width: width);
        await ChooseAsync(report, "in_pieces");
        await report.Page.Locator("#part .dimension").First.WaitForAsync();
        var result = await report.Page.Locator("#part").RunAxe();

        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v =>
            $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Target.ToString()))}")));
        Assert.Equal(width, await report.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
        Assert.Empty(report.Complaints);
    }

    /// <summary>The first part of the study with a verdict on some machine.</summary>
    private static async Task ChooseAsync(OpenReport report, string verdict)
    {
        (PartDocument part, PartFitDocument fit) = FixtureStudy.WithModels.Parts.SelectMany(p => p.Fits.Select(f => (Part: p, Fit: f)))
            .First(f => f.Fit.Verdict == verdict && f.Part.Model is not null);
        await report.Page.Locator("#part select").First.SelectOptionAsync(part.Id);
        await report.Page.Locator("#part select").Nth(1).SelectOptionAsync(fit.Machine);
        await report.Page.Locator("#part .stage").ScrollIntoViewIfNeededAsync();
        await report.Page.Locator("#part .dimension").First.WaitForAsync();
    }

    private static async Task<string> WordsAsync(OpenReport report) =>
        string.Join(" ", await report.Page.Locator("#part .touching li").AllTextContentsAsync());

    private static Task<string> DrawnAsync(OpenReport report) =>
        report.Page.Locator("#part canvas").EvaluateAsync<string>(
            "canvas => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(canvas.toDataURL()))))");
}
