using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>A flat face of a solid: its triangles, found from one of them, and the rings that bound it.</summary>
internal sealed class FlatFace
{
    /// <summary>How far a corner may lie off the plane, mm: above the vertices' grid, below any real step.</summary>
    private const double FlatMm = 0.002;

    private const double InsideSlack = 1e-6;

    private const double ParallelCosine = 0.999;

    private readonly Solid _solid;
    private readonly HashSet<Triangle> _triangles;

    private FlatFace(Solid solid, Frame frame, HashSet<Triangle> triangles)
    {
        _solid = solid;
        Frame = frame;
        _triangles = triangles;
    }

    public Frame Frame { get; }

    /// <summary>
    /// The first flat face that a ray from <paramref name="from"/> meets at <paramref name="beyond"/> mm or later,
    /// looking against the ray (facing it) or along it.
    /// </summary>
    /// <exception cref="ArgumentException">The ray meets no such face.</exception>
    public static FlatFace Along(Solid solid, Vec3 from, Vec3 direction, bool facing, double beyond)
    {
        Triangle? nearest = null;
        double distance = double.PositiveInfinity;
        foreach (Triangle t in solid.Triangles)
        {
            Vec3 normal = Normal(solid, t);
            double slope = normal.Dot(direction);
            if (facing ? slope > -ParallelCosine : slope < ParallelCosine) continue;
            double along = (solid.At(t.A) - from).Dot(normal) / slope;
            if (along < beyond - FlatMm || along >= distance ||
                !Holds(solid, t, normal, from + direction * along)) continue;
            (nearest, distance) = (t, along);
        }
        if (nearest is not { } seed)
            throw new ArgumentException($"No flat face lies along {direction} from {from}.", nameof(from));
        Vec3 n = facing ? -direction : direction;
        return Grow(solid, seed, Frame.Facing(from + direction * distance, n));
    }

    /// <summary>
    /// Takes the face out of the solid and gives its rings: outline counter-clockwise, holes clockwise.
    /// </summary>
    public List<int[]> Remove()
    {
        HashSet<(int From, int To)> edges = [];
        foreach (Triangle t in _triangles)
            foreach ((int From, int To) edge in Edges(t))
                if (!edges.Remove((edge.To, edge.From))) edges.Add(edge);
        _solid.Triangles.RemoveAll(_triangles.Contains);
        return Chains.Close(edges);
    }

    private static FlatFace Grow(Solid solid, Triangle seed, Frame frame)
    {
        Dictionary<(int, int), Triangle> across = [];
        foreach (Triangle t in solid.Triangles)
        {
            if (Normal(solid, t).Dot(frame.Normal) < 0 || !IsFlat(solid, frame, t)) continue;
            foreach ((int From, int To) edge in Edges(t)) across[(edge.To, edge.From)] = t;
        }
        HashSet<Triangle> found = [seed];
        Queue<Triangle> open = new(found);
        while (open.TryDequeue(out Triangle t))
            foreach ((int From, int To) edge in Edges(t))
                if (across.TryGetValue(edge, out Triangle next) && found.Add(next)) open.Enqueue(next);
        return new FlatFace(solid, frame, found);
    }

    private static bool IsFlat(Solid solid, Frame frame, Triangle t) =>
        Math.Abs(frame.HeightOf(solid.At(t.A))) < FlatMm && Math.Abs(frame.HeightOf(solid.At(t.B))) < FlatMm &&
        Math.Abs(frame.HeightOf(solid.At(t.C))) < FlatMm;

    private static Vec3 Normal(Solid solid, Triangle t) =>
        (solid.At(t.B) - solid.At(t.A)).Cross(solid.At(t.C) - solid.At(t.A)).Normalized();

    private static bool Holds(Solid solid, Triangle t, Vec3 normal, Vec3 p) => Edges(t).All(e =>
        (solid.At(e.To) - solid.At(e.From)).Cross(p - solid.At(e.From)).Dot(normal) >= -InsideSlack);

    private static (int From, int To)[] Edges(Triangle t) => [(t.A, t.B), (t.B, t.C), (t.C, t.A)];
}
