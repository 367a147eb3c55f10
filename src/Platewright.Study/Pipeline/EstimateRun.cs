using Platewright.Build.Estimates;
using Platewright.Build.Heat;
using Platewright.Formats;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Examining;

namespace Platewright.Study.Pipeline;

/// <summary>What to estimate and how: the whole of <c>estimate</c>. Parts stand as their files have them. Nothing is kept.</summary>
/// <param name="Material">What all is built of.</param>
/// <param name="Full">Plan every layer.</param>
public sealed record EstimateRun(
    IReadOnlyList<string> Models, IReadOnlyList<Machine> Machines, Recipe Recipe, Material Material, bool Full,
    ExamineOptions Reading)
{
    /// <summary>Every part in the models on every machine.</summary>
    public EstimatesDocument Run(IProgressListener progress, CancellationToken cancel)
    {
        ModelPaths paths = ModelPaths.Below(Models, cancel);
        MachineHeat[] heats = [.. Machines.Select(m => new MachineHeat(m, Material))];
        List<EstimateRowDocument> rows = [];
        List<UnusableFile> unusable = [.. paths.Unusable];
        progress.Begin("Estimating builds", paths.Files.Count);
        foreach (ModelPath path in paths.Files)
        {
            ModelReading reading = ModelReader.Read(path.Path, path.ShownAs, Reading.Limits, Reading.Unit, cancel);
            unusable.AddRange(reading.Unusable);
            foreach (ModelFile file in reading.Files)
                foreach (ModelPart part in file.Parts) Add(file, part, heats, rows, unusable, cancel);
            progress.Advance();
        }
        return new EstimatesDocument(rows, [.. unusable.Select(ModelDescription.Of)]);
    }

    private void Add(
        ModelFile file, ModelPart part, MachineHeat[] heats, List<EstimateRowDocument> rows, List<UnusableFile> unusable,
        CancellationToken cancel)
    {
        try
        {
            Mesh welded = Welding.Weld(part.Mesh);
            MeshTopology topology = MeshTopology.Of(welded);
            if (welded.Bounds.Size.Z <= 0)
            {
                unusable.Add(new UnusableFile(file.File, part.Name, $"{file.File}: it has no height, so there is nothing to build."));
                return;
            }
            PartPaths planned = PartPaths.Of(
                welded, topology, Matrix3.Identity * (1 + Material.Shrinkage), Recipe, Recipe.BrimFor(Material), cancel);
            foreach (MachineHeat heat in heats)
            {
                BuildEstimate estimate = BuildEstimator.Estimate(planned, heat, Full, cancel);
                rows.Add(EstimateDescription.RowOf(file.File, part.Name, heat.Machine, Recipe, Material, estimate));
            }
        }
        catch (Exception e) when (Fault.Is(e))
        {
            unusable.Add(Fault.Of(file.File, e));
        }
    }
}
