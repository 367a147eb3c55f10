using Platewright.Geometry;
using Platewright.Study.Documents;

namespace Platewright.Tests.Report;

/// <summary>Invented builds for the page: plausible shapes of numbers, nothing estimated.</summary>
internal static class FixtureEstimate
{
    private const double MaterialShare = 0.3;

    public static PartEstimateDocument Of(string way, Vec3 size, double scale)
    {
        double material = MaterialShare * size.X * size.Y * size.Z * scale * scale * scale;
        double support = way == "tilted" ? 0.2 * material : 0, building = material / 4;
        TimeDocument time = new(
            300 + building + 420, 300, 0.4 * building, 0.15 * building, 0.3 * building, support > 0 ? 0.1 * building : 0,
            0.01 * building, null, (support > 0 ? 0.14 : 0.24) * building, 0, 0, 420);
        EnergyDocument energy = new(0.02 + building * 1.1e-4, 0.02, building * 7e-5, building * 2e-5, building * 2e-5);
        return new PartEstimateDocument(
            "use", "PLA", false, new EstimatePoseDocument(way, scale, [1, 0, 0, 0], size.X * size.Y, 0),
            (int)(size.Z / 0.2), time, material, support, material / 2.405, material * 1.24e-3, material * 1.24e-6, energy, 260,
            0.012, new ErrorDocument(-0.27, 0.31, "prior"), new ErrorDocument(-0.36, 0.38, "prior"),
            new WarpDocument("low", 60, 0.004, 36, "Warp risk low: 60 mm on the build surface."),
            support > 0 ? "tilted to fit: +12.0 cm³ support, +1:10 h" : null, []);
    }

    public static BuildsDocument Builds(double edge) =>
        new(20, 1000 * edge, 730 * edge, 1310 * edge, 0.12, 10 * edge, 0.1 * edge, 200 + edge);

    public static IReadOnlyList<CycleDocument> Cycles(HeatDocument heat) =>
    [
        new("PLA", 240, 110, 380, 500, false,
        [
            [0, 22, 22, null, 380], [240, heat.NozzleC, heat.BedC, null, 380], [240, heat.NozzleC, heat.BedC, null, 110],
            [3840, heat.NozzleC, heat.BedC, null, 110], [3840, heat.NozzleC, heat.BedC, null, 15], [4340, 40, 40, null, 15],
        ]),
    ];
}
