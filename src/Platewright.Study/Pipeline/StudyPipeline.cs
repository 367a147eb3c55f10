using Platewright.Fit;
using Platewright.Machines;
using Platewright.Study.Deciding;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Estimating;
using Platewright.Study.Examining;
using Platewright.Study.Hiding;
using Platewright.Study.Judgement;
using Platewright.Study.Learning;
using Platewright.Study.Store;

namespace Platewright.Study.Pipeline;

/// <summary>
/// The study, from files to the document:
/// <code>
/// plan ─► examine ─► join ─┬─► fit, need ─► estimate ─┬─► judge ─► describe ─► StudyDocument
///         (files)  (parts) └─► alike ─────────────────┘         └─► size ─┘
/// </code>
/// Names are hidden, where that is asked for, before the join: no later stage knows the true ones.
/// Each stage takes and gives immutable records and keeps what it finished in the store at once, so that a study that was
/// interrupted goes on where it was. The order of everything in the document is that of the plan, at any number of threads.
/// </summary>
public static class StudyPipeline
{
    // Bracket of the tilted scale where a part fits without tilting: it decides nothing, and a narrow one takes long.
    private const double SettledTolerance = 0.01;

    /// <param name="source">What is studied.</param>
    /// <param name="sharing">What the document gives away.</param>
    /// <param name="withEstimates">Whether time, material and energy are estimated, which takes longest.</param>
    /// <param name="learned">What past jobs say about the machines.</param>
    /// <param name="store">Where finished results are found and kept.</param>
    /// <param name="progress">Hears how it goes.</param>
    /// <param name="cancel">Stops the work; what was finished stays in the store.</param>
    /// <exception cref="StoreException">The store cannot be used.</exception>
    public static StudyOutcome Run(
        StudySource source, Sharing sharing, bool withEstimates, LearnedMachines learned, ResultStore store,
        IProgressListener progress, CancellationToken cancel)
    {
        StudyPlan plan = source.Plan;
        StageRunner runner = new(store);
        FitOptions options = new(plan.Options.Tolerance, plan.Options.TightMm) { SettledTolerance = SettledTolerance };

        IReadOnlyList<FileToExamine> files = StudyWork.FilesOf(plan);
        IReadOnlyList<Examination> found = new ExamineStage(runner, store).Run(files, progress, cancel);
        var (byFile, notSearched) = (files.Zip(found).ToDictionary(f => f.First, f => f.Second), source.Unusable);
        if (sharing.HideNames) (plan, byFile, notSearched) = NeutralNames.Of(plan, byFile, notSearched);
        StudyWork work = StudyWork.Of(plan, byFile, notSearched);
        // Bundled machines that the study does not list are fitted in the same pass: the answer names the smallest that would do.
        Machine[] beside = [.. MachineCatalog.Bundled.Where(b => plan.Machines.All(m => m != b))];
        (work, IReadOnlyList<Fitting> all) = new FittingStage(runner, options).Run(work, [.. plan.Machines, .. beside], progress, cancel);
        Fitting[] fittings = [.. all.Select(f => f with { Fits = [.. f.Fits.Take(plan.Machines.Length)] })];

        IReadOnlyList<IReadOnlyList<PartEstimateDocument?>>? estimates =
            withEstimates ? Corrected(new EstimatingStage(runner, plan).Run(work, fittings, progress, cancel), plan, learned) : null;

        JudgedStudy study = JudgedStudy.Of(plan, work, fittings, estimates);
        JudgedStudy others = JudgedStudy.Of(
            plan with { Machines = [.. beside] }, work, [.. all.Select(f => f with { Fits = [.. f.Fits.Skip(plan.Machines.Length)] })], null);
        SizingDocument? sizing = new SizingStage(runner).Run(study, others, progress, cancel);
        StudyDocument document = StudyDescription.Of(study, work, sizing, AlikeDescription.Of(work.Parts), sharing.WithModels);
        return new StudyOutcome(document, runner.Computed, runner.Found);
    }

    // Stored results stay as the model gives them: what is learned later corrects them too.
    private static IReadOnlyList<IReadOnlyList<PartEstimateDocument?>> Corrected(
        IReadOnlyList<IReadOnlyList<PartEstimateDocument?>> estimates, StudyPlan plan, LearnedMachines learned)
    {
        LearnedMachine?[] known = [.. plan.Machines.Select(learned.Of)];
        return
        [
            .. estimates.Select(part => (IReadOnlyList<PartEstimateDocument?>)
                [.. part.Select((e, m) => e is not null && known[m] is { } machine ? machine.Correct(e) : e)]),
        ];
    }
}

/// <summary>A study and what it took.</summary>
/// <param name="Computed">How many results each stage computed; a stage that computed none is absent.</param>
/// <param name="Found">How many results came from the store.</param>
public sealed record StudyOutcome(StudyDocument Document, IReadOnlyDictionary<string, int> Computed, int Found);
