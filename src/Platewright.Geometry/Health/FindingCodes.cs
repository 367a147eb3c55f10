namespace Platewright.Geometry;

/// <summary>The codes of <see cref="Finding"/>: what they count.</summary>
public static class FindingCodes
{
    /// <summary>Triangles with an infinite or undefined corner, left out of everything else.</summary>
    public const string NotFinite = "not_finite";

    /// <summary>Openings: connected groups of edges that only one triangle uses.</summary>
    public const string Holes = "holes";

    /// <summary>Edges used by more than two triangles.</summary>
    public const string CrowdedEdges = "crowded_edges";

    /// <summary>Triangles that face against their neighbours.</summary>
    public const string FlippedFaces = "flipped_faces";

    /// <summary>Shells whose triangles all face inward though nothing surrounds them.</summary>
    public const string InsideOutShells = "inside_out_shells";

    /// <summary>Triangles over the same three vertices as another.</summary>
    public const string DuplicateFaces = "duplicate_faces";

    /// <summary>Triangles without area.</summary>
    public const string DegenerateFaces = "degenerate_faces";

    /// <summary>Triangles so thin that they hardly have area.</summary>
    public const string Slivers = "slivers";

    /// <summary>Solid shells inside another solid shell.</summary>
    public const string NestedShells = "nested_shells";

    /// <summary>Hollow spaces closed off all around.</summary>
    public const string SealedCavities = "sealed_cavities";

    /// <summary>Pairs of shells that cut each other.</summary>
    public const string IntersectingShells = "intersecting_shells";

    /// <summary>Pairs of triangles of one shell that cut each other.</summary>
    public const string SelfIntersections = "self_intersections";

    /// <summary>The mesh encloses nothing.</summary>
    public const string NothingSolid = "nothing_solid";

    /// <summary>Sample points where the wall is thinner than one bead.</summary>
    public const string ThinWalls = "thin_walls";

    /// <summary>The size suggests that the numbers were drawn in another unit.</summary>
    public const string UnitDoubt = "unit_doubt";

    /// <summary>Groups of shells that could be parts of their own.</summary>
    public const string LooseShells = "loose_shells";

    /// <summary>Triangles too many for the search for crossing faces.</summary>
    public const string CrossingsNotChecked = "crossings_not_checked";
}
