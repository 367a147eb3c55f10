using Platewright.Build.Estimates;
using Platewright.Build.Heat;
using Platewright.Build.Poses;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Describing;
using Platewright.Study.Documents;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Estimating;

/// <summary>
/// One part with what its estimates on all machines share: its mesh, its ways of standing, its paths in each. Made only where a
/// result is not in the store. Not for use by several threads at once.
/// </summary>
internal sealed class PartCase
{
    private readonly StudyPart _part;
    private readonly CancellationToken _cancel;
    private readonly Lazy<(Mesh Welded, MeshTopology Topology)> _mesh;
    private readonly Lazy<PreparedPart> _prepared;
    private readonly Lazy<IReadOnlyList<StandingPose>> _poses;
    private readonly Dictionary<(Rotation Rotation, double Scale, bool Support), PartPaths> _paths = [];
    private readonly Dictionary<(MachineHeat Heat, PartPaths Paths), double> _seconds = [];

    public PartCase(StudyPart part, Func<Mesh> read, CancellationToken cancel)
    {
        _part = part;
        _cancel = cancel;
        (Material, MaterialIsAssumed) = MaterialOf(part);
        _mesh = new(() =>
        {
            Mesh welded = Welding.Weld(read());
            return (welded, MeshTopology.Of(welded));
        });
        _prepared = new(() => new PreparedPart(part.ToShape()));
        _poses = new(() => StandingPoses.Of(
            _mesh.Value.Welded, _mesh.Value.Topology, _prepared.Value.Shape.Hull, part.Planned.Recipe,
            part.Planned.Allowance.Turn, cancel));
    }

    public Material Material { get; }

    public bool MaterialIsAssumed { get; }

    /// <summary>What is taken where neither study, file nor recipe names a material.</summary>
    public static (Material Material, bool Assumed) MaterialOf(StudyPart part) => part.Material is { } named
        ? (named, false)
        : (MaterialCatalog.Get(part.Planned.Recipe.Material ?? UsualMaterial), true);

    private const string UsualMaterial = "PLA";

    /// <summary>The estimate on a machine that takes the part whole.</summary>
    public PartEstimateDocument On(MachineHeat heat, FitResult fit)
    {
        double growth = 1 + _part.Shrinkage;
        if (fit.Verdict is Verdict.Tilted or Verdict.Scaled)
        {
            bool scaled = fit.Verdict == Verdict.Scaled;
            PartPaths tilted = PathsOf(fit.Pose.Rotation, scaled ? fit.Pose.Scale : growth, support: true);
            string? cost = scaled ? null : CostOf(heat, tilted, "tilted to fit", growth);
            return Describe(heat, tilted, scaled ? "scaled" : "tilted", fit.Pose.Rotation, scaled ? fit.Pose.Scale : growth, cost);
        }
        StandingPose[] fitting = [.. _poses.Value.Where(p => FitSolver.Standing(_prepared.Value, heat.Machine, p.Rotation).Fits)];
        if (fitting.Length == 0)
        {
            PartPaths only = PathsOf(fit.Pose.Rotation, growth, support: false);
            string? cost = CostOf(heat, only, "turned to fit", growth);
            return Describe(heat, only, fit.Verdict == Verdict.AsDrawn ? "as_drawn" : "turned", fit.Pose.Rotation, growth, cost);
        }
        StandingPose[] worth = [.. StandingPoses.Worth(fitting)];
        StandingPose best = worth.MinBy(SecondsOf)!;
        // Turning a part over for a minute or two is not worth its owner's wondering why.
        if (worth.FirstOrDefault(p => p.AsDrawn) is { } drawn && SecondsOf(drawn) <= HardlyLonger * SecondsOf(best)) best = drawn;
        PartPaths paths = PathsOf(best.Rotation, growth, support: false);
        string? lost = fitting[0] != _poses.Value[0]
            ? CostOf(heat, paths, best.AsDrawn ? "kept as drawn to fit" : "turned to fit", growth)
            : null;
        return Describe(heat, paths, best.AsDrawn ? "as_drawn" : "turned", best.Rotation, growth, lost);

        double SecondsOf(StandingPose pose) => Seconds(heat, PathsOf(pose.Rotation, growth, support: false));
    }

    /// <summary>The drawn pose is kept where no other is quicker than by this.</summary>
    private const double HardlyLonger = 1.03;

    private PartPaths PathsOf(Rotation rotation, double scale, bool support)
    {
        Recipe recipe = _part.Planned.Recipe;
        bool held = support || recipe.Support;
        if (_paths.TryGetValue((rotation, scale, held), out PartPaths? known)) return known;
        double brim = _part.Planned.BrimMm ?? recipe.BrimFor(Material);
        (Mesh welded, MeshTopology topology) = _mesh.Value;
        return _paths[(rotation, scale, held)] = PartPaths.Of(
            welded, topology, rotation.ToMatrix() * scale, recipe with { Support = held }, brim, _cancel);
    }

    private double Seconds(MachineHeat heat, PartPaths paths)
    {
        if (_seconds.TryGetValue((heat, paths), out double known)) return known;
        return _seconds[(heat, paths)] = BuildEstimator.BuildingSeconds(paths, heat, _cancel);
    }

    /// <summary>What a pose costs against the quickest of all, fitting or not, in a sentence; null where it costs nothing.</summary>
    private string? CostOf(MachineHeat heat, PartPaths chosen, string why, double growth)
    {
        PartPaths best = StandingPoses.Worth(_poses.Value).Select(p => PathsOf(p.Rotation, growth, support: false)).MinBy(p => Seconds(heat, p))!;
        double seconds = Seconds(heat, chosen) - Seconds(heat, best);
        double cubic = (chosen.SupportVolumeMm3 - best.SupportVolumeMm3) * chosen.Recipe.SupportShare;
        return best != chosen && seconds > LeastCostS ? CostSentence.Of(why, cubic, seconds) : null;
    }

    /// <summary>Less is not worth a sentence, s.</summary>
    private const double LeastCostS = 60;

    private PartEstimateDocument Describe(
        MachineHeat heat, PartPaths paths, string way, Rotation rotation, double scale, string? cost)
    {
        BuildEstimate e = BuildEstimator.Estimate(paths, heat, full: false, _cancel);
        return new PartEstimateDocument(
            paths.Recipe.Name, Material.Name, MaterialIsAssumed,
            new EstimatePoseDocument(
                way, scale, [rotation.W, rotation.X, rotation.Y, rotation.Z], paths.ContactAreaMm2, paths.OverhangAreaMm2),
            e.Layers, EstimateDescription.Of(e.Time), e.MaterialMm3, e.SupportMm3, e.FilamentMm, e.MassG,
            e.MassG / Material.SpoolG, e.Heat.Energy is { } energy ? EstimateDescription.Of(energy) : null, e.Heat.PeakW,
            e.RelativeError, EstimateDescription.Of(e.TimeError), EstimateDescription.Of(e.EnergyError), EstimateDescription.Of(e.Warp), cost, e.Notes);
    }
}
