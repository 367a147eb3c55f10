using System.IO.Compression;
using System.Text;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Platewright.Browser.Tests;

/// <summary>The local app as a newcomer uses it.</summary>
public sealed class AppTests(Browser browser)
{
    [Fact]
    public async Task Files_Dropped_LeadToSizeLinePartDecisionAndExport()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        await app.DropAsync(("clip.stl", OpenApp.Box(30, 20, 10)), ("shelf.stl", OpenApp.Box(190, 120, 20)), ("crate.stl", OpenApp.Box(300, 200, 150)));
        await Expect(app.Page.GetByRole(AriaRole.Heading, new() { Name = "What is asked" })).ToBeVisibleAsync();
        await app.Page.GetByLabel("Material of clip").SelectOptionAsync("PETG");
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep and start" }).ClickAsync();
        await app.WaitForSizeLineAsync();

        double before = double.Parse((await app.Handle.GetAttributeAsync("aria-valuenow"))!);
        await app.Handle.FocusAsync();
        await app.Page.Keyboard.PressAsync("Shift+ArrowRight");
        Assert.True(double.Parse((await app.Handle.GetAttributeAsync("aria-valuenow"))!) > before);

        await Expect(app.Page.Locator("#sheet")).ToBeVisibleAsync();
        await app.Page.Locator("#matrix td button").First.ClickAsync();
        await Expect(app.Page.Locator("#part-title")).ToContainTextAsync("clip");

