using NetTopologySuite.Algorithm.Locate;
using NetTopologySuite.Geometries;
using NetTopologySuite.Noding;
using NetTopologySuite.Noding.Snapround;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>A region that fills the space up to a height, mm.</summary>
public sealed record Slab(Region Region, double Top);

/// <summary>
/// Stepped bodies: slabs that lie on each other. All outlines are noded against each other first, so that walls and
/// level faces share every vertex; outlines may run along each other, but two slabs must not touch in a line or a
/// point only.
/// </summary>
public static class Layers
{
    /// <param name="bottom">Chamfer of the lowest edges, mm.</param>
    /// <param name="top">Chamfer of the highest edges, mm.</param>
    public static Solid Of(double z0, Slab[] slabs, double bottom = 0, double top = 0)
    {
        Solid solid = new();
        List<Segment>[] outlines = Node(slabs);
        List<Segment> none = [];
        double z = z0;
        for (int i = 0; i < slabs.Length; i++)
        {
            bool first = i == 0, last = i == slabs.Length - 1;
            List<Segment> below = first ? none : outlines[i - 1];
            Region? lower = first ? null : slabs[i - 1].Region;
            AddLevel(solid, z, below, outlines[i], lower, slabs[i].Region, first ? bottom : 0);
            AddWalls(solid, outlines[i], z + (first ? bottom : 0), slabs[i].Top - (last ? top : 0));
            z = slabs[i].Top;
        }
        AddLevel(solid, z, outlines[^1], none, slabs[^1].Region, null, top);
        return solid;
    }

    private static List<Segment>[] Node(Slab[] slabs)
    {
        List<ISegmentString> lines = [];
        for (int i = 0; i < slabs.Length; i++)
            foreach (Vec2[] ring in Rings.Of(slabs[i].Region))
                lines.Add(new NodedSegmentString(Rings.ToLinearRing(ring).Coordinates, i));
        SnapRoundingNoder noder = new(new PrecisionModel(10_000));
        noder.ComputeNodes(lines);
        var outlines = new List<Segment>[slabs.Length];
        for (int i = 0; i < outlines.Length; i++) outlines[i] = [];
        foreach (ISegmentString line in noder.GetNodedSubstrings())
            for (int k = 0; k + 1 < line.Count; k++)
                outlines[(int)line.Context].Add(new Segment(Point(line.Coordinates[k]),
                    Point(line.Coordinates[k + 1])));
        return outlines;
    }

    private static Vec2 Point(Coordinate c) => new(c.X, c.Y);

    private static void AddWalls(Solid solid, List<Segment> outline, double low, double high)
    {
        foreach (Segment s in outline)
        {
            int a = solid.Vertex(new Vec3(s.From.X, s.From.Y, low)), b = solid.Vertex(new Vec3(s.To.X, s.To.Y, low));
            int c = solid.Vertex(new Vec3(s.To.X, s.To.Y, high)), d = solid.Vertex(new Vec3(s.From.X, s.From.Y, high));
            solid.Add(a, b, c);
            solid.Add(a, c, d);
        }
    }

    /// <summary>
    /// The faces between two slabs: upward where only the lower one is, downward where only the upper one is.
    /// </summary>
    private static void AddLevel(
        Solid solid, double z, List<Segment> below, List<Segment> above, Region? lower, Region? upper, double chamfer)
    {
        HashSet<Segment> shared = [.. below.Intersect(above)];
        List<Segment> up = [], down = [];
        foreach (Segment s in below.Where(s => !shared.Contains(s)))
            if (IsIn(upper, s)) down.Add(s);
            else up.Add(s);
        foreach (Segment s in above.Where(s => !shared.Contains(s)))
            if (IsIn(lower, s)) up.Add(s.Reversed());
            else down.Add(s.Reversed());
        AddFaces(solid, Frame.Level(z), up, -chamfer);
        AddFaces(solid, Prism.Underneath(Frame.Level(z)), down, -chamfer);
    }

    private static bool IsIn(Region? region, Segment s)
    {
        if (region is null) return false;
        Vec2 middle = (s.From + s.To) * 0.5;
        return SimplePointInAreaLocator.Locate(new Coordinate(middle.X, middle.Y), region) == Location.Interior;
    }

    private static void AddFaces(Solid solid, Frame plane, List<Segment> edges, double chamfer)
    {
        if (edges.Count == 0) return;
        Frame start = plane with { Origin = plane.At(default, chamfer) };
        int VertexOf(Vec2 p) => solid.Vertex(new Vec3(p.X, p.Y, start.Origin.Z));
        List<int[]> rings = Chains.Close(edges.Select(e => (VertexOf(e.From), VertexOf(e.To))));
        if (chamfer < 0)
        {
            List<Vec2[]> flat = [.. rings.Select(r => r.Select(v => start.Flat(solid.At(v))).ToArray())];
            rings = Prism.Rise(solid, start, flat, rings, new Level(-chamfer, -chamfer));
        }
        Planar.Fill(solid, plane, rings);
    }

    private readonly record struct Segment(Vec2 From, Vec2 To)
    {
        public Segment Reversed() => new(To, From);
    }
}
