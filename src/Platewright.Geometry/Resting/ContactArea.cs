namespace Platewright.Geometry;

/// <summary>What of a part touches the build surface.</summary>
public static class ContactArea
{
    /// <summary>
    /// Area of the triangles that lie wholly within a band above the lowest point and face down, seen from above, mm².
    /// </summary>
    /// <param name="mesh">The part.</param>
    /// <param name="up">Unit vector of the part that points up in the pose.</param>
    /// <param name="bandMm">Height of the band, mm: a first layer (0.2 mm) or less.</param>
    public static double Of(Mesh mesh, Vec3 up, double bandMm)
    {
        if (!(bandMm >= 0)) throw new ArgumentOutOfRangeException(nameof(bandMm), bandMm, "A band is 0 mm or more.");
        double bottom = double.PositiveInfinity;
        foreach (Vec3 p in mesh.Vertices) bottom = Math.Min(bottom, up.Dot(p));
        double area = 0;
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            if (Math.Max(up.Dot(a), Math.Max(up.Dot(b), up.Dot(c))) > bottom + bandMm) continue;
            area += Math.Max(0, -up.Dot((b - a).Cross(c - a)));
        }
        return area / 2;
    }
}
