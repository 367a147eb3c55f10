using Platewright.Machines;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>Coverage, turn-round and cost of the fixture's machines; the one without a price has no cost.</summary>
internal static class FixtureSizedMachines
{
    public static MachineSizingDocument Of(MachineDocument machine, int index, IReadOnlyList<ProjectDocument> projects)
    {
        int made = projects.Count(p => p.Verdicts.Single(v => v.Machine == machine.Id).CanMake);
        ShareDocument all = FixtureProjects.Wilson(made, projects.Count);
        decimal? price = machine.Price?.Amount;
        (CostDocument PerMonth, CostBasisDocument Basis)? account = price is { } p ? Account(p, made) : null;
        CostDocument? cost = account?.PerMonth;
        double? total = cost is null ? null : (double)cost.Total;
        return new(machine.Id, Coverage(all, projects.Count), FixtureProjects.Wilson(made, projects.Count), 6.5 * made, 380, made > 0 ? 1 : 0,
            machine.FootprintMm is [var x, var y] ? x * (y + 250) / 1e6 : null, index == 2 ? 52 : null, machine.Enclosed is true ? "filter" : null,
            index == 0 ? null : 180 + 150 * index, index == 0 ? null : 150 + 90 * index, TurnRound(index), cost, price * 1.19m,
            price is null ? null : price * 1.19m + 12 * cost!.Running, total * 0.82, total * 1.31, made == 0 ? null : (cost?.Total ?? 0) / made)
        {
            Price = price,
            Basis = account?.Basis,
        };
    }

    private static MeasureDocument[] Coverage(ShareDocument all, int projects)
    {
        double p = all.Share;
        MeasureDocument Of(string measure, double share, double half, int left) => new(measure, share, Math.Max(0, share - half),
            Math.Min(1, share + half), share * 0.85, Math.Max(0, share * 0.85 - half), Math.Min(1, share * 0.85 + half), left);
        return
        [
            Of("parts", 0.3 + 0.65 * p, 0.12, 0), Of("projects", p, (all.High - all.Low) / 2, 0),
            Of("projects_as_made", Math.Sqrt(p), 0.18, projects / 5), Of("hours", p * 0.9, 0.22, 1),
            new("mass", null, 0, 1, null, 0, 1, projects), Of("money", p * 0.85, 0.2, 1),
        ];
    }

    private static TurnRoundDocument? TurnRound(int index)
    {
        if (index == 3) return null;
        double build = 9_000 - 600 * index, warm = 240 + 160 * index, release = index >= 4 ? 2_400 : 600;
        return new("bench-vice-jaws/jaw-pad", 420 + warm + build + release + 5_000, 420 + warm + build + release, 64_000, 420, warm, build,
            release, 120, 3, index >= 4 ? 2 : 3, 4);
    }

    /// <summary>The work of a month, and what it costs with the usual assumptions, line by line to the cent.</summary>
    private static (CostDocument PerMonth, CostBasisDocument Basis) Account(decimal price, int made)
    {
        CostAccount a = AccountWith(price, made, CostNumbers.Usual(new CostAssumptions()));
        decimal[] lines =
        [
            a.Purchase, a.PrintedParts, a.Assembling, a.Tuning, a.OwningTax, a.Maintaining, a.Wear, a.Energy, a.Filament, a.Handling,
            a.FailedBuilds, a.WorkTax,
        ];
        decimal[] c = [.. lines.Select(line => decimal.Round(line, 2))];
        return (
            new(c[0], c[1], c[2], c[3], c[4], c[5], c[6], c[7], c[8], c[9], c[10], c[11], c[3] + c[5..].Sum(), c.Sum()),
            new(1, price, PrintedParts, FixtureLoads.Of(LoadOf(made)), new(null, null, null, 3, null, null)));
    }

    /// <summary>The account with other numbers, as the program reckons it.</summary>
    public static CostAccount AccountWith(decimal price, int made, CostNumbers numbers) => CostAccount.Of(
        new SizedMachine("any", "any", 200, price, null, null, null, new Upkeep { TuneHPerYear = 3 }), 1, LoadOf(made), numbers, PrintedParts);

    private static Load LoadOf(int made) => new(3 * made, 6.5 * made, 1.4 * made, true, 5.1 * made, 0.12 * made);

    private const decimal PrintedParts = 24;
}
