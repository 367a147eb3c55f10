using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>
/// Symmetries of a build surface that shorten the search. A polygon symmetric only up to rounding counts: the proof
/// checker then works with the hull of the polygon and its images, which is symmetric and contains it.
/// </summary>
internal static class PolygonSymmetry
{
    // Relative to the polygon's size; far below any tolerance asked for, far above the rounding of written coordinates.
    private const double Rounding = 1e-11;

    public static bool IsPointSymmetric(ReadOnlySpan<Vec2> polygon) => MapsToItself(polygon, p => -p);

    /// <summary>Symmetric under y → −y about its centre.</summary>
    public static bool IsMirrorSymmetric(ReadOnlySpan<Vec2> polygon) => MapsToItself(polygon, p => new Vec2(p.X, -p.Y));

    private static bool MapsToItself(ReadOnlySpan<Vec2> polygon, Func<Vec2, Vec2> image)
    {
        Vec2 center = default;
        foreach (Vec2 p in polygon) center += p / polygon.Length;
        double size = 0;
        foreach (Vec2 p in polygon) size = Math.Max(size, (p - center).Length);
        foreach (Vec2 p in polygon)
        {
            Vec2 q = image(p - center) + center;
            bool found = false;
            foreach (Vec2 other in polygon) found |= (other - q).Length <= Rounding * size;
            if (!found) return false;
        }
        return true;
    }
}
