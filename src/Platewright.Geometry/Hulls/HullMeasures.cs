namespace Platewright.Geometry;

/// <summary>Volume, surface and centre of a hull from its exact faces, summed about its first vertex.</summary>
internal static class HullMeasures
{
    public static (double VolumeMm3, double AreaMm2, Vec3 Centroid) Of(Vec3[] vertices, IReadOnlyList<HullFace> faces)
    {
        Vec3 origin = vertices[0];
        if (faces.Count == 0) return (0, 0, vertices.Length == 1 ? origin : origin * 0.5 + vertices[1] * 0.5);
        double volume = 0, area = 0;
        Vec3 solid = default, surface = default;
        foreach (HullFace face in faces)
        {
            area += face.AreaMm2;
            Vec3 a = vertices[face.Corners[0]] - origin;
            for (int i = 2; i < face.Corners.Count; i++)
            {
                Vec3 b = vertices[face.Corners[i - 1]] - origin, c = vertices[face.Corners[i]] - origin;
                Vec3 normal = (b - a).Cross(c - a);
                double six = a.Dot(normal);
                volume += six;
                solid += six * (a + b + c);
                surface += normal.Length * (a + b + c);
            }
        }
        Vec3 centroid = faces.Count > 2 ? solid / (4 * volume) : surface / (6 * area);
        return (faces.Count > 2 ? volume / 6 : 0, area, origin + centroid);
    }
}
