namespace Platewright.Geometry;

/// <summary>The convex outline of a part's shadow on the build surface.</summary>
/// <param name="Outline">Corners, counter-clockwise, mm; one or two where the shadow has no area.</param>
/// <param name="AreaMm2">Area inside the outline, mm².</param>
public sealed record Silhouette(IReadOnlyList<Vec2> Outline, double AreaMm2)
{
    /// <summary>The shadow of points after a rotation, seen from above.</summary>
    /// <param name="points">At least one; a hull's vertices are enough.</param>
    /// <param name="rotation">The pose.</param>
    public static Silhouette Of(ReadOnlySpan<Vec3> points, Rotation rotation)
    {
        Matrix3 turn = rotation.ToMatrix();
        var flat = new Vec2[points.Length];
        for (int i = 0; i < flat.Length; i++) flat[i] = new Vec2(turn.Row0.Dot(points[i]), turn.Row1.Dot(points[i]));
        Vec2[] outline = ConvexPolygon.Of(flat);
        return new Silhouette(outline, ConvexPolygon.AreaMm2(outline));
    }
}
