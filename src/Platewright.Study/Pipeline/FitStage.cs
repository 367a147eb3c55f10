using Platewright.Fit;
using Platewright.Machines;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>Every part on every machine. Equal shapes with equal allowances are fitted once.</summary>
internal sealed class FitStage(StageRunner runner, FitOptions options)
{
    /// <returns>For each part, in order, its fit on each machine, in order.</returns>
    public IReadOnlyList<FitResult[]> Run(
        IReadOnlyList<StudyPart> parts, IReadOnlyList<Machine> machines, IProgressListener progress, CancellationToken cancel)
    {
        StudyPart[] distinct = [.. parts.DistinctBy(CaseOf)];
        progress.Begin("Fitting parts", distinct.Length * machines.Count);
        var work = distinct.SelectMany(part =>
        {
            SharedShape shape = new(part.ToShape, machines.Count);
            return machines.Select(machine => (Part: part, Shape: shape, Machine: machine));
        }).ToArray();
        FitResult[] results = ParallelWork.Map(work, w => Run(w.Part, w.Shape, w.Machine, cancel), progress, cancel);
        var byCase = distinct.Zip(results.Chunk(Math.Max(1, machines.Count))).ToDictionary(p => CaseOf(p.First), p => p.Second);
        return [.. parts.Select(p => byCase[CaseOf(p)])];
    }

    private FitResult Run(StudyPart part, SharedShape shape, Machine machine, CancellationToken cancel)
    {
        string what = CanonicalText.Of(options) + CanonicalText.Of(part.Planned.Allowance) +
            CanonicalText.Numbers("part", part.Shrinkage, part.BrimMm);
        FitResult fit = runner.Run(
            Stage.Fit, [part.ShapeKey, CanonicalText.Of(machine)], what, StoredJson.Default.FitResult,
            () => FitSolver.Solve(shape.Use(), machine, part.Planned.Allowance, options, cancel));
        shape.Release();
        return fit;
    }

    private static object CaseOf(StudyPart part) => (part.ShapeKey, part.Shrinkage, part.BrimMm, part.Planned.Allowance);
}
