namespace Platewright.Geometry;

/// <summary>The convex hull of a point set: what decides whether a part fits.</summary>
public sealed class ConvexHull
{
    private readonly Vec3[] _vertices;

    internal ConvexHull(int dimension, Vec3[] vertices, IReadOnlyList<HullFace> faces)
    {
        Dimension = dimension;
        _vertices = vertices;
        Faces = faces;
    }

    /// <summary>0 a point, 1 a segment, 2 a flat polygon, 3 a solid.</summary>
    public int Dimension { get; }

    /// <summary>The extreme points. Every input point lies in their convex hull, exactly.</summary>
    public ReadOnlySpan<Vec3> Vertices => _vertices;

    /// <summary>The faces with coplanar triangles merged; for a flat polygon its two sides; none below that.</summary>
    public IReadOnlyList<HullFace> Faces { get; }

    /// <summary>The hull of <paramref name="points"/> (any number but zero, any order, duplicates welcome).</summary>
    public static ConvexHull Of(ReadOnlySpan<Vec3> points) => throw new NotSupportedException();
}
