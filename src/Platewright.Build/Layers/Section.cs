using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>The cut of a part at one height.</summary>
/// <param name="Loops">Closed outlines, material to the left of each edge, mm.</param>
/// <param name="Solid">The material as rows.</param>
/// <param name="AreaMm2">Area of the material.</param>
/// <param name="OutlineMm">Length of all outlines.</param>
/// <param name="Overlapping">True where shells overlap here: the area is that of their union.</param>
/// <param name="ClosedGaps">Open ends that had to be joined to close an outline.</param>
public sealed record Section(
    IReadOnlyList<Vec2[]> Loops, Rows Solid, double AreaMm2, double OutlineMm, bool Overlapping, int ClosedGaps)
{
    public bool IsEmpty => Solid.IsEmpty;

    /// <summary>Number of separate pieces of material: outlines that run counter-clockwise.</summary>
    public int Islands => Loops.Count(l => Outline.SignedArea(l) > 0);
}
