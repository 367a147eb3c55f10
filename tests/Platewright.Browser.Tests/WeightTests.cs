using System.Globalization;
using Microsoft.Playwright;
using Platewright.Report;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>
/// How heavy reports are, which is the same everywhere and asserted, and how fast they open, which is not, and only printed
/// (run with <c>--show-live-output on</c> to see it).
/// </summary>
public sealed class WeightTests(Browser browser, ITestOutputHelper output) : IDisposable
{
    private const double Million = 1e6;

    private readonly string _large = Path.Combine(Path.GetTempPath(), $"platewright-large-{Guid.NewGuid():N}.html");

    public void Dispose() => File.Delete(_large);

    [Fact]
    public async Task Report_OfASmallStudy_IsBelow3Megabytes()
    {
        await using OpenReport report = await browser.OpenAsync();
        await Print("20 projects", browser.Report, report);

        Assert.InRange(new FileInfo(browser.Report).Length, 0, 3 * Million);
    }

    /// <summary>A report that the command wrote, as the demo's; PLATEWRIGHT_REPORT says where it lies.</summary>
    [Fact]
    public async Task Report_OfTheDemo_IsBelow3Megabytes()
    {
        string? file = Environment.GetEnvironmentVariable("PLATEWRIGHT_REPORT");
        Assert.SkipWhen(string.IsNullOrEmpty(file), "PLATEWRIGHT_REPORT names no report.html; the study command writes one.");
        await using OpenReport report = await browser.OpenAsync(Path.GetFullPath(file!));
        await Print("the demo", file!, report);

        Assert.InRange(new FileInfo(file!).Length, 0, 3 * Million);
        Assert.Empty(report.Requests);
        Assert.Empty(report.Complaints);
    }

    [Fact]
    public async Task Report_OfAThousandPartsOnTenMachines_IsBelow25MegabytesAndWorks()
    {
        ReportWriter.Write(FixtureLarge.Make(), _large);
        Assert.InRange(new FileInfo(_large).Length, 0, 25 * Million);

        await using OpenReport report = await browser.OpenAsync(_large);
        await Print("1,000 parts on 10 machines", _large, report);
        await report.Page.GetByRole(AriaRole.Button, new() { Name = "Show all parts" }).ClickAsync();
        ILocator grid = report.Page.GetByRole(AriaRole.Grid);
        Assert.Equal(1 + 200 + FixtureLarge.Parts + 4, int.Parse((await grid.GetAttributeAsync("aria-rowcount"))!, CultureInfo.InvariantCulture));
        Assert.InRange(await grid.Locator("tbody tr").CountAsync(), 10, 80);

        // To the last cell by keyboard, and from there to its part.
        await grid.Locator("[data-cell='0 0']").FocusAsync();
        await report.Page.Keyboard.PressAsync("Control+End");
        ILocator last = report.Page.Locator("#matrix :focus");
        Assert.StartsWith("base 1000 on Open 210 tall: ", await last.GetAttributeAsync("aria-label"), StringComparison.Ordinal);
        Assert.Equal("1201", await last.Locator("xpath=ancestor::tr").GetAttributeAsync("aria-rowindex"));
        await report.Page.Keyboard.PressAsync("ArrowUp");
        Assert.StartsWith("lever 999 on ", await last.GetAttributeAsync("aria-label"), StringComparison.Ordinal);
        await report.Page.Keyboard.PressAsync("Enter");
        Assert.Contains("lever 999", await report.Page.Locator("#part-title").TextContentAsync(), StringComparison.Ordinal);
        await report.Page.Locator("#part .dimension").First.WaitForAsync();
        Assert.Empty(report.Complaints);
    }

    private async Task Print(string what, string file, OpenReport report)
    {
        Opening opening = await report.OpeningAsync();
        output.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{what}: {new FileInfo(file).Length / Million:F2} MB, first picture after {opening.FirstPictureMs:F0} ms, usable after {opening.UsableMs:F0} ms"));
    }
}
