using System.Diagnostics;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Examining;
using Platewright.Study.Judgement;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>What to fit and how: the whole of <c>fit</c>.</summary>
/// <param name="Material">Gives shrinkage, brim and the heat needed; null for none.</param>
public sealed record FitRun(
    IReadOnlyList<string> Models, IReadOnlyList<Machine> Machines, Material? Material, Allowance Allowance,
    ExamineOptions Examining, FitOptions Fitting)
{
    /// <summary>Every part in the models on every machine. Nothing is kept.</summary>
    public FitsDocument Run(IProgressListener progress, CancellationToken cancel)
    {
        ModelPaths paths = ModelPaths.Below(Models, cancel);
        IReadOnlyList<Examination> files = new ExamineStage(new StageRunner(store: null), store: null)
            .Run([.. paths.Files.Select(p => new FileToExamine(p, Examining))], progress, cancel);
        ExaminedPart[] parts = [.. files.SelectMany(f => f.Parts)];
        progress.Begin("Fitting parts", parts.Length);
        FitRowDocument[][] rows = ParallelWork.Map(parts, part => RowsOf(part, cancel), progress, cancel);
        return new FitsDocument(
            [.. rows.SelectMany(r => r)],
            [.. paths.Unusable.Concat(files.SelectMany(f => f.Unusable)).Select(ModelDescription.Of)]);
    }

    private FitRowDocument[] RowsOf(ExaminedPart part, CancellationToken cancel)
    {
        PreparedPart prepared = new(new PartShape(part.ToHull(), Material?.Shrinkage ?? 0, Material?.BrimMm ?? 0));
        return
        [
            .. Machines.Select(machine =>
            {
                long start = Stopwatch.GetTimestamp();
                FitResult fit = FitSolver.Solve(prepared, machine, Allowance, Fitting, cancel);
                double seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
                JudgedFit judged = JudgedFit.Of(fit, machine, Material, part.ThinnestWallMm, Examining.BeadWidthMm);
                return FitDescription.RowOf(part.File, part.Object, machine.Name, judged, seconds);
            }),
        ];
    }
}
