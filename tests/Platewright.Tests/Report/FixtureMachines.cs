using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>Seven invented machines; two stand close together, so that labels must make room for each other.</summary>
internal static class FixtureMachines
{
    private static readonly CoverageDocument Unknown = new(0, None, None, None, None, []);

    private static ShareDocument None => new(0, 0, 0, 1);

    public static List<MachineDocument> All() =>
    [
        Box("desk-105", "Desk 105", 105, 105, 105, new(230, 70, 0), 190),
        Box("open-165", "Open 165", 165, 165, 175, new(250, 90, 0), 320),
        Box("open-210", "Open 210", 210, 210, 205, new(260, 100, 0), 540),
        Round("round-240", "Round 240", 240, 300, new(260, 80, 0), 610),
        Box("closed-265", "Closed 265", 265, 240, 310, new(290, 110, 50), 1280),
        Box("closed-330", "Closed 330", 330, 330, 340, new(300, 120, 65), 2950),
        Box("wide-440", "Wide 440", 440, 440, 400, new(300, 110, 0), null),
    ];

    private static MachineDocument Box(
        string id, string name, double x, double y, double z, HeatDocument heat, decimal? price) =>
        new(id, name, true, new("box", [x, y, z], null, null, z), new(0, 0, 0, 0, 0),
            id == "open-210" ? [new([0, 180, 0], [30, 210, 12])] : [], heat, heat.ChamberC > 0,
            price is { } amount ? new(amount, "EUR") : null, [x + 180, y + 190], "Stands for a class of machines.",
            Math.Cbrt(x * y * z), Unknown,
            FixtureEstimate.Builds(Math.Cbrt(x * y * z)), FixtureEstimate.Cycles(heat));

    private static MachineDocument Round(string id, string name, double d, double h, HeatDocument heat, decimal price) =>
        new(id, name, true, new("cylinder", null, d, null, h), new(4, 4, 4, 4, 0), [], heat, false,
            new(price, "EUR"), null, null, Math.Cbrt(Math.PI / 4 * d * d * h), Unknown,
            FixtureEstimate.Builds(d), FixtureEstimate.Cycles(heat));
}
