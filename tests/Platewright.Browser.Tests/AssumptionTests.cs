using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Platewright.Sizing.Money;
using Platewright.Study.Documents;
using Platewright.Tests.Report;

namespace Platewright.Browser.Tests;

/// <summary>Assumptions changed in the report: the accounts are the program's own, and the page says what was not done.</summary>
public sealed class AssumptionTests(Browser browser)
{
    private static readonly SizingDocument Sizing = FixtureStudy.WithModels.Sizing!;

    public static TheoryData<string, double> Changes => new()
    {
        { "energy_per_kwh", 2 }, { "labour_per_h", 30 }, { "tax_share", 0.2 }, { "filament_per_kg", 60 }, { "failure_share", 0.5 },
        { "life_years", 2 }, { "residual_share", 0.5 }, { "assemble_h", 40 }, { "maintain_h_per_100h", 9 }, { "wear_share_per_100h", 0.1 },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public async Task Changed_GivesTheAccountsThatTheProgramGives(string key, double value)
    {
        await using OpenReport report = await browser.OpenAsync();
        // With somebody's time paid, so that every assumption about it shows.
        await SetAsync(report, "labour_per_h", 30);
        if (key != "labour_per_h") await SetAsync(report, key, value);
        CostNumbers usual = CostNumbers.Usual(new CostAssumptions()) with { LabourPerH = 30 };
        CostNumbers changed = With(usual, key, value);
        foreach (MachineSizingDocument machine in Sizing.Machines.Where(m => m.PerMonth is not null))
        {
            int made = (int)Math.Round(machine.Basis!.Load.Hours / 6.5);
            decimal expected = FixtureSizedMachines.AccountWith(machine.Price!.Value, made, changed).Total;
            string name = FixtureStudy.WithModels.Machines.Single(m => m.Id == machine.Machine).Name;
            ILocator row = report.Page.Locator("#assumptions .scroll tr", new() { HasText = name }).First;
            decimal then = decimal.Parse((await row.Locator("td").Nth(1).InnerTextAsync()).Replace("€", "", StringComparison.Ordinal));
            Assert.InRange(then, expected - Math.Max(0.51m, expected * 1e-4m), expected + Math.Max(0.51m, expected * 1e-4m));
        }
    }

    [Fact]
    public async Task Changed_SaysSo_AndIsSetBackByOneButton()
    {
        await using OpenReport report = await browser.OpenAsync();
        ILocator article = report.Page.Locator("#assumptions");
        Assert.Equal(0, await article.GetByText("Set all back").CountAsync());
        await SetAsync(report, "energy_per_kwh", 0.6);
        string said = (await article.InnerTextAsync()).Replace('\u00a0', ' ');
        Assert.Contains("You changed price of electricity from 0.3 EUR/kWh to 0.6 EUR/kWh", said, StringComparison.Ordinal);
        Assert.Contains("the recommended set was not searched anew", said, StringComparison.Ordinal);
        Assert.Contains("recommended 1 × Open 210, 1 × Closed 330", said, StringComparison.Ordinal);
        Assert.Empty((await report.Page.RunAxe()).Violations);
        await article.GetByText("Set all back").ClickAsync();
        Assert.DoesNotContain("You changed", await article.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal("0.3", await Field(report, "energy_per_kwh").InputValueAsync());
    }

    [Fact]
    public async Task WhatHoursFollowFrom_IsNotChangedInAReport()
    {
        await using OpenReport report = await browser.OpenAsync();
        foreach (string key in (string[])["prepare_min", "remove_min", "look_min"]) Assert.True(await Field(report, key).IsDisabledAsync());
    }

    [Fact]
    public async Task ImpossibleValue_ChangesNothing()
    {
        await using OpenReport report = await browser.OpenAsync();
        await SetAsync(report, "failure_share", 1);
        Assert.DoesNotContain("You changed", await report.Page.Locator("#assumptions").InnerTextAsync(), StringComparison.Ordinal);
    }

    private static ILocator Field(OpenReport report, string key) => report.Page.Locator($"[id='assume-cost.{key}']");

    private static Task SetAsync(OpenReport report, string key, double value) => Field(report, key).FillAsync($"{value}");

    private static CostNumbers With(CostNumbers n, string key, double v) => key switch
    {
        "energy_per_kwh" => n with { EnergyPerKwh = v },
        "labour_per_h" => n with { LabourPerH = v },
        "tax_share" => n with { TaxShare = v },
        "filament_per_kg" => n with { FilamentPerKg = v },
        "failure_share" => n with { FailureShare = v },
        "life_years" => n with { LifeYears = v },
        "residual_share" => n with { ResidualShare = v },
        "assemble_h" => n with { AssembleH = v },
        "maintain_h_per_100h" => n with { MaintainHPer100H = v },
        "wear_share_per_100h" => n with { WearSharePer100H = v },
        _ => throw new ArgumentException($"No such assumption: {key}.", nameof(key)),
    };
}
