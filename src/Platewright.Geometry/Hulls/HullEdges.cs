namespace Platewright.Geometry;

/// <summary>An edge of a hull between the vertices From and To, with the face on either side.</summary>
internal readonly record struct HullEdge(int From, int To, int Left, int Right);

/// <summary>The edges of a solid hull and the neighbours of each vertex.</summary>
internal sealed class HullEdges
{
    private readonly int[] _begin;
    private readonly int[] _neighbours;

    private HullEdges(HullEdge[] edges, int vertices)
    {
        Edges = edges;
        _begin = new int[vertices + 1];
        foreach (HullEdge e in edges)
        {
            _begin[e.From + 1]++;
            _begin[e.To + 1]++;
        }
        for (int v = 0; v < vertices; v++) _begin[v + 1] += _begin[v];
        _neighbours = new int[2 * edges.Length];
        int[] place = _begin[..^1];
        foreach (HullEdge e in edges)
        {
            _neighbours[place[e.From]++] = e.To;
            _neighbours[place[e.To]++] = e.From;
        }
    }

    public HullEdge[] Edges { get; }

    public ReadOnlySpan<int> Around(int vertex) => _neighbours.AsSpan(_begin[vertex].._begin[vertex + 1]);

    public static HullEdges Of(ConvexHull hull)
    {
        Dictionary<(int, int), int> left = [];
        for (int f = 0; f < hull.Faces.Count; f++)
        {
            IReadOnlyList<int> corners = hull.Faces[f].Corners;
            for (int i = 0; i < corners.Count; i++) left[(corners[i], corners[(i + 1) % corners.Count])] = f;
        }
        List<HullEdge> edges = [];
        for (int f = 0; f < hull.Faces.Count; f++)
        {
            IReadOnlyList<int> corners = hull.Faces[f].Corners;
            for (int i = 0; i < corners.Count; i++)
            {
                int from = corners[i], to = corners[(i + 1) % corners.Count];
                if (from < to && left.TryGetValue((to, from), out int right))
                    edges.Add(new HullEdge(from, to, f, right));
            }
        }
        return new HullEdges([.. edges], hull.Vertices.Length);
    }
}
