using Platewright.Sizing.Money;
using Platewright.Study.Deciding;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>An invented answer for the fixture's machines: every list has an entry, every value that may be missing misses once.</summary>
internal static class FixtureSizing
{
    public static SizingDocument Of(
        IReadOnlyList<MachineDocument> machines, IReadOnlyList<ProjectDocument> projects, IReadOnlyList<CurveDocument> curves) => new(
        "EUR", new(true, 60, projects.Count, 1, 18.5, false, 3),
        new(40, true, false, 10, null, null, "filter", true),
        new(0.6, 2500, 1.2, 2300, 55, 3, ["open-210"]),
        [.. machines.Select((m, i) => FixtureSizedMachines.Of(m, i, projects))],
        [.. new[] { 0.5, 0.75, 0.9, 1 }.Select(share => Level(share, projects, curves[0]))],
        [.. machines.Zip(machines.Skip(1)).Select((pair, i) => Step(pair.First, pair.Second, projects, i))],
        [
            new(
                new("closed-330", 1, 2950, 9, 14, 11.4, 0, 26_100, 1_180_000),
                new("open-210", 5, 2700, 5, 14, 38.2, 30.6, 14_400, 402_000)),
            new(new("closed-265", 1, 1280, 6, 14, 9.1, 0, 21_000, null), new("desk-105", 6, 1140, 1, 14, null, 0, null, null)),
        ],
        [
            new("open-210", "closed-265", 5, 6.2, 21.4, 17.8, 26.9, 0.97, 60, "open-210", 0.98,
                [.. Enumerable.Range(0, 13).Select(i => (IReadOnlyList<double>)[i * 5, 14 + i * 5 * 2.31, 31 + i * 5 * 1.515])]),
            new("open-165", "open-210", 3, 3.1, null, null, null, 0, 60, "open-165", 1,
                [.. Enumerable.Range(0, 13).Select(i => (IReadOnlyList<double>)[i * 5, 9 + i * 5 * 2.2, 14 + i * 5 * 2.31])]),
        ],
        new("within", 0.02, Mixed, 0.6, 9 / 14.0, 12 / 14.0, ["floor"], 182.45m, 71.30m, 111.15m, 2950, 4301.40m, 0.61, 1480,
            ["Wheel arch trim", "Drawer runners", "Helmet mould"],
            ["Wide 440 has no price, so no cost can be reckoned with it."]),
        [
            new([Of("open-210", "Open 210", 1, 1, 61)], 5 / 14.0, 62.10m, 9.4, 0.17, 320, 0.5),
            new([Of("open-210", "Open 210", 2, 1, 33)], 5 / 14.0, 74.80m, 5.2, 0.34, 640, null),
            new([Of("closed-265", "Closed 265", 1, 0, 74)], 6 / 14.0, 96.20m, 11.8, 0.20, 870, 0.6),
            new(Mixed, 9 / 14.0, 182.45m, 12.6, 0.61, 1480, 0.75),
            new([Of("closed-330", "Closed 330", 2, 0, 70), Of("open-210", "Open 210", 1, 1, 61)], 9 / 14.0, 241.00m, 8.1, 0.88, 2640, null),
        ],
        [
            new("Bench vice jaws", 24, "tuesday 10:00", "friday 13:00",
            [
                new("desk-105", true, false, 15, 402_000, 2, "nights"), new("open-165", true, true, 24, 241_000, 1, "none"),
                new("open-210", true, true, 24, 238_000, 1, "none"), new("round-240", true, false, 22, 270_000, 2, "attended"),
                new("closed-265", true, false, 19, 301_000, 2, "unattended"), new("wide-440", true, false, 0, null, null, "rules"),
                new("closed-330", false, false, 0, null, null, "none"),
            ]),
        ],
        [
            new("Shop printer", 22, ["closed-265", "closed-330"], [], [], 48.60m, 71),
            new("Large frame printer", 31, [], [["open-210", "closed-330"]], ["Long rail cover"], null, null),
        ],
        [
            new("cost.failure_share", "share of builds that fail", 0.08, 0.03, 0.2, "1 × Open 210, 1 × Closed 330",
                "1 × Open 210, 1 × Closed 330", "2 × Open 210, 1 × Closed 330", 171.20m, 214.90m, true),
            new("cost.energy_price", "price of energy", 0.32, 0.22, 0.45, "1 × Open 210, 1 × Closed 330",
                "1 × Open 210, 1 × Closed 330", "1 × Open 210, 1 × Closed 330", 178.10m, 188.30m, false),
            new("cost.life_years", "years a machine is used", 5, 3, 8, "1 × Open 210, 1 × Closed 330",
                "1 × Open 210, 1 × Closed 330", "1 × Open 210, 1 × Closed 330", 160.60m, 219.40m, false),
        ],
        Assumptions.Of(new CostAssumptions()),
        FixtureSheet.Made);

    private static MixMachineDocument[] Mixed =>
    [
        Of("open-210", "Open 210", 1, 1, 61),
        Of("closed-330", "Closed 330", 1, 0, 118) with { PriceEach = 2950 },
    ];

    private static MixMachineDocument Of(string id, string name, int count, int owned, double hours) =>
        new(id, name, count, owned, hours, 380, null) { Load = FixtureLoads.OfHours(hours) };

    private static LevelDocument Level(double share, IReadOnlyList<ProjectDocument> projects, CurveDocument fits)
    {
        int needed = (int)Math.Ceiling(share * projects.Count - 1e-9);
        double cube = fits.Steps.First(s => s.WithCompromise.Count >= needed).EdgeMm;
        string? part = projects.OrderBy(p => p.Need!.CubeTurnedMm).ElementAt(needed - 1).Parts[0];
        IReadOnlyList<double>[] curve = [.. new[] { 0.8, 0.9, 1, 1.15, 1.4 }.Select(f => (double[])[cube * f, cube * (1.75 - 0.72 * f)])];
        return new(share, needed, share < 0.8 ? "closed-330" : null, share < 1 ? "Generic 350 enclosed" : null, cube,
            share < 1 ? cube * 0.9 : null, share < 1 ? cube * 1.1 : null, curve, share < 1 ? part : null, share > 0.5 ? 12.4 : null);
    }

    private static LargerDocument Step(
        MachineDocument smaller, MachineDocument larger, IReadOnlyList<ProjectDocument> projects, int step)
    {
        bool Makes(ProjectDocument p, string id) => p.Verdicts.Single(v => v.Machine == id).CanMake;
        string[] gained = [.. projects.Where(p => Makes(p, larger.Id) && !Makes(p, smaller.Id)).Select(p => p.Name)];
        int lost = projects.Count(p => !Makes(p, larger.Id) && Makes(p, smaller.Id));
        double share = (gained.Length - lost) / (double)projects.Count;
        double low = Math.Max(-1, share - 0.3), high = Math.Min(1, share + 0.3);
        bool apart = low > 0 || high < 0;
        string sentence = apart
            ? $"{larger.Name} makes more of this work than {smaller.Name}, beyond chance."
            : $"{smaller.Name} and {larger.Name} cannot be told apart on this sample; about 40 more projects would.";
        return new(smaller.Id, larger.Id, gained.Length, lost, gained, share, low, high, apart ? 0.01 : 0.25, apart,
            apart ? null : 40, sentence, step == 4 ? null : 3.5 * gained.Length, larger.Price?.Amount - smaller.Price?.Amount,
            larger.FootprintMm is null || smaller.FootprintMm is null ? null : 0.06, step == 4 ? null : 120, 1.8, 260);
    }
}
