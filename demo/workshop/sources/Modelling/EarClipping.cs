using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>
/// Triangulates a polygon with holes: holes are bridged to the outline, ears are clipped, well shaped ones first, and
/// <see cref="EdgeFlips"/> then evens the triangles out. Uses every point, also those on straight sides.
/// </summary>
internal static class EarClipping
{
    /// <summary>Twice the area, mm², below which three points count as on a line.</summary>
    internal const double FlatMm2 = 1e-7;

    /// <summary>Of <see cref="Quality"/>, whose greatest value is 0.096 for equal sides.</summary>
    private const double WellShaped = 0.02;

    /// <param name="outline">Counter-clockwise.</param>
    /// <param name="holes">Clockwise, inside the outline and clear of each other.</param>
    /// <returns>Triangles as indices into the outline's points followed by those of the holes in order.</returns>
    /// <exception cref="ArgumentException">The rings cross or touch, so that no ear is left.</exception>
    public static List<Triangle> Fill(Vec2[] outline, IReadOnlyList<Vec2[]> holes)
    {
        Vec2[] points = [.. outline, .. holes.SelectMany(h => h)];
        List<int> ring = Bridges.Join(points, outline.Length, holes);
        List<Triangle> triangles = [];
        int at = 0;
        while (ring.Count > 3)
        {
            at = FindEar(points, ring, at);
            triangles.Add(Corner(ring, at));
            ring.RemoveAt(at);
        }
        triangles.Add(new Triangle(ring[0], ring[1], ring[2]));
        EdgeFlips.Improve(points, triangles);
        return triangles;
    }

    internal static double Turn(Vec2 a, Vec2 b, Vec2 c) => (b - a).Cross(c - a);

    /// <summary>The next ear round the ring that is well shaped, else the best there is.</summary>
    private static int FindEar(Vec2[] points, List<int> ring, int start)
    {
        int best = -1;
        double quality = double.NegativeInfinity;
        for (int step = 0; step < ring.Count; step++)
        {
            int at = (start + step) % ring.Count;
            double q = Quality(points, ring, at);
            if (q <= quality || !IsEar(points, ring, at)) continue;
            (best, quality) = (at, q);
            if (quality > WellShaped) break;
        }
        return best >= 0
            ? best
            : throw new ArgumentException($"No ear is left of {ring.Count} points near {points[ring[0]]}.",
                nameof(ring));
    }

    /// <summary>Area over squared perimeter: a flat corner scores 0, a reflex one less.</summary>
    private static double Quality(Vec2[] points, List<int> ring, int at)
    {
        Triangle t = Corner(ring, at);
        Vec2 a = points[t.A], b = points[t.B], c = points[t.C];
        double perimeter = (b - a).Length + (c - b).Length + (a - c).Length;
        return Turn(a, b, c) / (perimeter * perimeter);
    }

    private static bool IsEar(Vec2[] points, List<int> ring, int at)
    {
        Triangle t = Corner(ring, at);
        Vec2 a = points[t.A], b = points[t.B], c = points[t.C];
        if (Turn(a, b, c) <= FlatMm2) return false;
        foreach (int other in ring)
        {
            Vec2 p = points[other];
            if (p == a || p == b || p == c) continue;
            if (Turn(a, b, p) >= -FlatMm2 && Turn(b, c, p) >= -FlatMm2 && Turn(c, a, p) >= -FlatMm2) return false;
        }
        return true;
    }

    private static Triangle Corner(List<int> ring, int at) =>
        new(ring[(at + ring.Count - 1) % ring.Count], ring[at], ring[(at + 1) % ring.Count]);
}
