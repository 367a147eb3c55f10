using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

public sealed class MatrixAndPartTests(Browser browser)
{
    [Fact]
    public async Task Matrix_EveryProject_HasAWordForEveryMachine()
    {
        await using OpenReport report = await browser.OpenAsync();
        StudyDocument study = FixtureStudy.WithModels;
        string[] spoken = await report.Page.Locator("#matrix tbody td button").EvaluateAllAsync<string[]>(
            "all => all.map(e => e.getAttribute('aria-label'))");

        Assert.Equal(study.Projects.Count * study.Machines.Count, spoken.Length);
        for (int i = 0; i < spoken.Length; i++)
        {
            ProjectDocument project = study.Projects[i / study.Machines.Count];
            ProjectVerdictDocument verdict = project.Verdicts[i % study.Machines.Count];
            Assert.StartsWith(project.Name, spoken[i], StringComparison.Ordinal);
            string word = verdict.Verdict switch
            {
                "as_drawn" => "as drawn",
                "scaled" => "%",
                "in_pieces" => "piece",
                "no" => "short",
                _ => verdict.Verdict,
            };
            Assert.Contains(word, spoken[i], StringComparison.Ordinal);
            if (verdict.CountsAs != "no" && !verdict.CanMake) Assert.Matches("too cool|too thin|cannot make", spoken[i]);
        }
    }

    [Fact]
    public async Task Matrix_OpenedProject_ShowsItsParts()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.Locator("#matrix .expand", new() { HasText = "Reading lamp" }).ClickAsync();

        Assert.Equal(4, await report.Page.Locator("#matrix tr.part").CountAsync());
        await report.Page.GetByRole(AriaRole.Button, new() { Name = "Show all parts" }).ClickAsync();
        Assert.Equal(45, await report.Page.Locator("#matrix tr.part").CountAsync());
    }

    [Fact]
    public async Task Matrix_ChosenCell_ShowsThatPartOnThatMachine()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.Locator("#matrix td button[aria-label^='Helmet mould on Open 210']").ClickAsync();

        Assert.Contains("Mould half on Open 210", await report.Page.Locator("#part-title").TextContentAsync(), StringComparison.Ordinal);
        Assert.Contains("too long even along the best diagonal", await report.Page.Locator("#part .reason").TextContentAsync(), StringComparison.Ordinal);
        Assert.True(await report.Page.Locator("#part-title").EvaluateAsync<bool>("e => e === document.activeElement"));
    }

    [Fact]
    public async Task Part_InItsBuildVolume_IsDrawnAndTurns()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator scene = report.Page.Locator("#part .stage");
        await scene.ScrollIntoViewIfNeededAsync();
        await report.Page.Locator("#part .dimension").First.WaitForAsync();

        string first = await Drawn(report);
        await scene.PressAsync("ArrowLeft");
        string turned = await Drawn(report);
        await scene.PressAsync("Home");
        Assert.NotEqual(first, turned);
        Assert.Equal(first, await Drawn(report));
        int colours = await report.Page.EvaluateAsync<int>("""
            async () => {
              const canvas = document.querySelector('#part canvas');
              const copy = document.createElement('canvas');
              [copy.width, copy.height] = [canvas.width, canvas.height];
              copy.getContext('2d').drawImage(canvas, 0, 0);
              const pixels = new Uint32Array(copy.getContext('2d').getImageData(0, 0, copy.width, copy.height).data.buffer);
              return new Set(pixels).size;
            }
            """);
        Assert.True(colours > 20, $"The scene has {colours} colours.");
    }

    [Fact]
    public async Task Part_ThatSticksOut_ShowsThatInAnotherColour()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.Locator("#matrix td button[aria-label^='Reading lamp on Desk 105']").ClickAsync();
        await report.Page.Locator("#part .dimension").First.WaitForAsync();
        Assert.Contains("sticks out", await report.Page.Locator("#part .hint").TextContentAsync(), StringComparison.Ordinal);
        string sticking = await Drawn(report);
        await report.Page.GetByText("shrink it until it fits").ClickAsync();

        Assert.NotEqual(sticking, await Drawn(report));
        Assert.Contains("Shown at", await report.Page.Locator("#part .hint").TextContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Part_WithoutModels_ShowsItsPictureAndSaysWhy()
    {
        await using OpenReport report = await browser.OpenAsync(browser.ReportWithoutModels);

        Assert.Equal(0, await report.Page.Locator("#part canvas").CountAsync());
        Assert.Contains("models were left out", await report.Page.Locator("#part .hint").TextContentAsync(), StringComparison.Ordinal);
        Assert.True(await report.Page.Locator("#part .still img").EvaluateAsync<bool>("e => e.naturalWidth > 0"));
    }

    private static Task<string> Drawn(OpenReport report) =>
        report.Page.Locator("#part canvas").EvaluateAsync<string>(
            "canvas => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(canvas.toDataURL()))))");
}
