namespace Platewright.Geometry;

/// <summary>What a mesh measures when its triangles are summed up, whether or not they enclose anything.</summary>
/// <param name="SignedVolumeMm3">Sum of the signed tetrahedra from the middle of the bounds, mm³: the volume where the
/// mesh is closed (overlapping or nested shells count as drawn), negative where it is inside out.</param>
/// <param name="AreaMm2">Sum of the triangles, mm².</param>
/// <param name="SolidCentre">Centre of mass of the enclosed volume; NaN where that is 0.</param>
/// <param name="SurfaceCentre">Centre of mass of the surface as a thin sheet; the middle of the bounds where that is
/// 0.</param>
public sealed record MeshMeasures(double SignedVolumeMm3, double AreaMm2, Vec3 SolidCentre, Vec3 SurfaceCentre)
{
    /// <summary>Measures a mesh; the sums do not depend on the number of threads.</summary>
    public static MeshMeasures Of(Mesh mesh)
    {
        Vec3 origin = mesh.Bounds.Center;
        if (mesh.Vertices.IsEmpty) return new MeshMeasures(0, 0, new Vec3(double.NaN, double.NaN, double.NaN), default);
        int pieces = Chunks.Count(mesh.TriangleCount);
        var sums = new Sums[pieces];
        Chunks.For(mesh.TriangleCount, (from, to) => sums[Chunks.Piece(from)] = Sums.Over(mesh, origin, from, to));
        Sums all = default;
        foreach (Sums part in sums) all = all.Plus(part);
        return new MeshMeasures(
            all.Six / 6, all.Twice / 2,
            origin + all.Solid / (4 * all.Six),
            all.Twice > 0 ? origin + all.Surface / (3 * all.Twice) : origin);
    }

    private readonly record struct Sums(double Six, double Twice, Vec3 Solid, Vec3 Surface)
    {
        public static Sums Over(Mesh mesh, Vec3 origin, int from, int to)
        {
            ReadOnlySpan<Vec3> vertices = mesh.Vertices;
            ReadOnlySpan<int> corners = mesh.Corners;
            double six = 0, twice = 0;
            Vec3 solid = default, surface = default;
            for (int i = 3 * from; i < 3 * to; i += 3)
            {
                Vec3 a = vertices[corners[i]] - origin;
                Vec3 b = vertices[corners[i + 1]] - origin;
                Vec3 c = vertices[corners[i + 2]] - origin;
                Vec3 normal = (b - a).Cross(c - a);
                double volume = a.Dot(normal), area = normal.Length;
                Vec3 middle = a + b + c;
                six += volume;
                twice += area;
                solid += volume * middle;
                surface += area * middle;
            }
            return new Sums(six, twice, solid, surface);
        }

        public Sums Plus(Sums o) => new(Six + o.Six, Twice + o.Twice, Solid + o.Solid, Surface + o.Surface);
    }
}
