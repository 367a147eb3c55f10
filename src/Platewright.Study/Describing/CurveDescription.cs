using Platewright.Sizing;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>The share of projects against the edge of a cube-shaped machine: for fit, and for each kind of heat.</summary>
internal static class CurveDescription
{
    public static IReadOnlyList<CurveDocument> Of(JudgedStudy study) =>
    [
        new("fits", null, [], Steps(study, ImaginedMachine.OfAnyKind)),
        .. HeatLevel.Of(study.Machines).Where(level => level.Heat is not null).Select(level => new CurveDocument(
            "can_make", MachineDescription.Of(level.Heat), level.Like,
            Steps(study, new ImaginedMachine(CanMake: true, level.Heat, study.Plan.Options.BeadWidthMm)))),
    ];

    private static IReadOnlyList<CurveStepDocument> Steps(JudgedStudy study, ImaginedMachine machine) =>
    [
        .. CoverageCurve.Of([.. study.Work.Select(p => p.Sized)], machine, study.Plan.Options.Confidence, study.Population)
            .Select(s => new CurveStepDocument(s.EdgeMm, CoverageDescription.Of(s.Fits), CoverageDescription.Of(s.WithCompromise))),
    ];
}
