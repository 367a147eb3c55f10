using System.Collections.Immutable;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>
/// The space a machine can build in, with the build surface at z = 0, before margins. A box has its corner at the
/// origin, a cylinder its axis there, a prism lies where its polygon does.
/// </summary>
/// <param name="HeightMm">Height, mm, greater than 0.</param>
public abstract record BuildVolume(double HeightMm);

/// <summary>A box from (0, 0, 0) to (width, depth, height).</summary>
public sealed record BoxVolume(double WidthMm, double DepthMm, double HeightMm) : BuildVolume(HeightMm);

/// <summary>A round build surface around the origin.</summary>
public sealed record CylinderVolume(double DiameterMm, double HeightMm) : BuildVolume(HeightMm);

/// <summary>A convex polygon, counter-clockwise, at least three corners.</summary>
public sealed record PrismVolume(ImmutableArray<Vec2> PolygonMm, double HeightMm) : BuildVolume(HeightMm)
{
    /// <summary>The build surface with every side moved inwards; empty where nothing of it remains.</summary>
    public ImmutableArray<Vec2> SurfaceWithin(double marginMm) => ConvexPolygon.Inset(PolygonMm, marginMm);

    public bool Equals(PrismVolume? other) =>
        other is not null && HeightMm.Equals(other.HeightMm)
        && PolygonMm.AsSpan().SequenceEqual(other.PolygonMm.AsSpan());

    public override int GetHashCode() => HashCode.Combine(HeightMm, PolygonMm.Length);
}
