using System.Globalization;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>Time, energy and material: machines side by side, the whole work, and a build cycle.</summary>
public sealed class BuildsTests(Browser browser)
{
    [Fact]
    public async Task Part_EveryMachine_IsListedWithItsTimeRangeAndEnergyOrWhyNot()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ShowAsync(report, "Third wheel", "Open 210");
        StudyDocument study = FixtureStudy.WithModels;
        PartDocument part = study.Parts.Single(p => p.Name == "Third wheel");
        string[] rows = await TextsAsync(report, "#part .rows > li:not(.axis)");

        Assert.Equal(study.Machines.Count, rows.Length);
        foreach (MachineDocument machine in study.Machines)
        {
            string row = rows.Single(r => r.Contains(machine.Name, StringComparison.Ordinal));
            PartFitDocument fit = part.Fits.Single(f => f.Machine == machine.Id);
            Assert.True(fit is { CanMake: true, Estimate: not null });
            TimeDocument time = fit.Estimate.TimeS;
            string range = $"{Clock(0.73 * time.Total)}–{Clock(1.31 * time.Total)} h";
            Assert.Contains($"{Clock(time.Total)} h {range}", row, StringComparison.Ordinal);
            Assert.Matches(@"about \S+ g, 0\.\d+ kWh \(0\.\d+–0\.\d+ kWh\), peak \d+ W", row);
        }
    }

    [Fact]
    public async Task Part_MachineThatDoesNotTakeIt_SaysWhyAndHasNoBar()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ShowAsync(report, "Great wheel", "Open 210");
        ILocator refused = report.Page.Locator("#part .rows > li.refused", new() { HasText = "Desk 105" });

        Assert.Contains("does not fit: 47.0 mm short", await PlainAsync(refused), StringComparison.Ordinal);
        Assert.Equal(0, await refused.Locator("svg").CountAsync());
    }

    [Fact]
    public async Task Part_Bars_AreAsLongAsTheirTimes()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ShowAsync(report, "Third wheel", "Open 210");
        double[] widths = await report.Page.Locator("#part .rows > li:not(.axis, .refused) svg").EvaluateAllAsync<double[]>(
            "all => all.map(s => [...s.querySelectorAll('rect')].reduce((sum, r) => sum + r.width.baseVal.value, 0))");
        double[] times =
        [
            .. FixtureStudy.WithModels.Parts.Single(p => p.Name == "Third wheel").Fits
                .Select(f => f.Estimate!.TimeS.Total).Order(),
        ];

        Assert.Equal(times.Length, widths.Length);
        // Half a pixel is drawn at least for a stage that takes any time.
        for (int i = 0; i < times.Length; i++) Assert.Equal(times[i] / times[^1], widths[i] / widths[^1], 0.01);
    }

    [Fact]
    public async Task Part_OverlappingRanges_AreSaid()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ShowAsync(report, "Third wheel", "Open 210");
        string said = await PlainAsync(report.Page.Locator("#builds-title"));

        Assert.Matches(@"^\d:\d\d h on Desk 105, \d:\d\d h on Open 210: the first takes \d+ % less; ", said);
        Assert.Matches(@"warm-up and release are \d+ % of it\.", said);
        Assert.EndsWith("so the order could be the other way round.", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Part_MachineChosenByKeyboard_IsShown()
    {
        await using OpenReport report = await browser.OpenAsync();
        await ShowAsync(report, "Third wheel", "Open 210");
        ILocator wide = report.Page.Locator("#part .rows").GetByRole(AriaRole.Button, new() { Name = "Closed 330" });
        await wide.FocusAsync();
        await report.Page.Keyboard.PressAsync("Enter");

        Assert.Contains("on Closed 330", await PlainAsync(report.Page.Locator("#part-title")), StringComparison.Ordinal);
        Assert.Equal("true", await wide.GetAttributeAsync("aria-pressed"));
        Assert.Contains(FixtureEstimate.Opened, await PlainAsync(report.Page.Locator("#part .notes")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Workload_SameWork_CountsTheSamePartsEverywhere()
    {
        await using OpenReport report = await browser.OpenAsync();
        string[] own = await TextsAsync(report, "#workload li:not(.axis)");
        Assert.Equal(FixtureStudy.WithModels.Machines.Count, own.Length);
        Assert.Contains("12 % warm-up and release", own[0], StringComparison.Ordinal);
        await report.Page.GetByLabel("all that each machine makes").FocusAsync();
        await report.Page.Keyboard.PressAsync("ArrowDown");
        string[] parts = await TextsAsync(report, "#workload .who .soft");

        Assert.Equal(FixtureStudy.WithModels.Machines.Count, parts.Length);
        Assert.Single(parts.Distinct());
        string title = await PlainAsync(report.Page.Locator("#workload-title"));
        Assert.StartsWith(parts[0] + " that all 7 machines make", title, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cycle_ChosenByKeyboard_ChangesThePicture()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator cycle = report.Page.Locator("#cycle");
        await cycle.GetByLabel("Machine").FocusAsync();
        for (int i = 0; i < 7; i++) await report.Page.Keyboard.PressAsync("ArrowUp");
        Assert.Contains("Desk 105 is ready for PLA in about 0:04 h", await PlainAsync(cycle), StringComparison.Ordinal);
        Assert.DoesNotContain("chamber 50", await PlainAsync(cycle.Locator("svg")), StringComparison.Ordinal);

        await cycle.GetByLabel("Machine").SelectOptionAsync(new SelectOptionValue { Label = "Closed 265" });
        await cycle.GetByLabel("Material").SelectOptionAsync("ABS");
        string drawn = await PlainAsync(cycle.Locator("svg"));
        string[] labels =
        [
            "warm-up 0:15 h", "cooling 0:08 h", "nozzle 245 °C", "bed 100 °C", "chamber 50 °C", "peak 380 W", "holds at 140 W",
        ];
        foreach (string label in labels)
            Assert.Contains(label, drawn, StringComparison.Ordinal);

        await cycle.GetByLabel("Material").SelectOptionAsync("PLA");
        Assert.Contains(FixtureEstimate.Opened, await PlainAsync(cycle.Locator(".opened")), StringComparison.Ordinal);
        Assert.Contains("−36 % to +38 %", await PlainAsync(cycle.Locator(".how")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cycle_Table_GoesThroughTheStagesInOrder()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.GetByText("The cycle as numbers").ClickAsync();
        string[] stages = await TextsAsync(report, "#cycle tbody td:nth-child(2)");

        Assert.Equal(["warm-up", "building", "cooling"], stages.Distinct());
        Assert.Equal(stages.OrderBy(s => s switch { "warm-up" => 0, "building" => 1, _ => 2 }), stages);
        Assert.Contains("electrician", await PlainAsync(report.Page.Locator("#cycle")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Study_WithoutEstimates_LeavesTheBuildsOut()
    {
        await using OpenReport report = await browser.OpenAsync(browser.ReportWithoutBuilds);

        Assert.Equal(0, await report.Page.Locator("#workload, #cycle, .builds").CountAsync());
        Assert.Empty(report.Complaints);
    }

    [Theory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    public async Task Builds_WithTablesOpen_StayInTheWindowAndAccessible(int width, ColorScheme scheme)
    {
        await using OpenReport report = await browser.OpenAsync(width: width, scheme: scheme);
        foreach (string table in (string[])["The builds as numbers", "The work as numbers", "The cycle as numbers"])
            await report.Page.GetByText(table).ClickAsync();
        Assert.Equal(width, await report.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
        AxeResult result = await report.Page.RunAxe();

        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v =>
            $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Target.ToString()))}")));
    }

    private static async Task ShowAsync(OpenReport report, string part, string machine)
    {
        ILocator view = report.Page.Locator("#part");
        await view.Locator("select").First.SelectOptionAsync(new SelectOptionValue { Label = part });
        string value = FixtureStudy.WithModels.Machines.Single(m => m.Name == machine).Id;
        await view.GetByLabel("Machine").SelectOptionAsync(value);
    }

    private static string Clock(double seconds)
    {
        long minutes = (long)Math.Floor(seconds / 60 + 0.5);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00}");
    }

    private static async Task<string> PlainAsync(ILocator locator) => Plain((await locator.TextContentAsync())!);

    private static async Task<string[]> TextsAsync(OpenReport report, string selector) =>
        [.. (await report.Page.Locator(selector).AllTextContentsAsync()).Select(Plain)];

    private static string Plain(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
