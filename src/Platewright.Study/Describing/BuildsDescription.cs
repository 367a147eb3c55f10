using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>What all parts of a study take on one machine.</summary>
internal static class BuildsDescription
{
    /// <summary>The sum over what the machine can make; null where nothing was estimated.</summary>
    public static BuildsDocument? Of(JudgedStudy study, int machine)
    {
        int parts = 0;
        double time = 0, low = 0, high = 0, idle = 0, mass = 0, energy = 0, peak = 0;
        bool heated = false;
        foreach (StudiedPart part in study.Projects.SelectMany(p => p.Parts))
        {
            if (!part.Fits[machine].CanMake || part.Estimates[machine] is not { } e) continue;
            int copies = part.Part.Planned.Quantity;
            parts += copies;
            time += copies * e.TimeS.Total;
            low += copies * e.TimeS.Total * (1 + e.TimeError.Low);
            high += copies * e.TimeS.Total * (1 + e.TimeError.High);
            idle += copies * (e.TimeS.WarmUp + e.TimeS.Release);
            mass += copies * e.MassG;
            if (e.EnergyKwh is null) continue;
            heated = true;
            energy += copies * e.EnergyKwh.Total;
            peak = Math.Max(peak, e.PeakPowerW ?? 0);
        }
        return parts == 0
            ? null
            : new BuildsDocument(
                parts, time, Math.Max(0, low), high, idle / time, mass, heated ? energy : null, heated ? peak : null);
    }
}
