using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>A project as the documents show it.</summary>
internal static class ProjectDescription
{
    public static ProjectDocument Of(StudiedProject project, IReadOnlyList<Machine> machines)
    {
        double? thinnest = project.Parts.Min(p => p.Part.Examined?.ThinnestWallMm);
        return new ProjectDocument(
            project.Id, project.Planned.Name, project.Wanted, [.. project.Parts.Select(p => p.Id)],
            [.. project.Verdicts.Select((v, m) => Of(v, machines[m]))],
            NeedDescription.Of(project.Need, NeedDescription.Highest(project.Parts.Select(p => p.Part.Material?.Needs)), thinnest));
    }

    private static ProjectVerdictDocument Of(ProjectVerdict v, Machine machine) => new(
        machine.Id, v.Verdict.Code(), v.Verdict.CountsAs(), v.CanMake, v.Tight, v.DecidedBy, v.Reason);
}
