using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>The share of projects against the edge of a cube-shaped machine: for fit, and for each kind of heat.</summary>
internal static class CurveDescription
{
    public static IReadOnlyList<CurveDocument> Of(JudgedStudy study)
    {
        List<CurveDocument> curves = [new("fits", null, [], Steps(study, _ => true))];
        foreach (IGrouping<HeatLimits, Machine> alike in study.Machines.Where(m => m.HeatsTo is not null).GroupBy(m => m.HeatsTo!))
        {
            curves.Add(new CurveDocument(
                "can_make", MachineDescription.Of(alike.Key), [.. alike.Select(m => m.Id)],
                Steps(study, part => IsWithin(part, alike.Key, study.Plan.Options.BeadWidthMm))));
        }
        return curves;
    }

    private static bool IsWithin(StudiedPart part, HeatLimits reached, double beadWidthMm) =>
        !(part.Part.Examined?.ThinnestWallMm < beadWidthMm) &&
        (part.Part.Material?.Needs is not { } needed ||
            (needed.NozzleC <= reached.NozzleC && needed.BedC <= reached.BedC && needed.ChamberC <= reached.ChamberC));

    private static IReadOnlyList<CurveStepDocument> Steps(JudgedStudy study, Func<StudiedPart, bool> isPossible)
    {
        double[] fits = [.. study.Projects.Select(p => Edge(p, isPossible, n => n.TurnedMm)).Order()];
        double[] with = [.. study.Projects.Select(p => Edge(p, isPossible, n => n.LeastMm)).Order()];
        return
        [
            .. fits.Concat(with).Where(double.IsFinite).Distinct().Order().Select(edge => new CurveStepDocument(
                edge, Share(fits, edge, study), Share(with, edge, study))),
        ];
    }

    // The smallest cube for the whole project; infinite where one of its parts cannot be made in any.
    private static double Edge(StudiedProject project, Func<StudiedPart, bool> isPossible, Func<Need, double> edge) =>
        AnyOf.Groups(project.Parts, p => p.AnyOf, p => p.Id)
            .Max(group => group.Where(isPossible).Select(p => edge(p.Need)).DefaultIfEmpty(double.PositiveInfinity).Min());

    private static ShareDocument Share(double[] sorted, double edge, JudgedStudy study)
    {
        int at = Array.BinarySearch(sorted, edge);
        if (at < 0) at = ~at;
        while (at < sorted.Length && sorted[at] <= edge) at++;
        return Shares.Of(at, sorted.Length, study.Plan.Options.Confidence);
    }
}
