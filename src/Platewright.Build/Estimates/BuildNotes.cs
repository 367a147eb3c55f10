using Platewright.Build.Care;
using Platewright.Build.Heat;

namespace Platewright.Build.Estimates;

/// <summary>What a person should know of a build, in sentences: what is not counted, and what to take care of.</summary>
internal static class BuildNotes
{
    private const double SecondsPerHour = 3600;

    public static IEnumerable<string> Of(MachineHeat heat, BuildCycleResult cycle, double seconds, double materialMm3)
    {
        if (heat.Machine.Heating is null)
            yield return $"{heat.Machine.Name} describes no heaters: warm-up, release and energy are not counted.";
        else if (cycle.WarmUpS is null)
            yield return $"{heat.Machine.Name} never gets ready for {heat.Material.Name}: warm-up and energy are not counted.";
        else if (cycle.ReleaseS is null)
            yield return "The room is too warm for the part to let go: release is not counted.";
        foreach (string sentence in heat.Reach.Sentences) yield return sentence;
        foreach (string note in cycle.Notes) yield return note;
        if (Spools.Of(heat.Material, materialMm3 * heat.Material.DensityGCm3 / 1000).Sentence is { } spools) yield return spools;
        foreach (string caution in Cautions.OfBuild(heat.Material, seconds / SecondsPerHour)) yield return caution;
    }
}
