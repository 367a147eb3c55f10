namespace Platewright.Geometry.Benchmarks;

/// <summary>Hulls of a million points: the easy cloud, the boxy part, and the worst case where every point is
/// extreme.</summary>
internal static class HullBenchmarks
{
    private const int Count = 1_000_000;

    public static void Run()
    {
        Run("ball, 1e6 points", r => Direction(r) * Math.Cbrt(r.NextDouble()));
        Run("cube surface, single precision, 1e6 points", OnCube);
        Run("turned cube surface, 1e6 points", r => Rotation.About(new Vec3(1, 2, 3), 1).Apply(OnCube(r)));
        Run("cylinder side of 1,000 points a ring, 1e6 points", r =>
        {
            double a = r.Next(1000) * Math.PI / 500;
            return Single(new Vec3(Math.Cos(a) * 50, Math.Sin(a) * 50, r.Next(1000) * 0.1));
        });
        Run("sphere surface, 1e6 points", r => Direction(r) * 100);
    }

    private static void Run(string name, Func<Random, Vec3> point)
    {
        Random random = new(1);
        var points = new Vec3[Count];
        for (int i = 0; i < Count; i++) points[i] = point(random);
        Clock.Best(name, () =>
        {
            ConvexHull hull = ConvexHull.Of(points);
            return $"{hull.Vertices.Length} vertices, {hull.Faces.Count} faces";
        });
    }

    private static Vec3 OnCube(Random r)
    {
        double[] p = [r.NextDouble(), r.NextDouble(), r.NextDouble()];
        p[r.Next(3)] = r.Next(2);
        return Single(new Vec3(p[0], p[1], p[2]) * 200);
    }

    private static Vec3 Single(Vec3 p) => new((float)p.X, (float)p.Y, (float)p.Z);

    private static Vec3 Direction(Random r)
    {
        while (true)
        {
            Vec3 p = new(r.NextDouble() * 2 - 1, r.NextDouble() * 2 - 1, r.NextDouble() * 2 - 1);
            if (p.Length is > 0.01 and <= 1) return p.Normalized();
        }
    }
}
