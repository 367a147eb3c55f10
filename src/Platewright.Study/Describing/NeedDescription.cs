using Platewright.Fit;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>A need as the documents show it.</summary>
internal static class NeedDescription
{
    public static NeedDocument Of(Need need, HeatLimits? heat, double? thinnestWallMm) => new(
        need.TurnedMm, need.TiltedMm, need.ScaledMm, need.TiltedAtLeastMm, Of(need.TurnedCurve), Of(need.TiltedCurve),
        MachineDescription.Of(heat), thinnestWallMm);

    /// <summary>The higher of each temperature; null where there is none at all.</summary>
    public static HeatLimits? Highest(IEnumerable<HeatLimits?> heats)
    {
        HeatLimits[] known = [.. heats.OfType<HeatLimits>()];
        return known.Length == 0 ? null : new HeatLimits(known.Max(h => h.NozzleC), known.Max(h => h.BedC), known.Max(h => h.ChamberC));
    }

    private static IReadOnlyList<IReadOnlyList<double>> Of(IReadOnlyList<BedAndHeight> curve) =>
        [.. curve.Select(s => new[] { s.BedMm, s.HeightMm })];
}
