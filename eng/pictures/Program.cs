using Microsoft.Playwright;
using Platewright.Pictures;
using Platewright.Server;

// Renews the pictures in docs/images: the demo in the local app, as a newcomer sees it, from headless Chromium.
//   dotnet run -c Release --project eng/pictures [-- FOLDER [--all] [STORE]]
// STORE is kept, and makes the next run quick. --all takes every place on a phone and on a wide screen, in light and dark, to look at before a commit.
string root = Shots.Root();
string folder = args.Length > 0 ? args[0] : Path.Combine(root, "docs", "images");
bool all = args.Contains("--all", StringComparer.Ordinal);
Directory.CreateDirectory(folder);

bool keeps = args is [_, .., { } last] && last != "--all";
string store = keeps ? args[^1] : Directory.CreateTempSubdirectory("platewright-pictures-").FullName;
try
{
    await using LocalApp app = await LocalApp.Start(new LocalAppSettings(store, Port: 0), CancellationToken.None);
    Uri study = app.Open(Path.Combine(root, "demo", "workshop", "study.toml"));
    using IPlaywright playwright = await Playwright.CreateAsync();
    await using IBrowser browser = await playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = Shots.Chromium(),
        Args = ["--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--disable-background-networking"],
    });
    foreach (Shot shot in all ? Shots.Everything(study) : Shots.OfReadme(study)) await Shots.Take(browser, app.Address, shot, folder);
}
finally
{
    if (!keeps) Directory.Delete(store, recursive: true);
}
