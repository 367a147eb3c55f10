using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>
/// Exchanges diagonals between neighbouring triangles until no exchange makes the smallest angle larger.
/// </summary>
internal static class EdgeFlips
{
    /// <summary>Of the cosine, so that rounding never makes two diagonals take turns.</summary>
    private const double Gain = 1e-6;

    private const int MostRounds = 60;

    public static void Improve(Vec2[] points, List<Triangle> triangles)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            Dictionary<(int, int), int> owner = [];
            for (int i = 0; i < triangles.Count; i++)
                foreach ((int, int) edge in Edges(triangles[i])) owner[edge] = i;
            HashSet<int> touched = [];
            for (int i = 0; i < triangles.Count; i++)
                foreach ((int a, int b) in Edges(triangles[i]))
                {
                    if (touched.Contains(i) || !owner.TryGetValue((b, a), out int j) || touched.Contains(j)) continue;
                    int c = Opposite(triangles[i], a, b), d = Opposite(triangles[j], a, b);
                    if (!IsBetter(points[a], points[b], points[c], points[d])) continue;
                    triangles[i] = new Triangle(a, d, c);
                    triangles[j] = new Triangle(d, b, c);
                    touched.Add(i);
                    touched.Add(j);
                }
            if (touched.Count == 0) return;
        }
    }

    /// <summary>Whether the diagonal cd serves better than ab, and may take its place.</summary>
    private static bool IsBetter(Vec2 a, Vec2 b, Vec2 c, Vec2 d) =>
        EarClipping.Turn(a, d, c) > EarClipping.FlatMm2 && EarClipping.Turn(d, b, c) > EarClipping.FlatMm2 &&
        Math.Max(Sharpest(a, d, c), Sharpest(d, b, c)) < Math.Max(Sharpest(a, b, c), Sharpest(b, a, d)) - Gain;

    /// <summary>Cosine of the smallest angle; 1 for a flat triangle.</summary>
    private static double Sharpest(Vec2 a, Vec2 b, Vec2 c) =>
        Math.Max(Cosine(a, b, c), Math.Max(Cosine(b, c, a), Cosine(c, a, b)));

    private static double Cosine(Vec2 at, Vec2 p, Vec2 q) => (p - at).Dot(q - at) / ((p - at).Length * (q - at).Length);

    private static int Opposite(Triangle t, int a, int b) =>
        t.A != a && t.A != b ? t.A : t.B != a && t.B != b ? t.B : t.C;

    private static (int From, int To)[] Edges(Triangle t) => [(t.A, t.B), (t.B, t.C), (t.C, t.A)];
}
