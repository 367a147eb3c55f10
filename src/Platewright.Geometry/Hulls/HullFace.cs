namespace Platewright.Geometry;

/// <summary>One face of a convex hull: a convex polygon the part can rest on.</summary>
/// <param name="Normal">Outward unit normal.</param>
/// <param name="OffsetMm">Distance of the face's plane from the origin along the normal, mm.</param>
/// <param name="Corners">Indices into the hull's vertices, counter-clockwise seen from outside.</param>
public sealed record HullFace(Vec3 Normal, double OffsetMm, IReadOnlyList<int> Corners)
{
    /// <summary>Area of the polygon, mm².</summary>
    public double AreaMm2 { get; init; }
}
