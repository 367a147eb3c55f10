namespace Platewright.Geometry;

/// <summary>Places of triangles and edges.</summary>
internal static class MeshPlaces
{
    /// <summary>The middle of a triangle.</summary>
    public static FindingPlace Middle(Mesh mesh, int triangle)
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(triangle);
        return FindingPlace.At((a + b + c) / 3);
    }

    /// <summary>The longest edge of a triangle, which is all that is seen of one without area.</summary>
    public static FindingPlace LongestEdge(Mesh mesh, int triangle)
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(triangle);
        FindingPlace[] edges = [new(a, b), new(b, c), new(c, a)];
        return edges.MaxBy(e => (e.To - e.From).Length);
    }

    /// <summary>From where to where a half-edge runs.</summary>
    public static FindingPlace Edge(Mesh mesh, int half) =>
        new(mesh.Vertices[mesh.Corners[half]], mesh.Vertices[mesh.Corners[Next(half)]]);

    /// <summary>The half-edge after this one around its triangle.</summary>
    public static int Next(int half) => half % 3 == 2 ? half - 2 : half + 1;

    /// <summary>Each edge with this mark, once.</summary>
    public static IEnumerable<FindingPlace> MarkedEdges(Mesh mesh, MeshTopology topology, int mark)
    {
        HashSet<(int, int)> seen = [];
        for (int half = 0; half < topology.Mates.Length; half++)
        {
            if (topology.Mates[half] != mark) continue;
            int from = mesh.Corners[half], to = mesh.Corners[Next(half)];
            if (seen.Add((Math.Min(from, to), Math.Max(from, to)))) yield return Edge(mesh, half);
        }
    }
}
