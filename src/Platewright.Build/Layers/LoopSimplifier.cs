using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>
/// Leaves out points of a closed loop that lie within a tolerance of the line through those kept: Ramer (1972), Douglas
/// and Peucker (1973), on the two halves between the loop's least point and the point farthest from it. A loop gives
/// the same points wherever it starts.
/// </summary>
public static class LoopSimplifier
{
    /// <param name="loop">The loop.</param>
    /// <param name="toleranceMm">Greatest distance of a dropped point, mm.</param>
    /// <returns>The kept points in order; fewer than three where the loop is thinner than the tolerance.</returns>
    public static Vec2[] Simplify(ReadOnlySpan<Vec2> loop, double toleranceMm)
    {
        int n = loop.Length;
        if (n < 3) return [];
        int start = 0;
        for (int i = 1; i < n; i++)
            if (loop[i].X < loop[start].X || (loop[i].X == loop[start].X && loop[i].Y < loop[start].Y)) start = i;
        var turned = new Vec2[n + 1];
        loop[start..].CopyTo(turned);
        loop[..start].CopyTo(turned.AsSpan(n - start));
        turned[n] = turned[0];

        int far = 0;
        double farthest = -1;
        for (int i = 1; i < n; i++)
        {
            Vec2 d = turned[i] - turned[0];
            double squared = d.Dot(d);
            if (squared > farthest) (farthest, far) = (squared, i);
        }
        var keep = new bool[n + 1];
        keep[0] = keep[far] = true;
        Mark(turned, keep, 0, far, toleranceMm);
        Mark(turned, keep, far, n, toleranceMm);
        int count = 0;
        for (int i = 0; i < n; i++) if (keep[i]) turned[count++] = turned[i];
        return count < 3 ? [] : turned[..count];
    }

    private static void Mark(Vec2[] points, bool[] keep, int from, int to, double tolerance)
    {
        Stack<(int From, int To)> open = new();
        open.Push((from, to));
        while (open.TryPop(out (int From, int To) span))
        {
            int worst = Farthest(points, span.From, span.To, tolerance);
            if (worst < 0) continue;
            keep[worst] = true;
            open.Push((span.From, worst));
            open.Push((worst, span.To));
        }
    }

    private static int Farthest(Vec2[] points, int from, int to, double tolerance)
    {
        Vec2 a = points[from], d = points[to] - a;
        double squared = d.Dot(d);
        int worst = -1;
        double greatest = tolerance * tolerance;
        for (int i = from + 1; i < to; i++)
        {
            Vec2 e = points[i] - a;
            double t = squared > 0 ? Math.Clamp(e.Dot(d) / squared, 0, 1) : 0;
            Vec2 off = e - d * t;
            double distance = off.Dot(off);
            if (distance > greatest) (greatest, worst) = (distance, i);
        }
        return worst;
    }
}
