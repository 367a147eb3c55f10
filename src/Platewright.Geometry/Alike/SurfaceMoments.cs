namespace Platewright.Geometry;

/// <summary>
/// Moments of a surface of area 1 about a point: the integrals of all monomials x^i y^j z^k of degree 2, 3 and 4, in
/// that order, each degree with i falling, then j. They do not depend on how the surface is cut into triangles.
/// </summary>
internal sealed class SurfaceMoments
{
    // The six-point rule that is exact to degree 4 on a triangle (Dunavant 1985).
    private const double NearWeight = 0.10995174365532187, FarWeight = 0.22338158967801147;
    private const double Near = 0.09157621350977074, Far = 0.44594849091596489;

    private const int Count = 6 + 10 + 15;

    private SurfaceMoments(double[] values) => Values = values;

    public double[] Values { get; }

    public static SurfaceMoments Of(Mesh mesh, Vec3 centre, double unit)
    {
        var sums = new double[Chunks.Count(mesh.TriangleCount)][];
        Chunks.For(mesh.TriangleCount, (from, to) => sums[Chunks.Piece(from)] = Over(mesh, centre, unit, from, to));
        double[] all = new double[Count];
        foreach (double[] part in sums)
            for (int i = 0; i < Count; i++) all[i] += part[i];
        return new SurfaceMoments(all);
    }

    /// <summary>The second moments as a symmetric matrix.</summary>
    public Matrix3 Second() => SymmetricMatrix.From(Values);

    private static double[] Over(Mesh mesh, Vec3 centre, double unit, int from, int to)
    {
        double[] sums = new double[Count];
        for (int t = from; t < to; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            (a, b, c) = ((a - centre) / unit, (b - centre) / unit, (c - centre) / unit);
            double area = (b - a).Cross(c - a).Length / 2;
            for (int rule = 0; rule < 2; rule++)
            {
                (double corner, double weight) = rule == 0 ? (Near, NearWeight) : (Far, FarWeight);
                double own = 1 - 2 * corner;
                Add(sums, a * own + (b + c) * corner, area * weight);
                Add(sums, b * own + (c + a) * corner, area * weight);
                Add(sums, c * own + (a + b) * corner, area * weight);
            }
        }
        return sums;
    }

    private static void Add(double[] sums, Vec3 p, double weight)
    {
        Span<double> x = stackalloc double[5];
        Span<double> y = stackalloc double[5];
        Span<double> z = stackalloc double[5];
        (x[0], y[0], z[0]) = (weight, 1, 1);
        for (int i = 1; i < 5; i++) (x[i], y[i], z[i]) = (x[i - 1] * p.X, y[i - 1] * p.Y, z[i - 1] * p.Z);
        int place = 0;
        for (int degree = 2; degree <= 4; degree++)
            for (int i = degree; i >= 0; i--)
                for (int j = degree - i; j >= 0; j--) sums[place++] += x[i] * y[j] * z[degree - i - j];
    }
}
