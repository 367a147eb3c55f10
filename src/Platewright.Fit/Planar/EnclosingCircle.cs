using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>The smallest circle around points on the build surface, with the two or three points that hold it.</summary>
/// <param name="Center">Centre, mm.</param>
/// <param name="RadiusMm">Radius, mm.</param>
/// <param name="A">Index of a point on it; likewise B and C. C is B where two points hold it.</param>
internal readonly record struct EnclosingCircle(
    Vec2 Center, double RadiusMm, int A, int B, int C, Vec2 PointA, Vec2 PointB, Vec2 PointC)
{
    private const int MostSteps = 64;

    // A point this little outside, relative to the radius, does not move the circle.
    private const double Inside = 1 + 1e-13;
    private const double OnCircle = 1 + 1e-12;

    /// <summary>
    /// Starts from a far pair and takes in the farthest outsider until there is none; the support changes as in Welzl
    /// (1991), and the radius grows at every step.
    /// </summary>
    public static EnclosingCircle Of(ReadOnlySpan<Vec2> points)
    {
        int first = FarthestFrom(points, points[0], out _);
        int second = FarthestFrom(points, points[first], out _);
        EnclosingCircle circle = Through(first, points[first], second, points[second]);
        for (int step = 0; step < MostSteps; step++)
        {
            int next = FarthestFrom(points, circle.Center, out double distance);
            if (distance <= circle.RadiusMm * Inside) break;
            EnclosingCircle larger = circle.Including(next, points[next]);
            if (larger.RadiusMm <= circle.RadiusMm) break;
            circle = larger;
        }
        return circle;
    }

    /// <summary>
    /// The points that hold the circle with weights λ ≥ 0 that sum to 1 and Σ λ (p − centre) = 0. Of a triangle that
    /// rounding made obtuse only the longest side counts.
    /// </summary>
    public (double A, double B, double C) Weights()
    {
        if (C == B) return (0.5, 0.5, 0);
        Vec2 a = PointA - Center, b = PointB - Center, c = PointC - Center;
        double la = b.Cross(c), lb = c.Cross(a), lc = a.Cross(b), sum = la + lb + lc;
        if (sum == 0 || la / sum <= 0) return (0, 0.5, 0.5);
        if (lb / sum <= 0) return (0.5, 0, 0.5);
        return lc / sum <= 0 ? (0.5, 0.5, 0) : (la / sum, lb / sum, lc / sum);
    }

    private static int FarthestFrom(ReadOnlySpan<Vec2> points, Vec2 center, out double distance)
    {
        int best = 0;
        double most = -1;
        for (int i = 0; i < points.Length; i++)
        {
            double dx = points[i].X - center.X, dy = points[i].Y - center.Y;
            double d = dx * dx + dy * dy;
            if (d <= most) continue;
            most = d;
            best = i;
        }
        distance = Math.Sqrt(most);
        return best;
    }

    private static EnclosingCircle Through(int a, Vec2 p, int b, Vec2 q) =>
        new((p + q) * 0.5, (q - p).Length / 2, a, b, b, p, q, q);

    private static EnclosingCircle? Through(int a, Vec2 p, int b, Vec2 q, int c, Vec2 r)
    {
        Vec2 u = q - p, v = r - p;
        double cross = 2 * u.Cross(v);
        if (cross == 0) return null;
        double uu = u.Dot(u), vv = v.Dot(v);
        Vec2 offset = new((v.Y * uu - u.Y * vv) / cross, (u.X * vv - v.X * uu) / cross);
        return double.IsFinite(offset.X) && double.IsFinite(offset.Y)
            ? new EnclosingCircle(p + offset, offset.Length, a, b, c, p, q, r)
            : null;
    }

    private bool Holds(Vec2 p) => (p - Center).Length <= RadiusMm * OnCircle;

    // The smallest circle around the present support and one more point, which must be on it.
    private EnclosingCircle Including(int next, Vec2 p)
    {
        EnclosingCircle? best = null;
        Consider(ref best, Through(A, PointA, next, p));
        Consider(ref best, Through(B, PointB, next, p));
        if (C != B) Consider(ref best, Through(C, PointC, next, p));
        if (best is not null) return best.Value;
        Consider(ref best, Through(A, PointA, B, PointB, next, p));
        if (C != B)
        {
            Consider(ref best, Through(A, PointA, C, PointC, next, p));
            Consider(ref best, Through(B, PointB, C, PointC, next, p));
        }
        return best ?? this;
    }

    private void Consider(ref EnclosingCircle? best, EnclosingCircle? candidate)
    {
        if (candidate is not { } circle || !circle.Holds(PointA) || !circle.Holds(PointB) || !circle.Holds(PointC)) return;
        if (best is null || circle.RadiusMm < best.Value.RadiusMm) best = circle;
    }
}
