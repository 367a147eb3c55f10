using Platewright.Formats;
using Platewright.Geometry;

namespace Platewright.Tests.Formats;

/// <summary>
/// Plain sums over triangles, by the definitions of the shared manifest; independent of the geometry room.
/// </summary>
internal sealed record MeshMeasures(int Triangles, int Vertices, Bounds3 Bounds, double Area, double SignedVolume)
{
    public static MeshMeasures Of(params Mesh[] meshes)
    {
        Bounds3 bounds = Bounds3.Empty;
        foreach (Mesh mesh in meshes)
            bounds = new Bounds3(Vec3.Min(bounds.Min, mesh.Bounds.Min), Vec3.Max(bounds.Max, mesh.Bounds.Max));
        Vec3 centre = bounds.Center;
        var distinct = new HashSet<Vec3>();
        int triangles = 0;
        double area = 0;
        double volume = 0;
        foreach (Mesh mesh in meshes)
        {
            triangles += mesh.TriangleCount;
            for (int t = 0; t < mesh.TriangleCount; t++)
            {
                (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
                foreach (Vec3 p in (ReadOnlySpan<Vec3>)[a, b, c]) distinct.Add(p + default(Vec3));
                area += (b - a).Cross(c - a).Length / 2;
                volume += (a - centre).Dot((b - centre).Cross(c - centre)) / 6;
            }
        }
        return new MeshMeasures(triangles, distinct.Count, bounds, area, volume);
    }

    public static MeshMeasures Of(ModelFile file) => Of(file.Parts.Select(p => p.Mesh).ToArray());
}
