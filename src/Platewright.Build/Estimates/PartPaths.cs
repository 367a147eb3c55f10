using System.Collections.Concurrent;
using System.Collections.Immutable;
using Platewright.Build.Paths;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Estimates;

/// <summary>
/// A part in a pose, cut into layers for a recipe. Paths are planned layer by layer when first asked for and serve every machine;
/// layers that are equal but for their height are planned once. Safe for use by several threads.
/// </summary>
public sealed class PartPaths
{
    private readonly BuildLayers _layers;
    private readonly int[] _sameAs;
    private readonly ConcurrentDictionary<int, LayerPlan> _plans = [];
    private readonly ConcurrentBag<LayerPlanner> _planners = [];

    private PartPaths(BuildLayers layers, int[] sameAs)
    {
        _layers = layers;
        _sameAs = sameAs;
        Features = LayerFeatures.Of(layers);
    }

    /// <summary>Cuts a welded mesh into layers.</summary>
    /// <param name="welded">The mesh.</param>
    /// <param name="topology">Of that mesh.</param>
    /// <param name="linear">Turns and scales it into its pose; its lowest point comes to lie on the build surface.</param>
    /// <param name="recipe">What is wanted.</param>
    /// <param name="brimMm">Width of the brim, mm.</param>
    /// <param name="cancel">Stops the work.</param>
    public static PartPaths Of(
        Mesh welded, MeshTopology topology, Matrix3 linear, Recipe recipe, double brimMm, CancellationToken cancel)
    {
        BuildLayers layers = BuildLayers.Of(welded, topology, linear, recipe, brimMm, cancel);
        return new PartPaths(layers, layers.FirstEqual(cancel));
    }

    public int LayerCount => _sameAs.Length;

    public double HeightMm => _layers.Part.Layers[^1].BottomMm + _layers.Part.Layers[^1].HeightMm;

    /// <summary>Volume of all sections, mm³.</summary>
    public double SectionVolumeMm3 => _layers.Part.VolumeMm3;

    /// <summary>Volume inside the supports' outline, mm³; their material is a share of it.</summary>
    public double SupportVolumeMm3 => _layers.Support.IsEmpty
        ? 0
        : _layers.Support.Zip(_layers.Part.Layers, (s, l) => s.AreaMm2 * l.HeightMm).Sum();

    /// <summary>Area of the first layer, mm².</summary>
    public double ContactAreaMm2 => _layers.Part.Sections[0].AreaMm2;

    /// <summary>Longest extent of the first layer, mm: the diagonal of the box around it.</summary>
    public double ContactMm
    {
        get
        {
            double left = double.PositiveInfinity, right = double.NegativeInfinity;
            double front = double.PositiveInfinity, back = double.NegativeInfinity;
            foreach (Vec2 p in _layers.Part.Sections[0].Loops.SelectMany(l => l))
            {
                (left, right) = (Math.Min(left, p.X), Math.Max(right, p.X));
                (front, back) = (Math.Min(front, p.Y), Math.Max(back, p.Y));
            }
            return left <= right ? new Vec2(right - left, back - front).Length : 0;
        }
    }

    /// <summary>What of all layers lies beyond the layer below, mm².</summary>
    public double OverhangAreaMm2 => Features.OverhangAreaMm2;

    public ImmutableArray<string> Findings => Features.Findings;

    public Recipe Recipe => _layers.Recipe;

    /// <summary>The first layer a layer is equal to: itself, or one below.</summary>
    public int SameAs(int layer) => _sameAs[layer];

    /// <summary>How high a layer's upper face lies, mm.</summary>
    public double TopMm(int layer) => _layers.Part.Layers[layer].BottomMm + _layers.Part.Layers[layer].HeightMm;

    internal LayerFeatures Features { get; }

    /// <summary>The moves of a layer, those of an equal one below where there is one.</summary>
    internal LayerPlan Plan(int layer)
    {
        int first = _sameAs[layer];
        if (_plans.TryGetValue(first, out LayerPlan? plan)) return plan;
        if (!_planners.TryTake(out LayerPlanner? planner)) planner = new LayerPlanner(_layers);
        plan = planner.Plan(first);
        _planners.Add(planner);
        return _plans.GetOrAdd(first, plan);
    }
}
