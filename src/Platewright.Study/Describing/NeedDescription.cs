using Platewright.Fit;
using Platewright.Sizing;
using Platewright.Study.Documents;

namespace Platewright.Study.Describing;

/// <summary>A need as the documents show it.</summary>
internal static class NeedDescription
{
    public static NeedDocument Of(PartNeed need) => new(
        need.CubeTurnedMm, need.CubeTiltedMm, need.CubeScaledMm, need.CubeTiltedAtLeastMm, Of(need.TurnedCurve), Of(need.TiltedCurve),
        MachineDescription.Of(need.Heat), need.ThinnestWallMm);

    private static IReadOnlyList<IReadOnlyList<double>> Of(IReadOnlyList<BedAndHeight> curve) =>
        [.. curve.Select(s => new[] { s.BedMm, s.HeightMm })];
}
