namespace Platewright.Geometry;

/// <summary>The openings of a mesh: open edges that hang together by their vertices are one.</summary>
internal static class OpenRims
{
    /// <summary>The open half-edges of each opening, the longest rim first.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Of(Mesh mesh, MeshTopology topology)
    {
        Dictionary<int, int> parent = [];
        List<int> open = [];
        for (int half = 0; half < topology.Mates.Length; half++)
        {
            if (topology.Mates[half] != MeshTopology.OpenEdge) continue;
            open.Add(half);
            int from = mesh.Corners[half], to = mesh.Corners[MeshPlaces.Next(half)];
            parent.TryAdd(from, from);
            parent.TryAdd(to, to);
            parent[Root(parent, from)] = Root(parent, to);
        }
        return
        [
            .. open.GroupBy(half => Root(parent, mesh.Corners[half]))
                .OrderByDescending(rim => rim.Sum(half => Length(mesh, half))).Select(rim => rim.ToArray()),
        ];
    }

    /// <summary>The longest edge of each opening, then edges spread over all rims.</summary>
    public static IEnumerable<FindingPlace> PlacesOf(Mesh mesh, IReadOnlyList<IReadOnlyList<int>> rims)
    {
        int[] longest = [.. rims.Take(Finding.MostPlaces).Select(rim => rim.MaxBy(half => Length(mesh, half)))];
        int[] others = [.. rims.SelectMany(rim => rim).Except(longest)];
        int step = Math.Max(1, others.Length / Finding.MostPlaces);
        return longest.Concat(others.Where((_, i) => i % step == 0)).Select(half => MeshPlaces.Edge(mesh, half));
    }

    private static double Length(Mesh mesh, int half)
    {
        FindingPlace edge = MeshPlaces.Edge(mesh, half);
        return (edge.To - edge.From).Length;
    }

    private static int Root(Dictionary<int, int> parent, int v)
    {
        while (parent[v] != v) v = parent[v] = parent[parent[v]];
        return v;
    }
}
