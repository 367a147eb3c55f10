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
        Clock.Best("hull, 1e6 triangles", () => $"{ConvexHull.Of(welded.Vertices).Vertices.Length} vertices");
        Clock.Best("whole examination of the soup, 1e6 triangles", () => Examined(soup, HealthOptions.Default));
        HealthOptions noWalls = HealthOptions.Default with { WallSamples = 0 };
        Clock.Best("the same without walls", () => Examined(soup, noWalls));
        Mesh small = Torus(400, 100);
        Clock.Best("whole examination, 8e4 triangles, crossings too", () => Examined(small, HealthOptions.Default));
        Clock.Best("tightest box of that", () => $"{TightestBox.Of(ConvexHull.Of(small.Vertices)).SizeMm.X:F3} mm");
    }

    private static string Examined(Mesh mesh, HealthOptions options)
    {
        MeshReport report = MeshHealth.Examine(mesh, options);
        return $"closed {report.IsClosed}, {report.VolumeMm3:F0} mm3, wall {report.ThinnestWallMm:F2} mm";
    }

    /// <summary>A torus with waves, so that its hull is that of a part and not of a ball, as a binary STL holds it:
    /// three own vertices for each triangle, single precision.</summary>
    private static Mesh Torus(int around, int tube)
    {
        Vec3 At(int i, int j)
        {
            double u = 2 * Math.PI * (i % around) / around, v = 2 * Math.PI * (j % tube) / tube;
            double wave = 20 + 0.5 * Math.Sin(37 * u) * Math.Sin(23 * v), r = 80 + wave * Math.Cos(v);
            return new Vec3((float)(r * Math.Cos(u)), (float)(r * Math.Sin(u)), (float)(wave * Math.Sin(v)));
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
