using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Paths;

/// <summary>
/// The order of a layer's paths and the travel between them: brim and support first, then island after island, in each
/// its walls, solid faces and infill; always the nearest next.
/// </summary>
internal static class PathOrder
{
    /// <summary>Filament is pulled back before a travel longer than this that leaves the material, in pitches, about
    /// 1.5 mm: common practice, no source.</summary>
    private const double LeastPullBack = 3.7;

    /// <summary>How finely a travel is followed to see whether it leaves the material, in pitches.</summary>
    private const double FollowStep = 1;

    /// <summary>More paths of a kind than this keep the order they were found in, which runs from row to row.</summary>
    private const int MostSorted = 500;

    public static LayerPlan ToMoves(
        List<Path> paths, Section section, Layer layer, double pitchMm, PathSpeeds speeds)
    {
        if (paths.Count == 0) return new LayerPlan(default, []);
        List<Path> ordered = Order(paths, section);
        Walk walk = new(section, layer.BottomMm + layer.HeightMm, pitchMm, speeds);
        Vec2 end = EndOf(ordered[^1]);
        walk.Begin(end);
        foreach (Path path in ordered) walk.Follow(path);
        return new LayerPlan(Walk.Above(end, layer.BottomMm), [.. walk.Moves]);
    }

    private static List<Path> Order(List<Path> paths, Section section)
    {
        List<Vec2[]> islands = [.. section.Loops.Where(l => Outline.SignedArea(l) > 0)];
        var groups = new List<Path>[islands.Count + 1, 3];
        foreach (Path path in paths)
        {
            bool around = path.Kind is PathKind.Brim or PathKind.Support;
            int island = around || islands.Count == 0 ? 0 : 1 + IslandOf(path.Points[0], islands);
            int phase = path.Kind switch
            {
                PathKind.Wall or PathKind.Brim => 0,
                PathKind.SolidFace or PathKind.Support => 1,
                _ => 2,
            };
            (groups[island, phase] ??= []).Add(path);
        }
        List<Path> ordered = new(paths.Count);
        Vec2 here = paths[0].Points[0];
        Visit(groups, 0, ordered, ref here);
        List<int> open = [.. Enumerable.Range(1, islands.Count)];
        while (open.Count > 0)
        {
            Vec2 from = here;
            int nearest = open.MinBy(i => (islands[i - 1][0] - from).Length);
            open.Remove(nearest);
            Visit(groups, nearest, ordered, ref here);
        }
        return ordered;
    }

    private static void Visit(List<Path>[,] groups, int island, List<Path> ordered, ref Vec2 here)
    {
        for (int phase = 0; phase < 3; phase++)
            if (groups[island, phase] is { } group) AddNearest(group, ordered, ref here);
    }

    private static void AddNearest(List<Path> group, List<Path> ordered, ref Vec2 here)
    {
        bool sorted = group.Count <= MostSorted;
        // Ends side by side, for the search that meets them all for every path.
        var ends = sorted ? group.Select(p => (First: p.Points[0], Last: p.Points[^1], p.Closed)).ToArray() : [];
        for (int done = 0; done < group.Count; done++)
        {
            int best = done;
            bool reverse = false;
            if (sorted)
            {
                double least = double.PositiveInfinity;
                for (int i = done; i < ends.Length; i++)
                {
                    Vec2 a = ends[i].First - here, b = ends[i].Last - here;
                    double first = a.Dot(a), last = ends[i].Closed ? double.PositiveInfinity : b.Dot(b);
                    if (first < least) (least, best, reverse) = (first, i, false);
                    if (last < least) (least, best, reverse) = (last, i, true);
                }
                (ends[done], ends[best]) = (ends[best], ends[done]);
            }
            (group[done], group[best]) = (group[best], group[done]);
            Path path = group[done];
            if (path.Closed) path = path with { Points = StartNear(path.Points, here) };
            else if (reverse) path = path with { Points = [.. path.Points.Reverse()] };
            ordered.Add(path);
            here = EndOf(path);
        }
    }

    private static Vec2 EndOf(Path path) => path.Closed ? path.Points[0] : path.Points[^1];

    private static Vec2[] StartNear(Vec2[] loop, Vec2 here)
    {
        int best = 0;
        double least = double.PositiveInfinity;
        for (int i = 0; i < loop.Length; i++)
        {
            Vec2 d = loop[i] - here;
            if (d.Dot(d) < least) (least, best) = (d.Dot(d), i);
        }
        return best == 0 ? loop : [.. loop[best..], .. loop[..best]];
    }

    /// <summary>The smallest island around a point; the nearest begin where rounding puts it outside all.</summary>
    private static int IslandOf(Vec2 point, List<Vec2[]> islands)
    {
        if (islands.Count == 1) return 0;
        int inside = -1, nearest = 0;
        double area = double.PositiveInfinity, distance = double.PositiveInfinity;
        for (int i = 0; i < islands.Count; i++)
        {
            double d = (islands[i][0] - point).Length;
            if (d < distance) (distance, nearest) = (d, i);
            if (!Outline.Contains(islands[i], point)) continue;
            double own = Outline.SignedArea(islands[i]);
            if (own < area) (area, inside) = (own, i);
        }
        return inside >= 0 ? inside : nearest;
    }

    /// <summary>Turns paths into moves, with the travel between them.</summary>
    private sealed class Walk(Section section, double zMm, double pitchMm, PathSpeeds speeds)
    {
        private readonly double _travel = speeds.Travel ?? double.PositiveInfinity;
        private Vec2 _here;

        public List<Move> Moves { get; } = new(512);

        public static Vec3 Above(Vec2 p, double z)
        {
            Vec2 q = LayerFrame.ToMachine(p);
            return new Vec3(q.X, q.Y, z);
        }

        public void Begin(Vec2 from)
        {
            _here = from;
            Moves.Add(new Move(Above(from, zMm), _travel, 0, 0, PathKind.Travel));
        }

        public void Follow(Path path)
        {
            Travel(path.Points[0]);
            double speed = Speed(path.Kind);
            for (int i = 1; i < path.Points.Length; i++)
            {
                bool lays = !path.Dashed || i % 2 == 1;
                Moves.Add(new Move(Above(path.Points[i], zMm), speed, lays ? path.BeadAreaMm2 : 0, 0, path.Kind));
            }
            if (path.Closed) Moves.Add(new Move(Above(path.Points[0], zMm), speed, path.BeadAreaMm2, 0, path.Kind));
            _here = EndOf(path);
        }

        private void Travel(Vec2 to)
        {
            Vec2 way = to - _here;
            double length = way.Length;
            if (length == 0) return;
            bool pullBack = length > LeastPullBack * pitchMm && Leaves(way, length);
            Moves.Add(new Move(Above(to, zMm), _travel, 0, pullBack ? 1 : 0, PathKind.Travel));
        }

        private bool Leaves(Vec2 way, double length)
        {
            int steps = (int)Math.Ceiling(length / (FollowStep * pitchMm));
            for (int i = 1; i < steps; i++)
            {
                Vec2 p = _here + way * ((double)i / steps);
                if (!section.Solid.Contains(p.X, p.Y)) return true;
            }
            return false;
        }

        private double Speed(PathKind kind) => kind switch
        {
            PathKind.Wall => speeds.Walls,
            PathKind.SolidFace => speeds.SolidFaces,
            PathKind.Infill => speeds.Infill,
            PathKind.Support => speeds.Support,
            PathKind.Brim => speeds.Brim,
            _ => _travel,
        };
    }
}
