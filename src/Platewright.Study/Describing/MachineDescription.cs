using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Documents;

namespace Platewright.Study.Describing;

/// <summary>A machine as the documents show it.</summary>
internal static class MachineDescription
{
    public static MachineDocument Of(
        Machine machine, CoverageDocument coverage, BuildsDocument? builds, IReadOnlyList<CycleDocument> cycles) => new(
        machine.Id, machine.Name, machine.Generic, Of(machine.BuildVolume), Of(machine.Margins),
        [.. machine.KeepOuts.Select(k => new BoxDocument(Numbers(k.Min), Numbers(k.Max)))],
        Of(machine.HeatsTo), machine.Enclosed, machine.Price is { } p ? new PriceDocument(p.Amount, p.Currency) : null,
        machine.FootprintMm is { } f ? [f.X, f.Y] : null, machine.Note, UsableVolume.EdgeMm(machine), coverage,
        builds, cycles);

    public static HeatDocument? Of(HeatLimits? heat) => heat is null ? null : new(heat.NozzleC, heat.BedC, heat.ChamberC);

    public static IReadOnlyList<double> Numbers(Vec3 v) => [v.X, v.Y, v.Z];

    private static BuildVolumeDocument Of(BuildVolume volume) => volume switch
    {
        BoxVolume box => new("box", [box.WidthMm, box.DepthMm, box.HeightMm], null, null, box.HeightMm),
        CylinderVolume round => new("cylinder", null, round.DiameterMm, null, round.HeightMm),
        PrismVolume prism => new("prism", null, null, [.. prism.PolygonMm.Select(p => new[] { p.X, p.Y })], prism.HeightMm),
        _ => throw new ArgumentException($"No such build volume: {volume.GetType().Name}.", nameof(volume)),
    };

    private static MarginsDocument Of(Margins m) => new(m.LeftMm, m.RightMm, m.FrontMm, m.BackMm, m.TopMm);
}