        await app.Page.GetByText("Take it with you or share it").ClickAsync();
        foreach (string file in (string[])["report.html", "study.json", "parts.csv", "study.toml"])
        {
            IDownload download = await app.Page.RunAndWaitForDownloadAsync(
                () => app.Page.GetByRole(AriaRole.Button, new() { Name = file }).ClickAsync());
            Assert.Equal(file, download.SuggestedFilename);
            Assert.True(new FileInfo(await download.PathAsync()).Length > 50);
        }
        Assert.Empty(app.Complaints);
        Assert.Empty(app.Foreign);
    }

    [Fact]
    public async Task BrokenFile_IsNamedAndTheRestGoesOn()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        await app.DropAsync(("clip.stl", OpenApp.Box(30, 20, 10)), ("broken.stl", Encoding.ASCII.GetBytes("solid x\nfacet nonsense")), ("notes.txt", [65]));
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep and start" }).ClickAsync();
        await app.WaitForSizeLineAsync();
        await Expect(app.Page.Locator("#remarks")).ToContainTextAsync("broken.stl");
        Assert.Empty(app.Complaints);
    }

    [Fact]
    public async Task Study_StoppedAndLeft_GoesOnWhenOneComesBack()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        await app.DropAsync([.. Enumerable.Range(0, 10).Select(i => ($"lump{i}.stl", OpenApp.Lump(i, rings: 9)))]);
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep and start" }).ClickAsync();
        await Expect(app.Page.GetByRole(AriaRole.Button, new() { Name = "Stop" })).ToBeVisibleAsync();
        string study = new Uri(app.Page.Url).AbsolutePath;
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Expect(app.Page.GetByRole(AriaRole.Button, new() { Name = "Go on" })).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await Expect(app.Page.GetByText("What was finished is kept").First).ToBeVisibleAsync();

        await app.GoAsync("/");
        await Expect(app.Page.GetByText("stopped").First).ToBeVisibleAsync();
        await app.GoAsync(study);
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Go on" }).ClickAsync();
        await app.WaitForSizeLineAsync();
        Assert.Empty(app.Complaints);
    }

    [Fact]
    public async Task Settings_ThatAreWrong_AreToldBesideTheirField()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        await app.DropAsync(("clip.stl", OpenApp.Box(30, 20, 10)));
        await app.Page.GetByText("Rules for all parts").ClickAsync();
        ILocator field = app.Page.Locator("[id='f-tight_mm']");
        await field.FillAsync("-4");
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep", Exact = true }).ClickAsync();
        await Expect(field).ToHaveAttributeAsync("aria-invalid", "true");
        await Expect(app.Page.Locator("[id='f-tight_mm-wrong']")).ToContainTextAsync("from 0 to 100");
        Assert.Contains("f-tight_mm-wrong", await field.GetAttributeAsync("aria-describedby"));
        await field.FillAsync("3");
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep", Exact = true }).ClickAsync();
        await Expect(app.Page.GetByText("Kept.")).ToBeVisibleAsync();
        await Expect(field).Not.ToHaveAttributeAsync("aria-invalid", "true");
        // A refusal is an answer of 422, which a browser logs by itself.
        Assert.DoesNotContain(app.Complaints, c => !c.Contains("422", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Assumption_Changed_IsReckonedAnewByTheAppAndKeptOnRequest()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        await app.DropAsync(("clip.stl", OpenApp.Box(30, 20, 10)), ("shelf.stl", OpenApp.Box(190, 120, 20)));
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep and start" }).ClickAsync();
        await app.WaitForSizeLineAsync();
        ILocator energy = app.Page.Locator("[id='assume-cost.energy_per_kwh']");
        await energy.FillAsync("0.41");
        await Expect(app.Page.Locator("#assumptions h3")).ToContainTextAsync("You changed price of electricity");
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Reckon and search everything anew" }).ClickAsync();
        await Expect(app.Page.Locator("#anew")).ToContainTextAsync("Searched anew", new() { Timeout = 60_000 });
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep in the study and run it" }).ClickAsync();
        await Expect(app.Page.Locator("#assumptions h3")).Not.ToContainTextAsync("You changed", new() { Timeout = 60_000 });
        await Expect(energy).ToHaveValueAsync("0.41");
        Assert.Empty(app.Complaints);
    }

    [Fact]
    public async Task Machine_ByInterview_IsOfferedToStudies()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        await app.GoAsync("/machines/new");
        await app.Page.GetByLabel("What is it called?").FillAsync("Bench seven");
        await app.Page.GetByLabel("How large can it build?").FillAsync("wide");
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Describe the machine" }).ClickAsync();
        await Expect(app.Page.Locator("#w-size")).ToContainTextAsync("three numbers of mm");
        await app.Page.GetByLabel("How large can it build?").FillAsync("180, 180, 200");
        await app.Page.GetByLabel("Is it open or closed").SelectOptionAsync("closed");
        await app.Page.GetByLabel("How many watts?").FillAsync("350");
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Describe the machine" }).ClickAsync();
        await Expect(app.Page.GetByRole(AriaRole.Heading, new() { Name = "Bench seven is known now" })).ToBeVisibleAsync();
        await app.Page.GetByText("Look at every value").ClickAsync();
        await Expect(app.Page.Locator("[id='f-build_volume.size_mm']")).ToHaveValueAsync("180, 180, 200");
        await app.GoAsync("/");
        await app.DropAsync(("clip.stl", OpenApp.Box(30, 20, 10)));
        await Expect(app.Page.GetByText("Bench seven")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task TwoBrowsers_AtOnce_DoNotDisturbEachOther()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        IBrowserContext other = await browser.NewContextAsync(1280, 900, ColorScheme.Light, offline: false);
        IPage second = await other.NewPageAsync();
        await app.DropAsync(("clip.stl", OpenApp.Box(30, 20, 10)));
        await Expect(app.Page.GetByRole(AriaRole.Heading, new() { Name = "What is asked" })).ToBeVisibleAsync();
        string study = new Uri(app.Page.Url).AbsolutePath.Replace("/set-up", "", StringComparison.Ordinal);
        await second.GotoAsync(new Uri(app.Address, study).AbsoluteUri);
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep and start" }).ClickAsync();
        // The one who only watches sees the result come without doing anything.
        await Expect(second.GetByRole(AriaRole.Slider).First).ToBeVisibleAsync(new() { Timeout = 120_000 });
        await app.WaitForSizeLineAsync();
        await other.CloseAsync();
        Assert.Empty(app.Complaints);
    }

    [Fact]
    public async Task Folder_Chosen_StandsForWhatLiesInIt()
    {
        string folder = Directory.CreateTempSubdirectory("platewright-chosen-").FullName;
        try
        {
            Directory.CreateDirectory(Path.Combine(folder, "hood"));
            File.WriteAllBytes(Path.Combine(folder, "clip.stl"), OpenApp.Box(30, 20, 10));
            File.WriteAllBytes(Path.Combine(folder, "hood", "shell.stl"), OpenApp.Box(80, 50, 40));
            await using OpenApp app = await OpenApp.Start(browser);
            await app.Page.Locator("input[webkitdirectory]").SetInputFilesAsync(folder);
            await Expect(app.Page.GetByRole(AriaRole.Heading, new() { Name = "2 projects" })).ToBeVisibleAsync();
            await Expect(app.Page.GetByLabel("Name of project 1")).ToHaveValueAsync("clip");
            await Expect(app.Page.GetByLabel("Name of project 2")).ToHaveValueAsync("hood");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public async Task Zip_Dropped_GivesAProjectForEachFile()
    {
        using MemoryStream packed = new();
        using (ZipArchive zip = new(packed, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (string name in (string[])["things/clip.stl", "things/hood/shell.stl"])
            {
                using Stream entry = zip.CreateEntry(name).Open();
                entry.Write(OpenApp.Box(30, 20, 10));
            }
        }
        await using OpenApp app = await OpenApp.Start(browser);
        await app.DropAsync(("things.zip", packed.ToArray()));
        await Expect(app.Page.GetByRole(AriaRole.Heading, new() { Name = "2 projects" })).ToBeVisibleAsync();
    }

    [Theory]
    [InlineData(360, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    [InlineData(1600, ColorScheme.Light)]
    public async Task Places_AtAnyWidth_AreAccessibleAndDoNotScrollSideways(int width, ColorScheme scheme)
    {
        await using OpenApp app = await OpenApp.Start(browser, width: width, scheme: scheme);
        await app.DropAsync(("clip.stl", OpenApp.Box(30, 20, 10)), ("hood.stl", OpenApp.Box(130, 90, 70)));
        await Expect(app.Page.GetByRole(AriaRole.Heading, new() { Name = "What is asked" })).ToBeVisibleAsync();
        string setUp = new Uri(app.Page.Url).AbsolutePath;
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep and start" }).ClickAsync();
        await app.WaitForSizeLineAsync();
        string study = setUp.Replace("/set-up", "", StringComparison.Ordinal), id = study["/study/".Length..];
        foreach (string place in (string[])["/", setUp, study, "/machines", "/machines/new", "/machines/generic-210-enclosed", "/recipes/use", $"/compare/{id}/{id}"])
        {
            await app.GoAsync(place);
            await Expect(app.Page.Locator("h1")).ToBeVisibleAsync();
            if (place == study) await app.WaitForSizeLineAsync();
            await app.Page.Locator("details").EvaluateAllAsync<int>("all => all.map(e => e.open = true).length");
            Assert.True(await app.WidthAsync() == width, $"{place} is {await app.WidthAsync()} wide: {await app.WidestAsync()}");
            string violations = await app.ViolationsAsync();
            Assert.True(violations.Length == 0, $"{place}\n{violations}");
        }
        Assert.Empty(app.Complaints);
    }

    [Fact]
    public async Task Study_ByKeyboardAlone_IsBegunStartedAndRead()
    {
        await using OpenApp app = await OpenApp.Start(browser);
        await app.Page.GetByLabel("Name of the new study").FocusAsync();
        await app.Page.Keyboard.TypeAsync("Keys only");
        await app.Page.Keyboard.PressAsync("Enter");
        await Expect(app.Page.GetByRole(AriaRole.Heading, new() { Name = "What is asked" })).ToBeVisibleAsync();
        // Work known by its size alone needs no file.
        await app.Page.Locator("form label", new() { HasText = "Name" }).Locator("input").FocusAsync();
        foreach (string text in (string[])["Crate", "265", "240", "310"])
        {
            await app.Page.Keyboard.TypeAsync(text);
            await app.Page.Keyboard.PressAsync("Tab");
        }
        await app.Page.Keyboard.PressAsync("Enter");
        await Expect(app.Page.GetByLabel("Name of project 1")).ToHaveValueAsync("Crate");
        await app.Page.GetByRole(AriaRole.Button, new() { Name = "Keep and start" }).FocusAsync();
        await app.Page.Keyboard.PressAsync("Enter");
        await app.WaitForSizeLineAsync();
        Assert.Empty(app.Complaints);
    }
}
