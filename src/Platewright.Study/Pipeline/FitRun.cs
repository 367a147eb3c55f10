using System.Diagnostics;
using Platewright.Fit;
using Platewright.Fit.Proofs;
using Platewright.Formats;
using Platewright.Machines;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Examining;
using Platewright.Study.Judgement;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>What to fit and how: the whole of <c>fit</c>. Nothing is kept.</summary>
/// <param name="Material">Gives shrinkage, brim and the heat needed; null for none.</param>
/// <param name="WithProof">Write down the proof of each fit too.</param>
public sealed record FitRun(
    IReadOnlyList<string> Models, IReadOnlyList<Machine> Machines, Material? Material, Allowance Allowance,
    ExamineOptions Examining, FitOptions Fitting, bool WithProof)
{
    /// <summary>Every part in the models on every machine.</summary>
    public FitOutcome Run(IProgressListener progress, CancellationToken cancel)
    {
        ModelPaths paths = ModelPaths.Below(Models, cancel);
        IReadOnlyList<Examination> files = new ExamineStage(new StageRunner(store: null), store: null)
            .Run([.. paths.Files.Select(p => new FileToExamine(p, Examining))], progress, cancel);
        ExaminedPart[] parts = [.. files.SelectMany(f => f.Parts)];
        progress.Begin("Fitting parts", parts.Length);
        PartOutcome[] found = ParallelWork.Map(parts, p => p.File, part => Try(part, cancel), progress, cancel);
        UnusableFile[] unusable =
        [
            .. paths.Unusable, .. files.SelectMany(f => f.Unusable), .. found.Select(f => f.Fault).OfType<UnusableFile>(),
        ];
        return new FitOutcome(
            new FitsDocument([.. found.SelectMany(f => f.Rows)], [.. unusable.Select(ModelDescription.Of)]),
            new ProofsDocument([.. found.SelectMany(f => f.Proofs)]),
            [.. found.SelectMany(f => f.NotProved)]);
    }

    private PartOutcome Try(ExaminedPart part, CancellationToken cancel)
    {
        try
        {
            return Of(part, cancel);
        }
        catch (Exception e) when (Fault.Is(e))
        {
            return new PartOutcome([], [], [], Fault.Of(part.File, e));
        }
    }

    private PartOutcome Of(ExaminedPart part, CancellationToken cancel)
    {
        PreparedPart prepared = new(new PartShape(part.ToHull(), Material?.Shrinkage ?? 0, Material?.BrimMm ?? 0));
        List<FitRowDocument> rows = [];
        List<ProofDocument> proofs = [];
        List<string> notProved = [];
        foreach (Machine machine in Machines)
        {
            long start = Stopwatch.GetTimestamp();
            FitResult fit = FitSolver.Solve(prepared, machine, Allowance, Fitting, cancel);
            double seconds = Stopwatch.GetElapsedTime(start).TotalSeconds;
            JudgedFit judged = JudgedFit.Of(fit, machine, Material, part.ThinnestWallMm, Examining.BeadWidthMm);
            rows.Add(FitDescription.RowOf(part.File, part.Object, machine.Name, judged, seconds));
            if (!WithProof) continue;
            try
            {
                proofs.Add(ProofDocument.Of(part.File, part.Object, machine.Name, FitProver.Prove(prepared, machine, Fitting, cancel)));
            }
            catch (ArgumentException e)
            {
                notProved.Add($"{part.File} on {machine.Name}: no proof was written. {e.Message}");
            }
        }
        return new PartOutcome(rows, proofs, notProved, null);
    }

    private sealed record PartOutcome(
        IReadOnlyList<FitRowDocument> Rows, IReadOnlyList<ProofDocument> Proofs, IReadOnlyList<string> NotProved, UnusableFile? Fault);
}

/// <summary>Fits, their proofs where asked for, and a sentence for each that could not be written.</summary>
public sealed record FitOutcome(FitsDocument Fits, ProofsDocument Proofs, IReadOnlyList<string> NotProved);
