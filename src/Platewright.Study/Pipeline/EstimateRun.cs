using Platewright.Build.Care;
using Platewright.Build.Estimates;
using Platewright.Build.Heat;
using Platewright.Formats;
using Platewright.Formats.Programs;
using Platewright.Formats.Toml;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Examining;

namespace Platewright.Study.Pipeline;

/// <summary>
/// What to estimate and how: the whole of <c>estimate</c>. Parts stand as their files have them; motion programs are timed as they
/// are. Nothing is kept.
/// </summary>
/// <param name="Recipe">Null where there are motion programs only, which need none.</param>
/// <param name="Material">What all is built of.</param>
/// <param name="Full">Plan every layer.</param>
public sealed record EstimateRun(
    IReadOnlyList<string> Models, IReadOnlyList<Machine> Machines, Recipe? Recipe, Material Material, bool Full,
    ExamineOptions Reading)
{
    /// <summary>Bores to try besides each machine's own, mm.</summary>
    public IReadOnlyList<double> BoresMm { get; init; } = [];

    /// <summary>How many colours each part has, 1 or more.</summary>
    public int Colours { get; init; } = 1;

    /// <summary>In how many layers all of them lie; null for all layers.</summary>
    public int? ColouredLayers { get; init; }

    /// <summary>Every part in the models on every machine.</summary>
    public EstimatesDocument Run(IProgressListener progress, CancellationToken cancel)
    {
        ModelPaths paths = ModelPaths.Below(Models, cancel);
        MachineHeat[] heats =
        [
            .. Machines.SelectMany(m => BoresMm.Append(m.Extruder.NozzleBoreMm).Distinct().Order().Select(bore => BoreChoice.With(m, bore)))
                .Select(m => new MachineHeat(m, Material)),
        ];
        List<EstimateRowDocument> rows = [];
        List<UnusableFile> unusable = [.. paths.Unusable];
        progress.Begin("Estimating builds", paths.Files.Count);
        foreach (ModelPath path in paths.Files)
        {
            if (ProgramReader.IsProgram(path.Path))
            {
                AddProgram(path, rows, unusable, cancel);
                progress.Advance(path.ShownAs);
                continue;
            }
            ModelReading reading = ModelReader.Read(path.Path, path.ShownAs, Reading.Limits, Reading.Unit, cancel);
            unusable.AddRange(reading.Unusable);
            foreach (ModelFile file in reading.Files)
                foreach (ModelPart part in file.Parts) Add(file, part, heats, rows, unusable, cancel);
            progress.Advance(path.ShownAs);
        }
        return new EstimatesDocument(rows, [.. unusable.Select(ModelDescription.Of)]);
    }

    private void AddProgram(
        ModelPath path, List<EstimateRowDocument> rows, List<UnusableFile> unusable, CancellationToken cancel)
    {
        ProgramReading reading = ProgramReader.Read(path.Path, path.ShownAs, Reading.Limits, null, cancel);
        if (reading.Unusable is { } bad) unusable.Add(bad);
        if (reading.Program is not { } program) return;
        foreach (Machine machine in Machines)
        {
            BuildEstimate estimate = ProgramEstimator.Estimate(program, machine, Material, cancel);
            rows.Add(EstimateDescription.RowOf(path.ShownAs, machine, Material, estimate));
        }
    }

    /// <summary>The bore a machine has, whatever bore it is tried with.</summary>
    private double BoreOf(Machine tried) => Machines.First(m => m.Id == tried.Id).Extruder.NozzleBoreMm;

    private static string FeaturesLost(Mesh mesh, Recipe recipe)
    {
        double? thinnest = MeshHealth.Examine(mesh, HealthOptions.Default with { BeadWidthMm = recipe.BeadWidthMm }).ThinnestWallMm;
        return thinnest is { } wall && wall < recipe.BeadWidthMm
            ? FormattableString.Invariant(
                $"A bead of {recipe.BeadWidthMm:0.##} mm loses features: the thinnest wall is about {wall:0.##} mm; it is left out or comes out thicker.")
            : FormattableString.Invariant($"A bead of {recipe.BeadWidthMm:0.##} mm loses no wall of it.");
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
            Recipe recipe = Recipe
                ?? throw new DescriptionException(new DescriptionError("a model needs a recipe.", Key: "--recipe"));
            Dictionary<Recipe, PartPaths> paths = [];
            foreach (MachineHeat heat in heats)
            {
                Recipe own = BoreChoice.With(recipe, BoreOf(heat.Machine), heat.Machine.Extruder.NozzleBoreMm);
                if (!paths.TryGetValue(own, out PartPaths? planned))
                {
                    planned = paths[own] = PartPaths.Of(
                        welded, topology, Matrix3.Identity * (1 + Material.Shrinkage), own, own.BrimFor(Material), cancel);
                }
                int coloured = Math.Min(ColouredLayers ?? planned.LayerCount, planned.LayerCount);
                BuildEstimate estimate = BuildEstimator.Estimate(planned, heat, Full, cancel, (Colours - 1) * coloured);
                List<string> more = [];
                if (ColourChanges.Of(heat, Colours, coloured, estimate.Time.ReleaseS).Sentence is { } changes) more.Add(changes);
                if (BoresMm.Count > 0) more.Add(FeaturesLost(part.Mesh, own));
                rows.Add(EstimateDescription.RowOf(
                    file.File, part.Name, heat.Machine, own, Material, estimate with { Notes = [.. estimate.Notes, .. more] }));
            }
        }
        catch (Exception e) when (Fault.Is(e))
        {
            unusable.Add(Fault.Of(file.File, e));
        }
    }
}
