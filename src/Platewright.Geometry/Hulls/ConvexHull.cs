using System.Runtime.InteropServices;

namespace Platewright.Geometry;

/// <summary>
/// The convex hull of a point set: what decides whether a part fits. Signs are exact (<see cref="Orientation"/>), so
/// no input point lies outside; the same points in another order give the same hull, bit for bit.
/// </summary>
public sealed class ConvexHull
{
    private readonly Vec3[] _vertices;

    internal ConvexHull(
        int dimension, Vec3[] vertices, IReadOnlyList<HullFace> faces, IReadOnlyList<HullFace> exactFaces)
    {
        Dimension = dimension;
        _vertices = vertices;
        Faces = faces;
        (VolumeMm3, AreaMm2, Centroid) = HullMeasures.Of(vertices, exactFaces);
    }

    /// <summary>0 a point, 1 a segment, 2 a flat polygon, 3 a solid; decided exactly.</summary>
    public int Dimension { get; }

    /// <summary>The extreme points, sorted by x, then y, then z. Every input point lies in their convex hull,
    /// exactly.</summary>
    public ReadOnlySpan<Vec3> Vertices => _vertices;

    /// <summary>
    /// The faces a part can rest on: coplanar triangles merged, and those that only rounding tells apart
    /// (<see cref="HullFaces.Flatness"/>); for a flat polygon its two sides; none below that.
    /// </summary>
    public IReadOnlyList<HullFace> Faces { get; }

    /// <summary>Enclosed volume, mm³; 0 below dimension 3.</summary>
    public double VolumeMm3 { get; }

    /// <summary>Surface, mm²; for a flat polygon both sides; 0 below that.</summary>
    public double AreaMm2 { get; }

    /// <summary>Centre of mass of the solid hull; of the polygon, segment or point below dimension 3.</summary>
    public Vec3 Centroid { get; }

    /// <summary>The hull of <paramref name="points"/> (any number but zero, any order, duplicates welcome).</summary>
    /// <exception cref="ArgumentException">There is no point, or a coordinate is infinite or NaN.</exception>
    public static ConvexHull Of(ReadOnlySpan<Vec3> points)
    {
        if (points.IsEmpty) throw new ArgumentException("A hull needs at least one point.", nameof(points));
        for (int i = 0; i < points.Length; i++)
            if (!points[i].IsFinite)
                throw new ArgumentException($"Point {i} of a hull is not finite: {points[i]}.", nameof(points));
        int[] seed = HullSeed.Find(points);
        if (seed.Length <= 2)
        {
            Vec3[] ends = [.. seed.Select(Positive(points))];
            return new ConvexHull(ends.Length - 1, ends, [], []);
        }
        if (seed.Length == 3) return FlatHull.Of(points, seed);
        Vec3[] all = points.ToArray();
        return HullFaces.Assemble(all, CollectionsMarshal.AsSpan(Quickhull.Triangulate(all, seed)));
    }

    /// <summary>The furthest extent of the hull along a direction: the largest u·v over its vertices.</summary>
    public double Support(Vec3 u)
    {
        double most = double.NegativeInfinity;
        foreach (Vec3 v in _vertices) most = Math.Max(most, u.Dot(v));
        return most;
    }

    private static Func<int, Vec3> Positive(ReadOnlySpan<Vec3> points)
    {
        Vec3[] copy = points.ToArray();
        return i => HullFaces.Positive(copy[i]);
    }
}
