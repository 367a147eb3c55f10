using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Platewright.Server;
using Platewright.Tests.Study;

namespace Platewright.Browser.Tests;

/// <summary>The local app with a store of its own, opened in a browser of its own, with what it complained of and asked of others.</summary>
public sealed class OpenApp : IAsyncDisposable
{
    private static readonly LocatorAssertionsToBeVisibleOptions Patient = new() { Timeout = 120_000 };

    private readonly LocalApp _app;
    private readonly IBrowserContext _context;
    private readonly string _folder;
    private readonly bool _ownsFolder;
    private readonly List<string> _complaints = [];

    private OpenApp(LocalApp app, IBrowserContext context, IPage page, string folder, bool ownsFolder)
    {
        (_app, _context, Page, _folder, _ownsFolder) = (app, context, page, folder, ownsFolder);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") _complaints.Add(message.Text);
        };
        page.PageError += (_, error) => _complaints.Add(error);
        context.Request += (_, request) =>
        {
            Uri asked = new(request.Url);
            if (asked.Scheme is not ("data" or "blob") && asked.Authority != app.Address.Authority) Foreign.Add(request.Url);
        };
    }

    public IPage Page { get; }

    public Uri Address => _app.Address;

    public IReadOnlyList<string> Complaints => _complaints;

    /// <summary>Addresses other than the app's that were asked for.</summary>
    public List<string> Foreign { get; } = [];

    public ILocator Handle => Page.Locator("#size-line").GetByRole(AriaRole.Slider);

    /// <param name="browser">The browser of all tests.</param>
    /// <param name="store">A store that is there already; null for a new one.</param>
    public static async Task<OpenApp> Start(Browser browser, string? store = null, int width = 1280, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        IBrowserContext context = await browser.NewContextAsync(width, height, scheme, offline: false);
        string folder = store ?? Directory.CreateTempSubdirectory("platewright-app-").FullName;
        LocalApp app = await LocalApp.Start(new LocalAppSettings(folder, Port: 0), TestContext.Current.CancellationToken);
        OpenApp open = new(app, context, await context.NewPageAsync(), folder, store is null);
        await open.GoAsync("/");
        return open;
    }

    public Task GoAsync(string path) => Page.GotoAsync(new Uri(Address, path).AbsoluteUri);

    /// <summary>Drops files on the page's place for them, as a person does.</summary>
    public async Task DropAsync(params (string Name, byte[] Content)[] files)
    {
        await using IJSHandle data = await Page.EvaluateHandleAsync(
            """
            files => {
              const data = new DataTransfer();
              for (const f of files) data.items.add(new File([Uint8Array.from(atob(f.content), c => c.charCodeAt(0))], f.name));
              return data;
            }
            """,
            files.Select(f => new { name = f.Name, content = Convert.ToBase64String(f.Content) }).ToArray());
        await Page.Locator(".drop").DispatchEventAsync("drop", new { dataTransfer = data });
    }

    public async Task WaitForSizeLineAsync() => await Assertions.Expect(Handle).ToBeVisibleAsync(Patient);

    public async Task<string> ViolationsAsync()
    {
        AxeResult result = await Page.RunAxe();
        return string.Join("\n", result.Violations.Select(v =>
            $"{v.Id}: {v.Help} at {string.Join(", ", v.Nodes.Take(3).Select(n => n.Target.ToString()))}"));
    }

    public Task<int> WidthAsync() => Page.EvaluateAsync<int>("() => document.documentElement.scrollWidth");

    /// <summary>What reaches farthest to the right, for a failing test.</summary>
    public Task<string> WidestAsync() => Page.EvaluateAsync<string>(
        """
        () => [...document.querySelectorAll('body *')]
          .map(e => ({ e, right: e.getBoundingClientRect().right })).sort((a, b) => b.right - a.right).slice(0, 4)
          .map(({ e, right }) => `${e.tagName}.${e.className} to ${Math.round(right)}`).join('; ')
        """);

    /// <summary>A box as an ASCII STL file.</summary>
    public static byte[] Box(double x, double y, double z)
    {
        string path = Path.GetTempFileName();
        try
        {
            TestModels.WriteBox(path, x, y, z);
            return File.ReadAllBytes(path);
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>A round part with many corners: it takes a while to fit.</summary>
    public static byte[] Lump(int seed, int rings)
    {
        string path = Path.GetTempFileName();
        try
        {
            TestModels.WriteLump(path, seed, rings);
            return File.ReadAllBytes(path);
        }
        finally
        {
            File.Delete(path);
        }
    }

    public async ValueTask DisposeAsync()
    {
        await _context.CloseAsync();
        await _app.DisposeAsync();
        if (_ownsFolder) Directory.Delete(_folder, recursive: true);
    }
}
