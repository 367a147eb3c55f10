namespace Platewright.Geometry.Benchmarks;

/// <summary>What happens to a soup of a million triangles once it is read.</summary>
internal static class MeshBenchmarks
{
    public static void Run()
    {
        Mesh soup = Torus(1000, 500);
        Mesh welded = Welding.Weld(soup);
        Clock.Best("weld, 1e6 triangles", () => $"{Welding.Weld(soup).Vertices.Length} vertices");
        Clock.Best("topology, 1e6 triangles", () => $"{MeshTopology.Of(welded).ShellCount} shells");
        Clock.Best("measures, 1e6 triangles", () => $"{MeshMeasures.Of(welded).SignedVolumeMm3:F3} mm3");
        Clock.Best("weld + topology + measures, 1e6 triangles", () =>
        {
            Mesh mesh = Welding.Weld(soup);
            return $"{MeshTopology.Of(mesh).IsClosed} {MeshMeasures.Of(mesh).AreaMm2:F3} mm2";
        });
    }

    /// <summary>A torus as a binary STL holds it: three own vertices for each triangle, single precision.</summary>
    private static Mesh Torus(int around, int tube)
    {
        Vec3 At(int i, int j)
        {
            double u = 2 * Math.PI * (i % around) / around, v = 2 * Math.PI * (j % tube) / tube;
            double r = 80 + 20 * Math.Cos(v);
            return new Vec3((float)(r * Math.Cos(u)), (float)(r * Math.Sin(u)), (float)(20 * Math.Sin(v)));
        }
        var vertices = new Vec3[6 * around * tube];
        int n = 0;
        for (int i = 0; i < around; i++)
        {
            for (int j = 0; j < tube; j++)
            {
                (Vec3 a, Vec3 b, Vec3 c, Vec3 d) = (At(i, j), At(i + 1, j), At(i + 1, j + 1), At(i, j + 1));
                foreach (Vec3 p in new[] { a, b, c, a, c, d }) vertices[n++] = p;
            }
        }
        return new Mesh(vertices, [.. Enumerable.Range(0, vertices.Length)]);
    }
}
