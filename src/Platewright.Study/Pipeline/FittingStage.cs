using Platewright.Fit;
using Platewright.Machines;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>How a part fits each machine, in order, and what it needs.</summary>
internal sealed record Fitting(IReadOnlyList<FitResult> Fits, SizeNeed Need);

/// <summary>
/// Every part on every machine, and the smallest volumes that hold it. What a part needs prepared is shared by all its machines and let go
/// after the last, so that the shapes of a large study are never all in memory. Equal shapes with equal allowances are fitted once.
/// </summary>
internal sealed class FittingStage(StageRunner runner, FitOptions options)
{
    /// <returns>One for each part, in order.</returns>
    public IReadOnlyList<Fitting> Run(
        IReadOnlyList<StudyPart> parts, IReadOnlyList<Machine> machines, IProgressListener progress, CancellationToken cancel)
    {
        StudyPart[] distinct = [.. parts.DistinctBy(CaseOf)];
        progress.Begin("Fitting parts", distinct.Length);
        Fitting[] fittings = ParallelWork.Map(distinct, part => Run(part, machines, cancel), progress, cancel);
        Dictionary<object, Fitting> byCase = distinct.Zip(fittings).ToDictionary(p => CaseOf(p.First), p => p.Second);
        return [.. parts.Select(p => byCase[CaseOf(p)])];
    }

    private Fitting Run(StudyPart part, IReadOnlyList<Machine> machines, CancellationToken cancel)
    {
        Lazy<PreparedPart> prepared = new(() => new PreparedPart(part.ToShape()), isThreadSafe: false);
        string shape = CanonicalText.Of(options) + CanonicalText.Numbers("part", part.Shrinkage, part.BrimMm);
        string allowed = CanonicalText.Of(part.Planned.Allowance);
        FitResult[] fits =
        [
            .. machines.Select(machine => runner.Run(
                Stage.Fit, [part.ShapeKey, CanonicalText.Of(machine)], shape + allowed, StoredJson.Default.FitResult,
                () => FitSolver.Solve(prepared.Value, machine, part.Planned.Allowance, options, cancel))),
        ];
        SizeNeed need = runner.Run(
            Stage.Need, [part.ShapeKey], shape, StoredJson.Default.SizeNeed,
            () => SizeNeedSolver.Solve(prepared.Value, options, cancel));
        return new Fitting(fits, need);
    }

    private static object CaseOf(StudyPart part) => (part.ShapeKey, part.Shrinkage, part.BrimMm, part.Planned.Allowance);
}
