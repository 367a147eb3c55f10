using Platewright.Build.Heat;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Estimating;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>Build cycles to look at: each machine with each material of the study.</summary>
internal static class CycleDescription
{
    /// <summary>How long the pictured build is, s: long enough that warm-up, hold and cooling all show.</summary>
    private const double PicturedS = 3600;

    public static IReadOnlyList<CycleDocument> Of(JudgedStudy study, int machine)
    {
        if (study.Machines[machine].Heating is null) return [];
        var estimated = study.Projects.SelectMany(p => p.Parts).Where(p => p.Estimates[machine] is not null).ToArray();
        Material[] materials = [.. estimated.Select(p => PartCase.MaterialOf(p.Part).Material).DistinctBy(m => m.Name)];
        return
        [
            .. materials.OrderBy(m => m.Name, StringComparer.Ordinal)
                .Select(m => Of(study.Machines[machine], m, FlowOf(estimated, m, machine))).OfType<CycleDocument>(),
        ];
    }

    /// <summary>Mean flow of the parts of a material, mm³/s.</summary>
    private static double FlowOf(StudiedPart[] parts, Material material, int machine)
    {
        PartEstimateDocument[] own = [.. parts.Select(p => p.Estimates[machine]!).Where(e => e.Material == material.Name)];
        double seconds = own.Sum(e => e.TimeS.Total - e.TimeS.WarmUp - e.TimeS.Release);
        return seconds > 0 ? own.Sum(e => e.MaterialMm3) / seconds : 0;
    }

    private static CycleDocument? Of(Machine machine, Material material, double flow)
    {
        BuildCycleResult cycle = BuildCycle.Simulate(machine, material, PicturedS, flow * PicturedS);
        return cycle.WarmUpS is not { } warmUp || cycle.PeakW is not { } peak
            ? null
            : new CycleDocument(
                material.Name, warmUp, cycle.Hold!.TotalW + machine.Heating!.ElectronicsW + machine.Heating.MotorsW, peak,
                cycle.ReleaseS, cycle.Vented,
                [.. cycle.Picture.Select(p => new[] { Round(p.TimeS), Round(p.NozzleC), Round(p.BedC), Round(p.ChamberC), Round(p.PowerW) })]);
    }

    private static double? Round(double? value) => value is { } v ? Math.Round(v, 1) : null;
}
