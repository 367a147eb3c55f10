using Platewright.Fit;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>The smallest volumes that hold each part: what the coverage curves are made of.</summary>
internal sealed class NeedStage(StageRunner runner, FitOptions options)
{
    /// <returns>For each part, in order, what it needs.</returns>
    public IReadOnlyList<SizeNeed> Run(IReadOnlyList<StudyPart> parts, IProgressListener progress, CancellationToken cancel)
    {
        StudyPart[] distinct = [.. parts.DistinctBy(CaseOf)];
        progress.Begin("Finding smallest sizes", distinct.Length);
        SizeNeed[] needs = ParallelWork.Map(distinct, part => Run(part, cancel), progress, cancel);
        var byCase = distinct.Zip(needs).ToDictionary(p => CaseOf(p.First), p => p.Second);
        return [.. parts.Select(p => byCase[CaseOf(p)])];
    }

    private SizeNeed Run(StudyPart part, CancellationToken cancel) => runner.Run(
        Stage.Need, [part.ShapeKey], CanonicalText.Of(options) + CanonicalText.Numbers("part", part.Shrinkage, part.BrimMm),
        StoredJson.Default.SizeNeed, () => SizeNeedSolver.Solve(part.ToShape(), options, cancel));

    private static object CaseOf(StudyPart part) => (part.ShapeKey, part.Shrinkage, part.BrimMm);
}
