using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>The decision on one page, on screen and on paper.</summary>
public sealed partial class SheetTests(Browser browser)
{
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Sheet_Printed_IsOnePage(string format)
    {
        await using OpenReport report = await browser.OpenAsync();
        await PressPrintAsync(report);
        byte[] pdf = await report.Page.PdfAsync(new() { Format = format, PreferCSSPageSize = false });

        Assert.Single(PageObject().Matches(Encoding.Latin1.GetString(pdf)));
    }

    [Fact]
    public async Task Sheet_Printed_ShowsAllItSaysAndNothingElse()
    {
        await using OpenReport report = await browser.OpenAsync();
        await PressPrintAsync(report);
        await report.Page.EmulateMediaAsync(new() { Media = Media.Print });
        string seen = (await report.Page.Locator("body").InnerTextAsync()).Replace('\u00a0', ' ');
        SheetDocument sheet = FixtureStudy.WithModels.Sizing!.Sheet;

        Assert.StartsWith(sheet.Title, seen.Trim(), StringComparison.Ordinal);
        foreach (SentenceDocument said in (SentenceDocument[])[.. sheet.Recommendation, .. sheet.Reasons, .. sheet.NotPossible,
            .. sheet.Doubt, .. sheet.Alternatives, .. sheet.Assumptions, .. sheet.Cautions])
        {
            Assert.Contains(said.Text, seen, StringComparison.Ordinal);
        }
        Assert.EndsWith(sheet.Cautions[^1].Text, seen.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sheet_AfterPrinting_LeavesThePageAsItWas()
    {
        await using OpenReport report = await browser.OpenAsync();
        await PressPrintAsync(report);
        await report.Page.EvaluateAsync("() => dispatchEvent(new Event('afterprint'))");
        await report.Page.EmulateMediaAsync(new() { Media = Media.Print });

        Assert.True(await report.Page.Locator("#matrix").IsVisibleAsync());
    }

    [Fact]
    public async Task Sheet_NothingSized_IsNotThere()
    {
        await using OpenReport report = await browser.OpenAsync(browser.ReportWithoutBuilds);

        Assert.Equal(0, await report.Page.Locator("#sheet, #choice").CountAsync());
        Assert.Empty(report.Complaints);
    }

    /// <summary>The button asks the browser to print, which a browser without a screen cannot; the rest is the page's own.</summary>
    private static async Task PressPrintAsync(OpenReport report)
    {
        await report.Page.EvaluateAsync("() => { window.print = () => {}; }");
        await report.Page.GetByRole(AriaRole.Button, new() { Name = "Print this page" }).PressAsync("Enter");
    }

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)", RegexOptions.None, 1000)]
    private static partial Regex PageObject();
}
