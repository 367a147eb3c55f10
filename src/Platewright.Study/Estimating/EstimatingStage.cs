using System.Text.Json;
using Platewright.Fit;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Pipeline;
using Platewright.Study.Store;

namespace Platewright.Study.Estimating;

/// <summary>
/// Every part on every machine that takes it whole: pose, time, material, energy. A mesh is read again only where a result is not in
/// the store; equal parts are estimated once.
/// </summary>
internal sealed class EstimatingStage(StageRunner runner, StudyPlan plan)
{
    /// <returns>For each part, in order, one for each machine; null where nothing can be estimated.</returns>
    public IReadOnlyList<IReadOnlyList<PartEstimateDocument?>> Run(
        StudyWork work, IReadOnlyList<Fitting> fittings, IProgressListener progress, CancellationToken cancel)
    {
        MachineHeats heats = new();
        MeshReading meshes = new(plan.Options);
        (StudyPart Part, Fitting Fitting)[] cases = [.. work.Parts.Zip(fittings).DistinctBy(p => CaseOf(p.First))];
        progress.Begin("Estimating builds", cases.Length);
        IReadOnlyList<PartEstimateDocument?>[] found = ParallelWork.Map(
            cases, c => c.Part.Name, c => Of(c.Part, c.Fitting, heats, meshes, cancel), progress, cancel);
        Dictionary<object, IReadOnlyList<PartEstimateDocument?>> byCase =
            cases.Zip(found).ToDictionary(p => CaseOf(p.First.Part), p => p.Second);
        return [.. work.Parts.Select(p => byCase[CaseOf(p)])];
    }

    private IReadOnlyList<PartEstimateDocument?> Of(
        StudyPart part, Fitting fitting, MachineHeats heats, MeshReading meshes, CancellationToken cancel)
    {
        PartCase one = new(part, () => meshes.Of(part, cancel), cancel);
        string key = Canonical(part, one.Material);
        return
        [
            .. plan.Machines.Zip(fitting.Fits, (machine, fit) => CanEstimate(part, machine, fit)
                ? runner.Run(
                    Stage.Estimate, [part.Examined!.MeshKey, CanonicalText.OfBuild(machine)], key,
                    StoredJson.Default.PartEstimateDocument, () => one.On(heats.Of(machine, one.Material), fit))
                : null),
        ];
    }

    private static bool CanEstimate(StudyPart part, Machine machine, FitResult fit) =>
        part.Examined is not null && machine.Motion is not null && fit.Verdict is not (Verdict.No or Verdict.InPieces)
        && part.Examined.Bounds.Size.Z > 0;

    private static object CaseOf(StudyPart part) => (
        part.Examined?.MeshKey ?? part.ShapeKey, part.Material, part.Planned.Recipe, part.BrimMm, part.Planned.Allowance,
        part.Examined is null);

    private static string Canonical(StudyPart part, Material material) =>
        CanonicalText.Of(part.Planned.Allowance) + CanonicalText.Numbers("brim", part.BrimMm)
        + JsonSerializer.Serialize(material with { Source = "", PricePerKg = null })
        + JsonSerializer.Serialize(part.Planned.Recipe with { Purpose = null });
}
