using Platewright.Machines;
using Platewright.Sizing.Answers;
using Platewright.Sizing.Cases;
using Platewright.Study;
using Platewright.Study.Deciding;
using Platewright.Study.Documents;

namespace Platewright.Tests.Sizing.Answers;

/// <summary>Quantities times rates, both from the document alone, are the lines of each account: what the page reckons with.</summary>
public sealed class CostBasisTests
{
    private const double Cent = 0.01;

    private static readonly SizingCase Case = Cases.Of(
        [
            Cases.Machine("small", 100, 300),
            Cases.Machine("large", 300, 1500) with
            {
                Upkeep = new Upkeep { LifeYears = 3, ResidualShare = 0.4, AssembleH = 9, TuneHPerYear = 8, MaintainHPer100H = 3, WearPer100H = 7 },
            },
        ],
        Cases.Project(0, 40, 2, 1.5), Cases.Project(1, 20, 5, 3), Cases.Project(2, 10, null, 7));

    [Fact]
    public void Account_IsQuantitiesTimesRates()
    {
        SizingDocument found = Described(Case);
        Dictionary<string, double> rates = found.Assumptions.ToDictionary(a => a.Key["cost.".Length..], a => a.Value);
        MachineSizingDocument[] priced = [.. found.Machines.Where(m => m.PerMonth is not null)];
        Assert.Equal(2, priced.Length);
        foreach (MachineSizingDocument machine in priced)
        {
            CostBasisDocument basis = machine.Basis!;
            Assert.Equal(machine.Needed, basis.Count);
            Assert.True(basis.Load.EnergyKwh > 0 || basis.Load.UnpricedKg > 0);
            double[] lines = Lines(basis, basis.Count, rates);
            CostDocument said = machine.PerMonth!;
            decimal[] expected =
            [
                said.Purchase, said.PrintedParts, said.Assembling, said.Tuning, said.OwningTax, said.Maintaining, said.Wear, said.Energy,
                said.Filament, said.Handling, said.FailedBuilds, said.WorkTax,
            ];
            for (int i = 0; i < lines.Length; i++) Assert.Equal((double)expected[i], lines[i], 2 * 1e-4);
            Assert.Equal((double)said.Total, lines.Sum(), 12e-4);
            // As many are owned as the hours need, begun builds that fail included.
            double attempts = 1 / (1 - rates["failure_share"]);
            Assert.Equal(basis.Count, Math.Max(1, (int)Math.Ceiling(basis.Load.Hours * attempts / machine.HoursOfOne)));
        }
    }

    [Fact]
    public void Mix_IsItsMachinesTimesRates()
    {
        SizingDocument found = Described(Case);
        Dictionary<string, double> rates = found.Assumptions.ToDictionary(a => a.Key["cost.".Length..], a => a.Value);
        double sum = 0;
        foreach (MixMachineDocument m in found.Mix!.Machines)
        {
            CostBasisDocument basis = found.Machines.Single(x => x.Machine == m.Machine).Basis! with { Load = m.Load! };
            sum += Lines(basis, m.Count - m.Owned, rates).Sum();
        }
        Assert.NotEmpty(found.Mix.Machines);
        Assert.Equal((double)found.Mix.PerMonth, sum, Cent);
    }

    /// <summary>The formulas of docs/sizing.md, written anew.</summary>
    private static double[] Lines(CostBasisDocument b, int count, Dictionary<string, double> r)
    {
        double months = 12 * (b.Upkeep.LifeYears ?? r["life_years"]), price = (double)b.Price, labour = r["labour_per_h"];
        double purchase = count * price * (1 - (b.Upkeep.ResidualShare ?? r["residual_share"])) / months;
        double maintaining = b.Load.Hours / 100 * (b.Upkeep.MaintainHPer100H ?? r["maintain_h_per_100h"]) * labour;
        double wear = b.Load.Hours / 100 * (b.Upkeep.WearPer100H ?? price * r["wear_share_per_100h"]);
        double energy = b.Load.EnergyKwh * r["energy_per_kwh"], filament = b.Load.PricedFilament + b.Load.UnpricedKg * r["filament_per_kg"];
        double handling = b.Load.Builds * (r["prepare_min"] + r["remove_min"]) / 60 * labour;
        double again = 1 / (1 - r["failure_share"]) - 1, bought = again * (wear + energy + filament);
        return
        [
            purchase, count * (double)b.PrintedPartsEach / months, count * (b.Upkeep.AssembleH ?? r["assemble_h"]) * labour / months,
            count * (b.Upkeep.TuneHPerYear ?? r["tune_h_per_year"]) * labour / 12, purchase * r["tax_share"], maintaining, wear, energy,
            filament, handling, bought + again * (maintaining + handling), (wear + energy + filament + bought) * r["tax_share"],
        ];
    }

    private static SizingDocument Described(SizingCase c) => new SizingDescription(
        SizingAnswer.Of(c, TestContext.Current.CancellationToken), SizingPlan.Unsaid, new Dictionary<string, string>
        {
            ["p0-1"] = "a",
            ["p1-1"] = "b",
            ["p2-1"] = "c",
        }).Describe([]);
}
