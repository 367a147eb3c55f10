using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

public sealed partial class SizeLineTests(Browser browser)
{
    [Fact]
    public async Task Report_FromDiskWithoutNetwork_AsksForNothingAndComplainsOfNothing()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.Locator("#part").ScrollIntoViewIfNeededAsync();
        await report.Page.WaitForTimeoutAsync(500);

        Assert.Empty(report.Requests);
        Assert.Empty(report.Complaints);
        Assert.Equal(FixtureStudy.WithModels.Headline, await Plain(report.Page.Locator("h1")));
    }

    [Theory]
    [InlineData("ArrowRight", 1)]
    [InlineData("ArrowLeft", -1)]
    [InlineData("PageUp", 25)]
    [InlineData("PageDown", -25)]
    public async Task Handle_Keys_MoveByTheirStep(string key, double step)
    {
        await using OpenReport report = await browser.OpenAsync();
        double before = await report.EdgeMmAsync();
        await report.Handle.PressAsync(key);

        Assert.Equal(before + step, await report.EdgeMmAsync());
    }

    [Fact]
    public async Task Handle_AlongTheWholeLine_LightsAsManyAsTheCurveCounts()
    {
        await using OpenReport report = await browser.OpenAsync();
        CurveDocument curve = FixtureStudy.WithModels.Curves
            .Where(c => c.Kind == "can_make").MaxBy(c => c.Steps[^1].WithCompromise.Count)!;
        await report.Handle.PressAsync("Home");
        double last = double.Parse((await report.Handle.GetAttributeAsync("aria-valuemax"))!);
        for (int stops = 0; stops < 60 && await report.EdgeMmAsync() < last; stops++)
        {
            double edge = await report.EdgeMmAsync();
            CurveStepDocument step = curve.Steps.Last(s => s.EdgeMm <= edge);
            ILookup<string, string> lights = await report.LightsAsync();
            Assert.Equal(step.Fits.Count, lights["lit"].Count());
            Assert.Equal(step.WithCompromise.Count, lights["lit"].Count() + lights["half"].Count());
            Assert.Contains($"can make {step.WithCompromise.Count} of 14", await Plain(report.Answer), StringComparison.Ordinal);
            await report.Handle.PressAsync("Shift+ArrowRight");
        }
        Assert.Equal(last, await report.EdgeMmAsync());
    }

    [Fact]
    public async Task Handle_DraggedToTheRight_MakesMore()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Handle.PressAsync("Home");
        int before = MadeIn(await Plain(report.Answer));
        LocatorBoundingBoxResult box = (await report.Handle.BoundingBoxAsync())!;
        await report.Page.Mouse.MoveAsync(box.X + box.Width / 2, box.Y + box.Height / 2);
        await report.Page.Mouse.DownAsync();
        await report.Page.Mouse.MoveAsync(box.X + 700, box.Y + 10, new() { Steps = 8 });
        await report.Page.Mouse.UpAsync();
        await report.Page.Mouse.MoveAsync(box.X, box.Y);

        Assert.InRange(await report.EdgeMmAsync(), 250, 400);
        Assert.True(MadeIn(await Plain(report.Answer)) > before + 5);
    }

    [Fact]
    public async Task Handle_AtRest_IsSpoken()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Handle.PressAsync("End");
        await report.Page.WaitForTimeoutAsync(900);

        string answer = await Plain(report.Answer);
        Assert.StartsWith(answer, await Plain(report.Page.Locator("#announced")), StringComparison.Ordinal);
        Assert.Contains(answer, (await report.Handle.GetAttributeAsync("aria-valuetext"))!.Replace('\u00a0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Question_DoesItFit_LeavesHeatAside()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Handle.PressAsync("End");
        Assert.Contains("can make 13 of 14", await Plain(report.Answer), StringComparison.Ordinal);
        await report.Page.GetByLabel("Does it fit?").CheckAsync();

        Assert.Contains("holds 14 of 14", await Plain(report.Answer), StringComparison.Ordinal);
        Assert.Equal(14, (await report.LightsAsync())["lit"].Count());
    }

    [Fact]
    public async Task Question_CoolerMachine_TellsWhatNoSizeWins()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Handle.PressAsync("End");
        await report.Page.Locator(".heat select").SelectOptionAsync(new SelectOptionValue { Label = "Desk 105" });

        Assert.Equal(2, MadeIn(await Plain(report.Answer)));
        Assert.Contains("12 projects no size wins here", await Plain(report.Page.Locator(".next")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task NextParts_NamesThreeWithTheirMissInMillimetres()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.GetByRole(AriaRole.Button, new() { Name = "Open 165" }).First.ClickAsync();
        string[] next = [.. (await report.Page.Locator(".next li").AllTextContentsAsync()).Select(t => t.Replace('\u00a0', ' '))];

        Assert.Equal(3, next.Length);
        Assert.All(next, line => Assert.Matches(@"\d+\.\d mm short", line));
        double[] misses = [.. next.Select(line => double.Parse(Miss().Match(line).Groups["miss"].Value))];
        Assert.Equal(misses.Order(), misses);
    }

    [Fact]
    public async Task Machines_Labels_DoNotLieOnEachOther()
    {
        await using OpenReport report = await browser.OpenAsync();
        double[][] boxes = await report.Page.Locator(".line svg text").EvaluateAllAsync<double[][]>(
            "all => all.map(e => e.getBoundingClientRect()).map(b => [b.left, b.top, b.right, b.bottom])");
        for (int i = 0; i < boxes.Length; i++)
        {
            for (int k = i + 1; k < boxes.Length; k++)
            {
                double width = Math.Min(boxes[i][2], boxes[k][2]) - Math.Max(boxes[i][0], boxes[k][0]);
                double height = Math.Min(boxes[i][3], boxes[k][3]) - Math.Max(boxes[i][1], boxes[k][1]);
                // Line boxes of two rows of one label may touch by a pixel or two; the letters do not.
                Assert.False(width > 1 && height > 4, $"texts {i} and {k} of the line overlap by {width:0} × {height:0} px");
            }
        }
    }

    [Theory]
    [InlineData("PNG", new byte[] { 0x89, 0x50, 0x4E, 0x47 })]
    [InlineData("SVG", new byte[] { 0x3C, 0x73, 0x76, 0x67 })]
    public async Task Save_Picture_GivesAFileOfThatKind(string kind, byte[] opening)
    {
        await using OpenReport report = await browser.OpenAsync();
        IDownload file = await report.Page.RunAndWaitForDownloadAsync(
            () => report.Page.Locator("#size-line").GetByRole(AriaRole.Button, new() { Name = $"Save as {kind}" }).ClickAsync());
        byte[] bytes = await File.ReadAllBytesAsync(await file.PathAsync(), TestContext.Current.CancellationToken);

        Assert.EndsWith(kind.ToLowerInvariant(), file.SuggestedFilename, StringComparison.Ordinal);
        Assert.Equal(opening, bytes[..4]);
        Assert.True(bytes.Length > 50_000);
        Assert.Empty(report.Complaints);
    }

    private static async Task<string> Plain(ILocator locator) => (await locator.TextContentAsync())!.Replace('\u00a0', ' ');

    private static int MadeIn(string answer) => int.Parse(Made().Match(answer).Groups["made"].Value);

    [GeneratedRegex(@"(?<made>\d+) of \d+", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Made();

    [GeneratedRegex(@"(?<miss>\d+\.\d) mm short", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Miss();
}
