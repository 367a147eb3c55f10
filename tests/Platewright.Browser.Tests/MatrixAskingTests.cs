using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>Finding, ordering and grouping the work, by keyboard too.</summary>
public sealed class MatrixAskingTests(Browser browser)
{
    private static readonly StudyDocument Study = FixtureStudy.WithModels;

    [Fact]
    public async Task Find_Words_ShowsOnlyPartsThatSayThemAll()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.GetByLabel("Find").FillAsync("  GEAR wheel ");

        string[] expected = [.. Study.Parts.Where(p => p.Project == "Gear train clock" && p.Name.Contains("wheel", StringComparison.Ordinal)).Select(p => p.Name)];
        Assert.NotEmpty(expected);
        Assert.Equal(expected, await NamesAsync(report));
        Assert.Equal($"{expected.Length} of {Study.Parts.Count} parts", Plain(await report.Page.Locator("#matrix [role=status]").TextContentAsync()));
        await report.Page.GetByLabel("Find").FillAsync("no such thing");
        Assert.Contains("No part is like that", await report.Page.Locator("#matrix tbody").TextContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Filter_VerdictOnAMachine_ShowsThoseParts()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.Locator("#matrix").GetByLabel("Machine asked about").SelectOptionAsync("open-210");
        foreach ((string choice, Func<PartFitDocument, bool> holds) in new (string, Func<PartFitDocument, bool>)[]
        {
            ("make", f => f.CanMake), ("cannot", f => !f.CanMake), ("fits", f => f.CountsAs == "fits"), ("compromise", f => f.CountsAs == "compromise"), ("no", f => f.CountsAs == "no"),
        })
        {
            await report.Page.Locator("#matrix").GetByLabel("Verdict there").SelectOptionAsync(choice);
            string[] expected = [.. Study.Parts.Where(p => holds(p.Fits.Single(f => f.Machine == "open-210"))).Select(p => p.Name)];
            Assert.Equal(expected.Order(StringComparer.Ordinal), (await NamesAsync(report)).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public async Task Order_WithoutGroups_SortsParts()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator matrix = report.Page.Locator("#matrix");
        await matrix.GetByLabel("Group by").SelectOptionAsync("none");
        await matrix.GetByLabel("Order by").SelectOptionAsync("size");
        Assert.Equal(Study.Parts.OrderByDescending(p => p.SizeMm.Max()).Select(p => p.Name), await NamesAsync(report));

        await matrix.GetByLabel("Order by").SelectOptionAsync("makers");
        Assert.Equal(Study.Parts.OrderBy(p => p.Fits.Count(f => f.CanMake)).Select(p => p.Name), await NamesAsync(report));

        await matrix.GetByLabel("the other way round").CheckAsync();
        Assert.Equal(Study.Parts.OrderByDescending(p => p.Fits.Count(f => f.CanMake)).Select(p => p.Name), await NamesAsync(report));
    }

    [Fact]
    public async Task Group_ByMaterialAndVerdict_HoldsEveryPartOnce()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator matrix = report.Page.Locator("#matrix");
        foreach (string grouping in new[] { "material", "verdict" })
        {
            await matrix.GetByLabel("Group by").SelectOptionAsync(grouping);
            Assert.Equal(Study.Parts.Select(p => p.Name).Order(StringComparer.Ordinal), (await NamesAsync(report)).Order(StringComparer.Ordinal));
        }
        Assert.Contains("fits", await matrix.Locator(".expand").First.TextContentAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Keys_InTheGrid_GoFromCellToCell()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator here = report.Page.Locator("#matrix :focus");
        await report.Page.Locator("#matrix [data-cell='0 0']").FocusAsync();
        await PressAsync("ArrowRight", "0 1");
        await PressAsync("ArrowDown", "1 1");
        await PressAsync("End", "1 7");
        await PressAsync("ArrowRight", "1 7");
        await PressAsync("Control+End", "13 7");
        await PressAsync("Home", "13 0");
        await PressAsync("Enter", "13 0");
        Assert.Equal("true", await here.GetAttributeAsync("aria-expanded"));
        await PressAsync("Control+Home", "0 0");
        // The grid is one stop of the Tab key.
        Assert.Equal(1, await report.Page.Locator("#matrix table [tabindex='0']").CountAsync());

        async Task PressAsync(string key, string place)
        {
            await report.Page.Keyboard.PressAsync(key);
            Assert.Equal(place, await here.GetAttributeAsync("data-cell"));
        }
    }

    [Fact]
    public async Task Csv_OfWhatIsShown_HasARowForEachPart()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.GetByLabel("Find").FillAsync("gear train");
        IDownload saved = await report.Page.RunAndWaitForDownloadAsync(
            () => report.Page.GetByRole(AriaRole.Button, new() { Name = "Save these as CSV" }).ClickAsync());
        string[] lines = (await File.ReadAllTextAsync(await saved.PathAsync(), TestContext.Current.CancellationToken)).TrimEnd().Split("\r\n");

        Assert.StartsWith("\uFEFFproject,part,file", '\uFEFF' + lines[0].TrimStart('\uFEFF'), StringComparison.Ordinal);
        Assert.Equal(Study.Parts.Count(p => p.Project == "Gear train clock"), lines.Length - 1);
        Assert.Contains(lines, l => l.Contains("Ottoline <b>Varga</b>,CC BY 4.0", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Maker_AndLicence_StandInTheRowAndInTheFactsAsText()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.GetByLabel("Find").FillAsync("varga");
        await report.Page.Locator("#matrix tr.part button").First.ClickAsync();

        Assert.Contains("by Ottoline <b>Varga</b> · CC BY 4.0", await report.Page.Locator("#matrix tr.part th").First.TextContentAsync(), StringComparison.Ordinal);
        Assert.Contains("Ottoline <b>Varga</b>", await report.Page.Locator("#part dl").First.TextContentAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("material")]
    [InlineData("none")]
    public async Task Asked_Matrix_HasNoAccessibilityViolationsAndNoSidewaysScroll(string grouping)
    {
        await using OpenReport report = await browser.OpenAsync(width: 360);
        await report.Page.Locator("#matrix").GetByLabel("Group by").SelectOptionAsync(grouping);
        AxeResult result = await report.Page.RunAxe();

        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v =>
            $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Target.ToString()))}")));
        Assert.Equal(360, await report.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    private static async Task<string[]> NamesAsync(OpenReport report) => await report.Page.Locator("#matrix tr.part .called").EvaluateAllAsync<string[]>(
        "all => all.map(e => e.textContent.replace(/ × [0-9]+$/, ''))");

    private static string Plain(string? text) => text?.Replace('\u00a0', ' ') ?? "";
}
