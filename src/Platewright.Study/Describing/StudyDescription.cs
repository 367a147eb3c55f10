using Platewright.Sizing;
using Platewright.Study.Deciding.Sheet;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Describing;

/// <summary>Everything that was found, as one document.</summary>
internal static class StudyDescription
{
    /// <param name="sizing">Without its sheet; null where there is no project.</param>
    public static StudyDocument Of(
        JudgedStudy study, StudyWork work, SizingDocument? sizing, IReadOnlyList<AlikeDocument> alike, bool withModels)
    {
        StudyPlan plan = study.Plan;
        Coverage[] coverage = [.. plan.Machines.Select((_, i) => CoverageDescription.Of(study, i))];
        MachineDocument[] machines = [.. plan.Machines.Select((m, i) => MachineDescription.Of(m, CoverageDescription.Of(coverage[i]), BuildsDescription.Of(study, i), CycleDescription.Of(study, i)))];
        Headline headline = Headline.Of(
            [.. machines.Zip(coverage, (m, c) => new MachineStanding(m.Name, m.EdgeMm, c.CanMake))], plan.Options.Confidence);
        StudyDocument document = new()
        {
            Name = plan.Name,
            Headline = headline.Sentence(),
            Options = new StudyOptionsDocument(
                plan.Options.TightMm, plan.Options.LeastScale, plan.Options.BeadWidthMm, plan.Options.Confidence, plan.Options.Tolerance),
            Machines = machines,
            Projects = [.. study.Projects.Select(p => ProjectDescription.Of(p, plan.Machines))],
            Parts = [.. study.Projects.SelectMany(p => p.Parts.Select(part => PartDescription.Of(part, p, plan, withModels)))],
            Curves = CurveDescription.Of(study),
            Alike = alike,
            Unusable = [.. work.Unusable.Select(ModelDescription.Of)],
            Notes = Notes.Of(study, work),
            Sizing = sizing,
        };
        return sizing is null ? document : document with { Sizing = sizing with { Sheet = DecisionSheet.Of(document) } };
    }
}
