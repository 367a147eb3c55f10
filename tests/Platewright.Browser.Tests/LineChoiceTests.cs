using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>The size line counting projects, hours or money, against size or price: everything works for every choice.</summary>
public sealed class LineChoiceTests(Browser browser)
{
    private static readonly SizingDocument Sizing = FixtureStudy.WithModels.Sizing!;

    public static TheoryData<string, string> Choices => new()
    {
        { "projects", "size" }, { "hours", "size" }, { "money", "size" }, { "projects", "price" }, { "hours", "price" }, { "money", "price" },
    };

    [Theory]
    [MemberData(nameof(Choices))]
    public async Task Line_OfEveryChoice_IsMovedSaidSavedAndListed(string counted, string along)
    {
        await using OpenReport report = await browser.OpenAsync();
        await ChooseAsync(report, counted, along);
        await report.Handle.PressAsync("End");
        string most = await PlainAsync(report.Answer);
        await report.Handle.PressAsync("Shift+ArrowLeft");
        double at = await report.EdgeMmAsync();
        await report.Handle.PressAsync("ArrowLeft");
        Assert.True(await report.EdgeMmAsync() < at);
        await report.Handle.PressAsync("PageDown");
        await report.Handle.PressAsync("Home");
        Assert.NotEqual(most, await PlainAsync(report.Answer));
        await report.Handle.PressAsync("End");

        Assert.Contains(along == "price" ? "For up to" : "A ", most, StringComparison.Ordinal);
        Assert.Contains(counted switch { "hours" => "% of the machine hours", "money" => "% of what the work costs", _ => "of 14 projects" },
            most, StringComparison.Ordinal);
        string doubt = await PlainAsync(report.Page.Locator(".said > p").First);
        Assert.Contains("95 % interval from a sample of 14 projects", doubt, StringComparison.Ordinal);
        Assert.Equal(along == "price", doubt.Contains("Price is not size", StringComparison.Ordinal));
        Assert.Equal(counted == "money", doubt.Contains("1 project left out", StringComparison.Ordinal));
        await AssertSavesAsync(report, "Save as PNG", $"{along}-line-", ".png");
        await AssertSavesAsync(report, "Save as SVG", $"{along}-line-", ".svg");
        await report.Page.GetByText("The line as numbers").ClickAsync();
        ILocator rows = report.Page.GetByRole(AriaRole.Group, new() { Name = "The line as numbers" }).Locator("tbody tr");
        Assert.Equal(StepsOf(counted, along), await rows.CountAsync());
        await AssertSavesAsync(report, "Save as CSV", "the-line-as-numbers", ".csv");
        Assert.Empty((await report.Page.RunAxe()).Violations);
        Assert.Empty(report.Complaints);
    }

    [Fact]
    public async Task Hours_AreThoseOfTheDocument()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ChooseAsync(report, "hours", "size");
        await report.Handle.PressAsync("End");
        MeasuredCurveDocument curve = Sizing.Curves
            .Where(c => c is { Measure: "hours", Kind: "can_make" }).MaxBy(c => c.Steps[^1].WithCompromise.Count)!;
        AmountDocument made = curve.Steps[^1].WithCompromise;
        Assert.Contains($"can make {made.Share * 100:0} % of the machine hours", await PlainAsync(report.Answer), StringComparison.Ordinal);
        string doubt = await PlainAsync(report.Page.Locator(".said > p").First);
        Assert.Contains($"{made.Count:0} h of {curve.Total:0} h a month", doubt, StringComparison.Ordinal);
        Assert.Contains($"{made.Low * 100:0}–{made.High * 100:0} %", doubt, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Price_NamesTheMachineThatTakesMost_AndLightsItsProjects()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ChooseAsync(report, "projects", "price");
        await report.Handle.PressAsync("End");
        PriceStepDocument last = Sizing.PriceCurves.Single(c => c is { Measure: "projects", Kind: "can_make" }).Steps[^1];
        string name = FixtureStudy.WithModels.Machines.Single(m => m.Id == last.Machine).Name;
        Assert.EndsWith($"can make {last.WithCompromise.Count} of 14 projects: {name}", await PlainAsync(report.Answer), StringComparison.Ordinal);
        ILookup<string, string> lights = await report.LightsAsync();
        Assert.Equal((int)last.WithCompromise.Count, lights["lit"].Count() + lights["half"].Count());
        await report.Handle.PressAsync("Home");
        Assert.StartsWith("No machine of the study costs", await PlainAsync(report.Answer), StringComparison.Ordinal);
        Assert.Equal(14, (await report.LightsAsync())["dim"].Count());
    }

    [Theory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public async Task PriceLine_AtAnyWidthAndShade_DoesNotScrollSideways(int width, ColorScheme scheme)
    {
        await using OpenReport report = await browser.OpenAsync(width: width, scheme: scheme);
        await ChooseAsync(report, "money", "price");
        Assert.True(await report.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        Assert.Empty((await report.Page.RunAxe()).Violations);
    }

    private static int StepsOf(string counted, string along) => along == "price"
        ? Sizing.PriceCurves.Single(c => c.Measure == counted && c.Kind == "can_make").Steps.Count
        : FixtureStudy.WithModels.Curves.Where(c => c.Kind == "can_make").MaxBy(c => c.Steps[^1].WithCompromise.Count)!.Steps.Count;

    private static async Task ChooseAsync(OpenReport report, string counted, string along)
    {
        await report.Page.GetByLabel("What the upright axis counts").SelectOptionAsync(counted);
        await report.Page.GetByLabel("What lies along the line").SelectOptionAsync(along);
    }

    private static async Task AssertSavesAsync(OpenReport report, string button, string begins, string ends)
    {
        IDownload file = await report.Page.RunAndWaitForDownloadAsync(
            () => report.Page.Locator("#size-line").GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync());
        Assert.StartsWith(begins, file.SuggestedFilename, StringComparison.Ordinal);
        Assert.EndsWith(ends, file.SuggestedFilename, StringComparison.Ordinal);
        Assert.True(new FileInfo(await file.PathAsync()).Length > 60);
    }

    private static async Task<string> PlainAsync(ILocator of) => (await of.InnerTextAsync()).Replace('\u00a0', ' ');
}
