using Platewright.Build.Care;
using Platewright.Study.Judgement;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Describing;

/// <summary>What no interval covers, and cautions where the work can hurt. Short, and deferring to the rules of the place.</summary>
internal static class Notes
{
    // Styrene and other vapours: common practice, no source.
    private static readonly string[] Fuming = ["ABS", "ASA", "PA", "PC", "PP"];
    private const double WarmChamberC = 40;

    public static IReadOnlyList<string> Of(JudgedStudy study, StudyWork work)
    {
        List<string> notes = [];
        if (study.Projects.Count == 0) return notes;
        notes.Add(study.Plan.Sizing.Work.Sample
            ? "You chose the sample: the intervals say how far chance alone may mislead for work like it, not whether your future work is like it, nor who did not answer."
            : "The projects are all the work there is, as the study file says: no interval for chance is given.");
        notes.Add(study.Projects.Any(p => p.Wanted)
            ? $"{Count(study.Projects.Count(p => p.Wanted), "project is", "projects are")} wished for, not done yet; they weigh as much as the others, and the shares without them stand beside."
            : "Work never tried because the machine at hand was too small is in no folder; add it as wanted parts by its dimensions.");
        notes.Add("Verdicts are about the convex hull and the build volume as the machine's file states it; a real machine's travel may differ.");
        AddUnknowns(notes, study);
        AddCautions(notes, study);
        return notes;
    }

    private static void AddUnknowns(List<string> notes, JudgedStudy study)
    {
        int incomplete = study.Projects.Count(p => p.Missing > 0);
        if (incomplete > 0)
            notes.Add($"{Count(incomplete, "project is", "projects are")} judged without a part that could not be used.");
        int unnamed = study.Projects.Sum(p => p.Parts.Count(part => part.Part.Material is null));
        if (unnamed > 0) notes.Add($"{Count(unnamed, "part has", "parts have")} no known material; heat is not judged for {(unnamed == 1 ? "it" : "them")}.");
        int cold = study.Machines.Count(m => m.HeatsTo is null);
        if (cold > 0)
            notes.Add($"{Count(cold, "machine does", "machines do")} not say what {(cold == 1 ? "it heats" : "they heat")} to; heat is not judged there.");
    }

    private static void AddCautions(List<string> notes, JudgedStudy study)
    {
        string[] fuming =
        [
            .. study.Projects.SelectMany(p => p.Parts).Select(p => p.Part.Material?.Name).OfType<string>()
                .Where(Fuming.Contains).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
        if (fuming.Length > 0)
            notes.Add($"{string.Join(", ", fuming)} {(fuming.Length == 1 ? "gives" : "give")} off fumes when melted: ventilate or extract as their data sheets and your local rules ask.");
        bool warm = study.Projects.SelectMany(p => p.Parts).Any(p => p.Part.Material?.Needs.ChamberC > WarmChamberC);
        double? peak = study.Machines.Select((_, m) => BuildsDescription.Of(study, m)?.PeakPowerW).Max();
        if (peak is { } watts)
        {
            notes.Add(
                $"One machine draws up to {watts:0} W while it warms up, and machines that start together add up: size circuits on that, "
                + $"not on the mean. {Cautions.WhoDecides}");
        }
        notes.Add(warm
            ? "Heated beds, nozzles and chambers burn skin and can start fires: follow the machine's manual and local rules before one runs unattended."
            : "Heated beds and nozzles burn skin and can start fires: follow the machine's manual and local rules before one runs unattended.");
    }

    private static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";
}
