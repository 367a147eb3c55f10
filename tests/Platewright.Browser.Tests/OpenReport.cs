using Microsoft.Playwright;

namespace Platewright.Browser.Tests;

/// <summary>A report in a page of its own, with what it asked of the network and what it complained about.</summary>
public sealed class OpenReport(IBrowserContext context, IPage page) : IAsyncDisposable
{
    private readonly List<string> _complaints = [];
    private readonly List<string> _requests = [];

    public IPage Page => page;

    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Addresses asked for, other than the report itself and what lies inside it.</summary>
    public IReadOnlyList<string> Requests => _requests;

    public ILocator Handle => page.Locator("#size-line").GetByRole(AriaRole.Slider);

    public ILocator Answer => page.Locator("#line-title");

    public async Task GoAsync(Uri report)
    {
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") _complaints.Add(message.Text);
        };
        page.PageError += (_, error) => _complaints.Add(error);
        page.Request += (_, request) =>
        {
            var asked = new Uri(request.Url);
            if (asked.Scheme is not ("data" or "blob") && asked.AbsolutePath != report.AbsolutePath) _requests.Add(request.Url);
        };
        await page.AddInitScriptAsync(Opening.Watch);
        await page.GotoAsync(report.AbsoluteUri);
        await Handle.WaitForAsync();
        await page.Locator("main[aria-busy=false]").WaitForAsync();
    }

    public async Task<Opening> OpeningAsync()
    {
        await page.WaitForFunctionAsync("() => window.openingTimes?.whole !== undefined");
        double[] times = await page.EvaluateAsync<double[]>("() => [window.openingTimes.line, window.openingTimes.whole]");
        return new Opening(times[0], times[1]);
    }

    public async Task<double> EdgeMmAsync() => double.Parse((await Handle.GetAttributeAsync("aria-valuenow"))!);

    /// <summary>Project ids by how they are lit: lit, half or dim.</summary>
    public async Task<ILookup<string, string>> LightsAsync()
    {
        string[] rows = await page.Locator("[data-project]").EvaluateAllAsync<string[]>(
            "all => all.map(e => ['lit', 'half', 'dim'].find(c => e.classList.contains(c)) + ' ' + e.dataset.project)");
        return rows.Select(r => r.Split(' ', 2)).ToLookup(r => r[0], r => r[1]);
    }

    public ValueTask DisposeAsync() => new(context.CloseAsync());
}
