using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Platewright.Browser.Tests;

public sealed class LayoutTests(Browser browser)
{
    [Theory]
    [InlineData(360)]
    [InlineData(768)]
    [InlineData(1600)]
    public async Task Page_Width_HasNoSidewaysScroll(int width)
    {
        await using OpenReport report = await browser.OpenAsync(width: width);
        await report.Page.GetByRole(AriaRole.Button, new() { Name = "Show all parts" }).ClickAsync();
        await report.Page.Locator("#choice details").EvaluateAllAsync<int>("all => all.map(e => e.open = true).length");

        Assert.Equal(width, await report.Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
    }

    [Theory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Page_Scheme_HasNoAccessibilityViolations(ColorScheme scheme)
    {
        await using OpenReport report = await browser.OpenAsync(scheme: scheme);
        await report.Page.Locator("#matrix .expand").First.ClickAsync();
        await report.Page.GetByText("The line as numbers").ClickAsync();
        await report.Page.Locator("#choice details").EvaluateAllAsync<int>("all => all.map(e => e.open = true).length");
        await report.Page.Locator("#remarks").ScrollIntoViewIfNeededAsync();
        AxeResult result = await report.Page.RunAxe();

        Assert.True(result.Violations.Length == 0, string.Join("\n", result.Violations.Select(v =>
            $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Target.ToString()))}")));
    }

    [Fact]
    public async Task Theme_Button_TurnsThePageDark()
    {
        await using OpenReport report = await browser.OpenAsync();
        string light = await Background(report);
        await report.Page.GetByRole(AriaRole.Button, new() { Name = "Dark page" }).ClickAsync();

        Assert.NotEqual(light, await Background(report));
    }

    [Fact]
    public async Task Page_ByKeyboard_ReachesHandleCellAndScene()
    {
        await using OpenReport report = await browser.OpenAsync();
        var reached = new HashSet<string>(StringComparer.Ordinal);
        for (int i = 0; i < 180; i++)
        {
            await report.Page.Keyboard.PressAsync("Tab");
            reached.Add(await report.Page.EvaluateAsync<string>(
                "() => { const e = document.activeElement; return e.getAttribute('role') ?? e.className.split(' ')[0] ?? e.tagName; }"));
        }
        Assert.Contains("slider", reached);
        Assert.Contains("expand", reached);
        Assert.Contains("img", reached);
    }

    private static Task<string> Background(OpenReport report) =>
        report.Page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor");
}
