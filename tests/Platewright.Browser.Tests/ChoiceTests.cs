using Microsoft.Playwright;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>What the larger one adds, what it costs, and which mix does it.</summary>
public sealed class ChoiceTests(Browser browser)
{
    private static readonly SizingDocument Sizing = FixtureStudy.WithModels.Sizing!;

    [Fact]
    public async Task Choice_Pairs_SayTheirSentenceAndAreFilledOnlyWhereToldApart()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator rows = report.Page.Locator("#choice article").First.Locator("ol > li:not(.axis)");

        Assert.Equal(Sizing.Larger.Count, await rows.CountAsync());
        for (int i = 0; i < Sizing.Larger.Count; i++)
        {
            Assert.Contains(Sizing.Larger[i].Sentence, await PlainAsync(rows.Nth(i)), StringComparison.Ordinal);
            string? fill = await rows.Nth(i).Locator("circle").GetAttributeAsync("fill");
            Assert.Equal(Sizing.Larger[i].ToldApart, fill == "var(--lit)");
        }
    }

    [Fact]
    public async Task Choice_Account_AddsUpAsRead()
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.GetByText("The account line by line").ClickAsync();
        ILocator table = report.Page.GetByRole(AriaRole.Group, new() { Name = "The account line by line" });
        string[][] rows = [.. (await table.Locator("tbody tr").EvaluateAllAsync<string[]>(
            "all => all.map(r => [...r.cells].map(c => c.textContent).join('|'))")).Select(r => r.Split('|'))];
        decimal Of(string line, int column) => decimal.Parse(rows.Single(r => r[0] == line)[column].Replace("€", "", StringComparison.Ordinal));
        int total = Array.FindIndex(rows, r => r[0] == "total"), running = Array.FindIndex(rows, r => r[0] == "of it running");

        for (int column = 1; column < rows[0].Length; column++)
        {
            decimal sum = rows.Take(running).Sum(r => Of(r[0], column));
            Assert.Equal(sum, Of(rows[total][0], column));
        }
        Assert.Equal(Sizing.Machines.Count(m => m.PerMonth is not null), rows[0].Length - 1);
    }

    [Fact]
    public async Task Choice_MarksOfTheFront_AreReachedByKeyboardAndSaid()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator marks = report.Page.Locator("#choice .plot button");
        Assert.Equal(Sizing.Front.Count, await marks.CountAsync());
        await marks.First.FocusAsync();
        string first = await PlainAsync(report.Page.Locator("#choice .detail"));
        await report.Page.Keyboard.PressAsync("Tab");

        Assert.Equal(first, (await marks.First.GetAttributeAsync("aria-label"))!.Replace('\u00a0', ' ') + ".");
        Assert.NotEqual(first, await PlainAsync(report.Page.Locator("#choice .detail")));
        Assert.Contains($"{Sizing.Front[1].Counts[0].Count} × {Sizing.Front[1].Counts[0].Name}",
            await PlainAsync(report.Page.Locator("#choice .detail")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Choice_Sensitivity_MarksWhatChangesTheAnswer()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator rows = report.Page.Locator("#choice article", new() { HasText = "Sensitivity as numbers" }).Locator("ol > li:not(.axis)");
        string[] texts = [.. await rows.AllTextContentsAsync()];

        Assert.Equal(Sizing.Sensitivity.Select(s => s.Changes), texts.Select(t => t.Contains("changes the answer", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("Save the chart as SVG", ".svg", "<svg")]
    [InlineData("Save as CSV", ".csv", "\ufefflarger over smaller,gained")]
    public async Task Choice_Save_GivesAFileOfThatKind(string name, string ending, string opening)
    {
        await using OpenReport report = await browser.OpenAsync();
        await report.Page.GetByText("The steps as numbers").ClickAsync();
        IDownload file = await report.Page.RunAndWaitForDownloadAsync(
            () => report.Page.Locator("#choice").GetByRole(AriaRole.Button, new() { Name = name }).First.ClickAsync());
        byte[] bytes = await File.ReadAllBytesAsync(await file.PathAsync(), TestContext.Current.CancellationToken);
        string text = System.Text.Encoding.UTF8.GetString(bytes);

        Assert.EndsWith(ending, file.SuggestedFilename, StringComparison.Ordinal);
        Assert.StartsWith(opening, text, StringComparison.Ordinal);
        Assert.DoesNotContain("var(--", text, StringComparison.Ordinal);
    }

    private static async Task<string> PlainAsync(ILocator locator) => (await locator.TextContentAsync())!.Replace('\u00a0', ' ');
}
