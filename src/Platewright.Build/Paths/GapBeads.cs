using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>
/// Single beads for what is thinner than two. A strip is cut at its two tips; the bead runs midway between its two
/// sides and has the strip's area. A ring keeps its whole outline.
/// </summary>
internal static class GapBeads
{
    /// <summary>A bead can be laid down from a quarter of its usual width up; thinner strips cannot be made.</summary>
    private const double LeastWidthShare = 0.25;

    /// <summary>Above this many times length × pitch, an outline is that of a ring and not of a strip.</summary>
    private const double RingShare = 0.75;

    /// <summary>Adds the beads of a region; the area they fill, mm².</summary>
    public static double Add(List<Path> paths, Rows gaps, double pitchMm, double layerHeightMm, double leastAreaShare)
    {
        double filled = 0;
        List<(Vec2[] Points, bool Ring, double Length)> strips = [];
        double total = 0, outlines = 0;
        foreach (Vec2[] raw in RowTrace.Trace(gaps))
        {
            Vec2[] loop = LoopSimplifier.Simplify(raw, WallPlanner.PathTolerance * pitchMm);
            if (loop.Length < 3) continue;
            double area = Outline.SignedArea(loop);
            if (area <= 0) continue;
            double perimeter = Outline.Perimeter(loop);
            bool ring = area > RingShare * perimeter * pitchMm;
            if (!ring && (area < leastAreaShare * pitchMm * pitchMm || perimeter < 4 * pitchMm)) continue;
            Vec2[] middle = ring ? loop : Middle(loop);
            double length = Length(middle, ring);
            if (length <= 0) continue;
            if (!ring)
            {
                double width = area / length;
                if (width < LeastWidthShare * pitchMm) continue;
                paths.Add(new Path(PathKind.Wall, middle, Closed: false, width * layerHeightMm));
                filled += area;
                continue;
            }
            strips.Add((middle, ring, length));
            outlines += length;
        }
        if (strips.Count == 0) return filled;
        // Rings share what the strips leave of the area: their outline alone does not tell how thick they are.
        total = Math.Max(0, gaps.AreaMm2 - filled);
        double thickness = Math.Min(total / outlines, 2 * pitchMm);
        if (thickness < LeastWidthShare * pitchMm) return filled;
        foreach ((Vec2[] points, _, _) in strips)
            paths.Add(new Path(PathKind.Wall, points, Closed: true, thickness * layerHeightMm));
        return filled + thickness * outlines;
    }

    /// <summary>The line midway between the two halves of a strip's outline, from tip to tip.</summary>
    private static Vec2[] Middle(Vec2[] loop)
    {
        (int from, int to) = Tips(loop);
        Vec2[] there = Walk(loop, from, to), back = Walk(loop, to, from);
        Array.Reverse(back);
        double thereLength = Length(there, false), backLength = Length(back, false);
        List<Vec2> middle = [loop[from]];
        double along = 0;
        for (int i = 1; i < there.Length; i++)
        {
            along += (there[i] - there[i - 1]).Length;
            Vec2 opposite = At(back, along / thereLength * backLength);
            middle.Add((there[i] + opposite) * 0.5);
        }
        return [.. middle];
    }

    /// <summary>Two corners far from each other: the farthest from any, and the farthest from that.</summary>
    private static (int From, int To) Tips(Vec2[] loop)
    {
        int from = Farthest(loop, loop[0]);
        int to = Farthest(loop, loop[from]);
        return (from, to);
    }

    private static int Farthest(Vec2[] loop, Vec2 point)
    {
        int best = 0;
        double greatest = -1;
        for (int i = 0; i < loop.Length; i++)
        {
            double distance = (loop[i] - point).Length;
            if (distance > greatest) (greatest, best) = (distance, i);
        }
        return best;
    }

    private static Vec2[] Walk(Vec2[] loop, int from, int to)
    {
        List<Vec2> points = [];
        for (int i = from; ; i = (i + 1) % loop.Length)
        {
            points.Add(loop[i]);
            if (i == to) return [.. points];
        }
    }

    private static Vec2 At(Vec2[] line, double along)
    {
        for (int i = 1; i < line.Length; i++)
        {
            double step = (line[i] - line[i - 1]).Length;
            if (along <= step && step > 0) return line[i - 1] + (line[i] - line[i - 1]) * (along / step);
            along -= step;
        }
        return line[^1];
    }

    private static double Length(Vec2[] line, bool closed)
    {
        double length = closed ? (line[0] - line[^1]).Length : 0;
        for (int i = 1; i < line.Length; i++) length += (line[i] - line[i - 1]).Length;
        return length;
    }
}
