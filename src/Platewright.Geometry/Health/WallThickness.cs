namespace Platewright.Geometry;

/// <summary>
/// Thickness of walls by rays: from points spread over the surface by area, straight inward to the first face that
/// looks the other way. An approximation: walls between the points are missed, and a wedge counts down to nothing at
/// its edge unless it is blunter than <see cref="BluntCosine"/>.
/// </summary>
internal static class WallThickness
{
    /// <summary>Faces that are less opposed than this, at 30° or more, are the sides of an edge, not those of a
    /// wall.</summary>
    private static readonly double BluntCosine = Math.Sqrt(0.75);

    /// <summary>Rays begin this share of the part's size below the surface, clear of rounding.</summary>
    private const double Clearance = 1e-7;

    /// <summary>Thicknesses found, mm, the thinnest first; fewer than the samples, as some rays meet no opposed
    /// face.</summary>
    public static double[] Sample(Mesh mesh, int samples)
    {
        SurfacePoint[] points = SurfacePoint.Spread(mesh, samples);
        if (points.Length == 0) return [];
        TriangleTree tree = TriangleTree.Over(mesh, [.. Enumerable.Range(0, mesh.TriangleCount)]);
        double clear = Clearance * mesh.Bounds.Size.Length;
        double[] found = new double[points.Length];
        Parallel.For(0, points.Length, i =>
        {
            SurfacePoint p = points[i];
            int hit = tree.FirstHit(p.Position - p.Normal * clear, -p.Normal, p.Triangle, out double distance);
            found[i] = hit >= 0 && Opposes(mesh, hit, p.Normal) ? distance + clear : double.PositiveInfinity;
        });
        Array.Sort(found);
        int count = Array.FindIndex(found, double.IsPositiveInfinity);
        return count < 0 ? found : found[..count];
    }

    private static bool Opposes(Mesh mesh, int triangle, Vec3 normal)
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(triangle);
        Vec3 other = (b - a).Cross(c - a);
        return other.Dot(normal) < -BluntCosine * other.Length;
    }
}
