using Platewright.Build.Layers;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Paths;

/// <summary>Which ways the lines of a filling run, in the machine's axes, and which of them a layer uses.</summary>
internal sealed class FillDirections
{
    private readonly bool _allInEveryLayer;

    public FillDirections(InfillPattern pattern)
    {
        double[] degrees = pattern == InfillPattern.Triangles ? [0, 60, 120] : [45, 135];
        Unit = [.. degrees.Select(LayerFrame.Direction)];
        _allInEveryLayer = pattern is InfillPattern.Grid or InfillPattern.Triangles;
    }

    /// <summary>Unit directions in the axes of the layers.</summary>
    public Vec2[] Unit { get; }

    /// <summary>The direction of a layer's solid faces.</summary>
    public int Solid(int layer) => layer % Unit.Length;

    /// <summary>The directions of a layer's sparse infill.</summary>
    public int[] Sparse(int layer) => _allInEveryLayer ? [.. Enumerable.Range(0, Unit.Length)] : [Solid(layer)];
}
