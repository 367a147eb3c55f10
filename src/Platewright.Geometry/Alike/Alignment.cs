namespace Platewright.Geometry;

/// <summary>Whether one shape can be laid over another by a turn, only by a mirror, or not at all.</summary>
internal enum Match
{
    None,
    Turned,
    Mirrored,
}

/// <summary>
/// Lays one shape over another. Turns to try come from the main axes where these are distinct, else from pairs of hull
/// points; a turn is judged by the third and fourth moments and by the extent of the hull in many directions.
/// </summary>
internal static class Alignment
{
    /// <summary>Main moments closer than this share of the largest do not say how a part is turned.</summary>
    private const double DistinctShare = 0.02;

    /// <summary>A turn fits where nothing differs by more than this share of the shape's size.</summary>
    private const double Fits = 5e-3;

    /// <summary>Single precision leaves this much; a turn this good ends the search.</summary>
    private const double Exact = 1e-4;

    /// <summary>The mirror must fit so much better than the best turn to be called one.</summary>
    private const double Clearly = 4;

    private const int MostTries = 500;

    public static Match Best(ShapeSignature a, ShapeSignature b)
    {
        Pattern pattern = new(a), other = new(b), mirror = pattern.Mirrored();
        double turned = Least(pattern, other);
        if (turned <= Exact) return Match.Turned;
        double mirrored = Least(mirror, other);
        if (Math.Min(turned, mirrored) > Fits) return Match.None;
        return mirrored * Clearly < turned ? Match.Mirrored : Match.Turned;
    }

    private static double Least(Pattern a, Pattern b)
    {
        double least = double.PositiveInfinity;
        int tries = 0;
        foreach (Matrix3 turn in Turns(a, b))
        {
            least = Math.Min(least, a.Differs(b, turn, least));
            if (least <= Exact || ++tries >= MostTries) break;
        }
        return least;
    }

    private static IEnumerable<Matrix3> Turns(Pattern a, Pattern b)
    {
        Vec3 values = a.Values;
        double gap = Math.Min(values.X - values.Y, values.Y - values.Z);
        return gap > DistinctShare * values.X ? ByAxes(a, b) : ByPoints(a, b);
    }

    private static IEnumerable<Matrix3> ByAxes(Pattern a, Pattern b)
    {
        for (int sign = 0; sign < 4; sign++)
        {
            Vec3 first = (sign & 1) == 0 ? a.Axes.Row0 : -a.Axes.Row0;
            Vec3 second = (sign & 2) == 0 ? a.Axes.Row1 : -a.Axes.Row1;
            yield return b.Axes.Transposed() * new Matrix3(first, second, first.Cross(second));
        }
    }

    /// <summary>
    /// Two points of the shape that few others resemble, laid over every pair of the other shape that resembles them:
    /// first by distance from the centre, from each other and from their nearest neighbours, then, as those neighbours
    /// may be rounding, without the latter.
    /// </summary>
    private static IEnumerable<Matrix3> ByPoints(Pattern a, Pattern b)
    {
        double reach = a.Reach * Fits;
        foreach (bool byNeighbours in new[] { true, false })
        {
            int first = Rarest(a, Enumerable.Range(0, a.Points.Length), i => a.Resembling(a, i, reach, byNeighbours));
            Vec3 p = a.Points[first];
            double widest = a.Points.Max(q => q.Cross(p).Length);
            if (widest <= reach * p.Length) yield break;
            int second = Rarest(
                a, Enumerable.Range(0, a.Points.Length).Where(k => a.Points[k].Cross(p).Length >= widest / 2),
                k => a.Resembling(a, k, reach, byNeighbours).Where(m => SameDistance(a, m, first, a, k, first, reach)));
            Matrix3 from = Framed(p, a.Points[second]);
            foreach (int u in b.Resembling(a, first, reach, byNeighbours))
            {
                foreach (int v in b.Resembling(a, second, reach, byNeighbours))
                {
                    if (SameDistance(b, u, v, a, first, second, reach) && b.Points[u].Cross(b.Points[v]) != default)
                        yield return Framed(b.Points[u], b.Points[v]).Transposed() * from;
                }
            }
        }
    }

    private static bool SameDistance(Pattern a, int i, int j, Pattern b, int k, int l, double reach) =>
        Math.Abs((a.Points[i] - a.Points[j]).Length - (b.Points[k] - b.Points[l]).Length) <= reach;

    /// <summary>The candidate that resembles the fewest; of several the one furthest out, then the first.</summary>
    private static int Rarest(Pattern a, IEnumerable<int> candidates, Func<int, IEnumerable<int>> resembling) =>
        candidates.OrderBy(i => resembling(i).Count()).ThenByDescending(i => a.Points[i].Length).ThenBy(i => i).First();

    private static Matrix3 Framed(Vec3 first, Vec3 second)
    {
        Vec3 x = first.Normalized(), z = first.Cross(second).Normalized();
        return new Matrix3(x, z.Cross(x), z);
    }
}
