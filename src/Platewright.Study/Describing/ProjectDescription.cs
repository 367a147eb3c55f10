using Platewright.Machines;
using Platewright.Sizing;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>A project as the documents show it.</summary>
internal static class ProjectDescription
{
    public static ProjectDocument Of(StudiedProject project, IReadOnlyList<Machine> machines) => new(
        project.Id, project.Planned.Name, project.Wanted, [.. project.Parts.Select(p => p.Id)],
        [.. project.Verdicts.Select((v, m) => Of(v, machines[m]))],
        ProjectNeed.Of(project.Sized) is { } need ? NeedDescription.Of(need) : null)
    {
        PrintedPartsOf = project.Planned.Frequency.PrintedPartsOf,
    };

    private static ProjectVerdictDocument Of(ProjectVerdict v, Machine machine) => new(
        machine.Id, v.Verdict.Code(), v.Verdict.CountsAs(), v.CanMake, v.Tight, v.DecidedBy, v.Reason);
}
