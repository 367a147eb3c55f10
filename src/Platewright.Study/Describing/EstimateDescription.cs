using Platewright.Build.Care;
using Platewright.Build.Estimates;
using Platewright.Build.Heat;
using Platewright.Build.Motion;
using Platewright.Machines;
using Platewright.Study.Documents;

namespace Platewright.Study.Describing;

/// <summary>Estimates as documents say them.</summary>
internal static class EstimateDescription
{
    public static EstimateRowDocument RowOf(
        string file, string? part, Machine machine, Recipe recipe, Material material, BuildEstimate e) => new(
        file, part, machine.Name, recipe.Name, machine.Extruder.NozzleBoreMm, material.Name, e.Layers, Of(e.Time), e.MaterialMm3, e.FilamentMm, e.MassG,
        Of(e.Heat.Energy), e.Heat.PeakW ?? 0, e.RelativeError, Of(e.TimeError), Of(e.EnergyError), e.Heat.Reach.Reaches,
        e.SupportMm3, e.Notes);

    public static EstimateRowDocument RowOf(string program, Machine machine, Material material, BuildEstimate e) => new(
        program, null, machine.Name, null, machine.Extruder.NozzleBoreMm, material.Name, e.Layers, OfProgram(e.Time), e.MaterialMm3, e.FilamentMm, e.MassG,
        Of(e.Heat.Energy), e.Heat.PeakW ?? 0, e.RelativeError, Of(e.TimeError), Of(e.EnergyError), e.Heat.Reach.Reaches, 0, e.Notes);

    private static TimeDocument OfProgram(TimeParts t) => new(
        t.TotalS, t.WarmUpS, null, null, null, null, null, t.MovingS[PathKind.Extruding], t.MovingS[PathKind.Travel], t.WaitingS,
        t.ChangesS, t.ReleaseS);

    public static TimeDocument Of(TimeParts t) => new(
        t.TotalS, t.WarmUpS, t.MovingS[PathKind.Wall], t.MovingS[PathKind.SolidFace], t.MovingS[PathKind.Infill],
        t.MovingS[PathKind.Support], t.MovingS[PathKind.Brim], null, t.MovingS[PathKind.Travel], t.WaitingS, t.ChangesS, t.ReleaseS);

    public static EnergyDocument Of(CycleEnergy? energy)
    {
        if (energy is null) return new EnergyDocument(0, 0, 0, 0, 0);
        const double kwh = CycleEnergy.JoulesPerKwh;
        return new EnergyDocument(
            energy.TotalKwh, energy.WarmUpJ / kwh, energy.HoldJ / kwh, energy.MotionJ / kwh, energy.BaseJ / kwh);
    }

    public static WarpDocument? Of(WarpRisk? warp) => warp is null
        ? null
        : new(warp.Rank.ToString().ToLowerInvariant(), warp.ContactMm, warp.Shrinkage, warp.BelowSofteningK, warp.Sentence);

    public static ErrorDocument Of(ModelError error) => new(error.Low, error.High, error.Source);
}
