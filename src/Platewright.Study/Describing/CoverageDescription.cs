using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>How much of the work each machine takes.</summary>
internal static class CoverageDescription
{
    public static CoverageDocument Of(JudgedStudy study, int machine)
    {
        ProjectVerdict[] verdicts = [.. study.Projects.Select(p => p.Verdicts[machine])];
        // The part that would be won first with a larger machine comes first.
        string[] deciding =
        [
            .. study.Projects.Where(p => !p.Verdicts[machine].CanMake)
                .OrderBy(p => p.Need.LeastMm)
                .Select(p => p.Verdicts[machine].DecidedBy).OfType<string>().Distinct(StringComparer.Ordinal),
        ];
        return new CoverageDocument(
            verdicts.Length, Share(v => v.Verdict.CountsAs() == "fits"), Share(v => v.Verdict.CountsAs() == "compromise"),
            Share(v => v.Verdict.CountsAs() == "no"), Share(v => v.CanMake), deciding);

        ShareDocument Share(Func<ProjectVerdict, bool> counts) =>
            Shares.Of(verdicts.Count(counts), verdicts.Length, study.Plan.Options.Confidence);
    }
}
