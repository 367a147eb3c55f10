namespace Platewright.Geometry;

/// <summary>What a mesh is and what is wrong with it.</summary>
public sealed record MeshReport
{
    /// <summary>The mesh with distinct vertices and finite triangles only: what everything here was measured
    /// on.</summary>
    public required Mesh Mesh { get; init; }

    /// <summary>Its convex hull; null where there is no finite triangle.</summary>
    public required ConvexHull? Hull { get; init; }

    public required int Triangles { get; init; }

    /// <summary>Distinct positions.</summary>
    public required int Vertices { get; init; }

    /// <summary>Edge-connected components.</summary>
    public required int Shells { get; init; }

    /// <summary>Every edge is used once in each direction.</summary>
    public required bool IsClosed { get; init; }

    /// <summary>Every edge is used as often in one direction as in the other: weaker, and enough for a
    /// volume.</summary>
    public required bool IsBalanced { get; init; }

    /// <summary>Signed volume, mm³; null where the mesh is not closed.</summary>
    public double? VolumeMm3 => IsClosed ? SignedVolumeMm3 : null;

    /// <summary>Sum of signed tetrahedra, mm³: a volume where <see cref="IsBalanced"/>, else a guess.</summary>
    public required double SignedVolumeMm3 { get; init; }

    public required double AreaMm2 { get; init; }

    public required Bounds3 Bounds { get; init; }

    /// <summary>Of the solid where it encloses a volume, else of its surface.</summary>
    public required Vec3 CentreOfMass { get; init; }

    /// <summary>An approximation, mm; null where no wall was found or none was looked for.</summary>
    public required double? ThinnestWallMm { get; init; }

    /// <summary>The units that would make the size plausible; empty where it is.</summary>
    public required IReadOnlyList<PlausibleUnit> PlausibleUnits { get; init; }

    /// <summary>In the order of <see cref="FindingCodes"/>; no code twice.</summary>
    public required IReadOnlyList<Finding> Findings { get; init; }
}
