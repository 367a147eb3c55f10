using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>Joins the holes of a polygon to its outline, so that one ring runs round everything.</summary>
internal static class Bridges
{
    /// <summary>
    /// Holes go in from the right: the rightmost point of the rightmost hole left always sees a point of the ring so
    /// far.
    /// </summary>
    public static List<int> Join(Vec2[] points, int outlineLength, IReadOnlyList<Vec2[]> holes)
    {
        List<int> ring = [.. Enumerable.Range(0, outlineLength)];
        List<int[]> open = [];
        int start = outlineLength;
        foreach (Vec2[] hole in holes)
        {
            open.Add([.. Enumerable.Range(start, hole.Length)]);
            start += hole.Length;
        }
        while (open.Count > 0)
        {
            int[] hole = open.MaxBy(h => h.Max(i => points[i].X))!;
            int right = Array.IndexOf(hole, hole.MaxBy(i => points[i].X));
            int at = FindSeen(points, ring, open, hole[right]);
            open.Remove(hole);
            ring.InsertRange(at + 1, [.. hole[right..], .. hole[..right], hole[right], ring[at]]);
        }
        return ring;
    }

    private static int FindSeen(Vec2[] points, List<int> ring, List<int[]> open, int from)
    {
        Vec2 eye = points[from];
        foreach (int at in Enumerable.Range(0, ring.Count).OrderBy(i => (points[ring[i]] - eye).Length))
        {
            Vec2 seen = points[ring[at]];
            Vec2 before = points[ring[(at + ring.Count - 1) % ring.Count]], after = points[ring[(at + 1) % ring.Count]];
            if (!Opens(before, seen, after, eye) || Blocks(points, ring, eye, seen)) continue;
            if (!open.Exists(hole => Blocks(points, hole, eye, seen))) return at;
        }
        throw new ArgumentException($"A hole at {eye} sees no point of the outline.", nameof(open));
    }

    /// <summary>Whether the material at a corner of the ring reaches towards a point.</summary>
    private static bool Opens(Vec2 before, Vec2 corner, Vec2 after, Vec2 towards)
    {
        bool leftOfIn = EarClipping.Turn(before, corner, towards) > 0,
            leftOfOut = EarClipping.Turn(corner, after, towards) > 0;
        return EarClipping.Turn(before, corner, after) > 0 ? leftOfIn && leftOfOut : leftOfIn || leftOfOut;
    }

    private static bool Blocks(Vec2[] points, IReadOnlyList<int> ring, Vec2 from, Vec2 to)
    {
        for (int i = 0; i < ring.Count; i++)
        {
            Vec2 a = points[ring[i]], b = points[ring[(i + 1) % ring.Count]];
            if (a == from || a == to || b == from || b == to)
            {
                if (LiesOn(a, from, to) || LiesOn(b, from, to)) return true;
                continue;
            }
            double a1 = EarClipping.Turn(from, to, a), b1 = EarClipping.Turn(from, to, b);
            double f1 = EarClipping.Turn(a, b, from), t1 = EarClipping.Turn(a, b, to);
            if (a1 * b1 <= 0 && f1 * t1 <= 0) return true;
        }
        return false;
    }

    private static bool LiesOn(Vec2 p, Vec2 from, Vec2 to) =>
        p != from && p != to && Math.Abs(EarClipping.Turn(from, to, p)) <= EarClipping.FlatMm2 && (p - from)
            .Dot(p - to) < 0;
}
