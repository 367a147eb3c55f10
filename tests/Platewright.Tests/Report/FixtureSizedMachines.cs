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
        CostDocument? cost = price is { } p ? Account(p, made) : null;
        double? total = cost is null ? null : (double)cost.Total;
        return new(machine.Id, Coverage(all, projects.Count), FixtureProjects.Wilson(made, projects.Count), 6.5 * made, 380, made > 0 ? 1 : 0,
            machine.FootprintMm is [var x, var y] ? x * (y + 250) / 1e6 : null, index == 2 ? 52 : null, machine.Enclosed is true ? "filter" : null,
            index == 0 ? null : 180 + 150 * index, index == 0 ? null : 150 + 90 * index, TurnRound(index), cost, price * 1.19m,
            price is null ? null : price * 1.19m + 12 * cost!.Running, total * 0.82, total * 1.31, made == 0 ? null : (cost?.Total ?? 0) / made);
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
            new("mass", null, 0, 1, null, 0, 1, projects),
        ];
    }

    private static TurnRoundDocument? TurnRound(int index)
    {
        if (index == 3) return null;
        double build = 9_000 - 600 * index, warm = 240 + 160 * index, release = index >= 4 ? 2_400 : 600;
        return new("bench-vice-jaws/jaw-pad", 420 + warm + build + release + 5_000, 420 + warm + build + release, 64_000, 420, warm, build,
            release, 120, 3, index >= 4 ? 2 : 3, 4);
    }

    private static CostDocument Account(decimal price, int made)
    {
        decimal purchase = decimal.Round(price * 0.8m / 60, 2), owningTax = decimal.Round(purchase * 0.19m, 2);
        decimal filament = 6.4m * made, energy = 0.9m * made, handling = 3.2m * made, failed = 0.8m * made;
        decimal workTax = decimal.Round(filament * 0.19m, 2), wear = 1.5m, running = 4 + wear + energy + filament + handling + failed + workTax;
        return new(purchase, 0.6m, 1.1m, 2, owningTax, 4, wear, energy, filament, handling, failed, workTax, running,
            purchase + 0.6m + 1.1m + 2 + owningTax + running);
    }
}
