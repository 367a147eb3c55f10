using Platewright.Fit;
using Platewright.Formats;
using Platewright.Machines;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>How a part fits each machine, in order, and what it needs.</summary>
internal sealed record Fitting(IReadOnlyList<FitResult> Fits, SizeNeed Need);

/// <summary>
/// Every part on every machine, and the smallest volumes that hold it. What a part needs prepared is shared by all its machines and
/// let go after the last, so that the shapes of a large study are never all in memory. Equal shapes with equal allowances are fitted once.
/// </summary>
internal sealed class FittingStage(StageRunner runner, FitOptions options)
{
    /// <returns>The parts that could be fitted, and for each of them, in order, how.</returns>
    public (StudyWork Work, IReadOnlyList<Fitting> Fittings) Run(
        StudyWork work, IReadOnlyList<Machine> machines, IProgressListener progress, CancellationToken cancel)
    {
        StudyPart[] distinct = [.. work.Parts.DistinctBy(CaseOf)];
        progress.Begin("Fitting parts", distinct.Length);
        Attempt[] attempts = ParallelWork.Map(distinct, p => p.Name, part => Try(part, machines, cancel), progress, cancel);
        Dictionary<object, Attempt> byCase = distinct.Zip(attempts).ToDictionary(p => CaseOf(p.First), p => p.Second);
        StudyWork fitted = work.Without([.. work.Parts.Where(p => byCase[CaseOf(p)].Fitting is null)], p => byCase[CaseOf(p)].Fault!);
        return (fitted, [.. fitted.Parts.Select(p => byCase[CaseOf(p)].Fitting!)]);
    }

    private Attempt Try(StudyPart part, IReadOnlyList<Machine> machines, CancellationToken cancel)
    {
        try
        {
            return new Attempt(Run(part, machines, cancel), null);
        }
        catch (Exception e) when (Fault.Is(e))
        {
            return new Attempt(null, Fault.Of(part.Examined?.File ?? part.Name, e));
        }
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

    private sealed record Attempt(Fitting? Fitting, UnusableFile? Fault);
}
