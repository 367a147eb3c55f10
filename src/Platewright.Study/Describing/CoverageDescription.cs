using Platewright.Sizing;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>How much of the work each machine takes, as the documents show it.</summary>
internal static class CoverageDescription
{
    public static Coverage Of(JudgedStudy study, int machine) => Coverage.Of(
        [.. study.Work.Select(p => p.Verdicts[machine]).Select(v => new ProjectOutcome(v.Verdict, v.CanMake, v.DecidedBy))],
        study.Plan.Options.Confidence, study.Population);

    public static CoverageDocument Of(Coverage c) =>
        new(c.Projects, Of(c.Fits), Of(c.Compromise), Of(c.No), Of(c.CanMake), c.DecidingParts);

    public static ShareDocument Of(Share share) => new(share.Count, share.Value, share.Low, share.High);
}
