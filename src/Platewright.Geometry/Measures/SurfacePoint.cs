namespace Platewright.Geometry;

/// <summary>A point on the surface of a mesh.</summary>
internal readonly record struct SurfacePoint(Vec3 Position, Vec3 Normal, int Triangle)
{
    // Steps of the two-dimensional low-discrepancy sequence over the plastic number (Roberts 2018).
    private const double FirstStep = 0.7548776662466927, SecondStep = 0.5698402909980532;

    /// <summary>
    /// Points spread evenly by area: one in the middle of every equal share of the summed area, at a place in its
    /// triangle that a fixed sequence gives. The same mesh always gives the same points.
    /// </summary>
    public static SurfacePoint[] Spread(Mesh mesh, int count)
    {
        double total = 0;
        for (int t = 0; t < mesh.TriangleCount; t++) total += Normal2(mesh, t).Length;
        if (!(total > 0) || !double.IsFinite(total)) return [];
        List<SurfacePoint> points = new(count);
        double passed = 0;
        for (int t = 0; t < mesh.TriangleCount && points.Count < count; t++)
        {
            Vec3 normal = Normal2(mesh, t);
            double length = normal.Length;
            passed += length;
            while (points.Count < count && passed > (points.Count + 0.5) * total / count && length > 0)
                points.Add(new SurfacePoint(Inside(mesh.Triangle(t), points.Count), normal / length, t));
        }
        return [.. points];
    }

    private static Vec3 Normal2(Mesh mesh, int t)
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
        return (b - a).Cross(c - a);
    }

    private static Vec3 Inside((Vec3 A, Vec3 B, Vec3 C) triangle, int index)
    {
        double u = (0.5 + FirstStep * (index + 1)) % 1, v = (0.5 + SecondStep * (index + 1)) % 1;
        if (u + v > 1) (u, v) = (1 - u, 1 - v);
        return triangle.A + (triangle.B - triangle.A) * u + (triangle.C - triangle.A) * v;
    }
}
