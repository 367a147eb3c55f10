using Platewright.Geometry;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>Invented builds for the page: plausible shapes of numbers, nothing estimated.</summary>
internal static class FixtureEstimate
{
    public const string Opened = "Opened: the closed chamber would reach 37 °C, and PLA goes soft above 35 °C.";

    private const double MaterialShare = 0.3;

    public static PartEstimateDocument Of(MachineDocument machine, string way, Vec3 size, double scale)
    {
        double warmUp = 2 * machine.EdgeMm;
        double material = MaterialShare * size.X * size.Y * size.Z * scale * scale * scale;
        double support = way == "tilted" ? 0.2 * material : 0, building = material / 4;
        TimeDocument time = new(
            warmUp + building + 420, warmUp, 0.4 * building, 0.15 * building, 0.3 * building, support > 0 ? 0.1 * building : 0,
            0.01 * building, null, (support > 0 ? 0.04 : 0.14) * building, 0, 0, 420);
        EnergyDocument energy = new(0.02 + building * 1.1e-4, 0.02, building * 7e-5, building * 2e-5, building * 2e-5);
        return new PartEstimateDocument(
            "use", "PLA", false, new EstimatePoseDocument(way, scale, [1, 0, 0, 0], size.X * size.Y, 0),
            (int)(size.Z / 0.2), time, material, support, material / 2.405, material * 1.24e-3, material * 1.24e-6, energy, 200 + machine.EdgeMm,
            0.012, new ErrorDocument(-0.27, 0.31, "prior"), new ErrorDocument(-0.36, 0.38, "prior"),
            new WarpDocument("low", 60, 0.004, 36, "Warp risk low: 60 mm on the build surface."),
            support > 0 ? "tilted to fit: +12.0 cm³ support, +1:10 h" : null,
            machine.Enclosed == true ? [Opened] : []);
    }

    public static BuildsDocument Builds(double edge) =>
        new(20, 1000 * edge, 730 * edge, 1310 * edge, 0.12, 10 * edge, 0.1 * edge, 200 + edge);

    /// <summary>PLA everywhere, in an opened chamber where there is one, and ABS in the chamber.</summary>
    public static IReadOnlyList<CycleDocument> Cycles(HeatDocument heat) => heat.ChamberC > 0
        ? [Cycle("ABS", 900, 140, new(245, 100, heat.ChamberC), false), Cycle("PLA", 240, 110, new(205, 55, 0), true)]
        : [Cycle("PLA", 240, 110, new(205, 55, 0), false)];

    private static CycleDocument Cycle(string material, double warmUp, double hold, HeatDocument heat, bool vented)
    {
        const double Peak = 380, Release = 500, Idle = 15, Room = 22;
        double? chamber = heat.ChamberC > 0 ? heat.ChamberC : null, room = chamber is null ? null : Room;
        double built = warmUp + 3600;
        return new(material, warmUp, hold, Peak, Release, vented,
        [
            [0, Room, Room, room, Peak], [warmUp, heat.NozzleC, heat.BedC, chamber, Peak],
            [warmUp, heat.NozzleC, heat.BedC, chamber, hold], [built, heat.NozzleC, heat.BedC, chamber, hold],
            [built, heat.NozzleC, heat.BedC, chamber, Idle], [built + Release, 40, 40, room, Idle],
        ]);
    }
}
