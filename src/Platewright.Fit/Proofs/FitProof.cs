using Platewright.Geometry;

namespace Platewright.Fit.Proofs;

/// <summary>
/// Everything needed to check, without trusting this program, that a part of these vertices fits a volume at
/// <see cref="LowerScale"/> and at no scale above <see cref="UpperScale"/> in any pose. Scales are of the drawn part.
/// </summary>
public sealed record FitProof
{
    /// <summary>The hull's vertices, mm: all other points of the part lie between them.</summary>
    public required IReadOnlyList<Vec3> VerticesMm { get; init; }

    public required double Shrinkage { get; init; }

    /// <summary>The usable volume, margins taken off, in the machine's coordinates.</summary>
    public required ProvedVolume Volume { get; init; }

    public required double LowerScale { get; init; }

    /// <summary>The pose that reaches <see cref="LowerScale"/>; its scale includes shrinkage.</summary>
    public required Pose Witness { get; init; }

    public required double UpperScale { get; init; }

    /// <summary>What excludes larger scales.</summary>
    public required ProvedBound Bound { get; init; }
}

/// <summary>A box (corner and size), a cylinder about the z axis, or a prism over a polygon; heights from z = 0.</summary>
public sealed record ProvedVolume(
    string Shape, Vec2 CornerMm, Vec2 SizeMm, double RadiusMm, IReadOnlyList<Vec2> PolygonMm, double HeightMm);

/// <summary>The cells of rotation space, level by level, and what closes each.</summary>
/// <param name="SlabNormal">
/// Null for a bound in the volume itself. Otherwise the cells bound the part's least width, and the volume is no wider than
/// the slab with this normal.
/// </param>
/// <param name="Charts">Which quarters of rotation space are searched, by <c>RotationDomain</c>'s numbers.</param>
/// <param name="Cut">Which part of a chart the volume's symmetry leaves: none, disc, square_bed or cube.</param>
/// <param name="Cells">One letter for each cell in level order: o outside, s split, c closed.</param>
/// <param name="Closings">For each closed cell, weighted contacts.</param>
public sealed record ProvedBound(
    Vec3? SlabNormal, IReadOnlyList<int> Charts, string Cut, string Cells, IReadOnlyList<IReadOnlyList<ProvedContact>> Closings);

/// <param name="Weight">0 … 1; a cell's weights sum to 1.</param>
/// <param name="Terms">Vertices and container normals; the last normal is minus the sum of the others.</param>
public sealed record ProvedContact(double Weight, IReadOnlyList<(int Vertex, Vec3 Normal)> Terms);
