namespace Platewright.Geometry;

/// <summary>
/// Takes the loose shells of a mesh apart. Shells whose convex hulls meet stay together, and so do those that lie
/// within the hull of such a group: so nothing that interlocks, sits in another or touches is ever split. What lies in
/// the hollow of another part stays with it, which is the safe side.
/// </summary>
public static class ShellSeparation
{
    /// <summary>With more shells than this only their boxes are compared.</summary>
    private const int MostHulls = 4000;

    /// <summary>The groups as meshes of their own with distinct vertices, in order of their first triangle. Triangles
    /// without sides, which belong to no shell, are left out.</summary>
    public static IReadOnlyList<Mesh> Separate(Mesh mesh)
    {
        Mesh welded = Welding.Weld(mesh);
        MeshTopology topology = MeshTopology.Of(welded);
        return [.. Group(welded, topology).Select(shells => Part(welded, topology, shells))];
    }

    /// <summary>Shell numbers that belong together, each group and the groups in ascending order.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Group(Mesh welded, MeshTopology topology)
    {
        List<ShellGroup> groups = [];
        ShellFacts[] shells = ShellFacts.Of(welded, topology);
        for (int s = 0; s < shells.Length; s++)
            groups.Add(ShellGroup.Of(welded, s, shells[s], shells.Length <= MostHulls));
        while (MergeOnce(groups)) { }
        return [.. groups.Select(g => g.Shells.Order().ToArray()).OrderBy(g => g[0])];
    }

    /// <summary>Joins groups that meet, sweeping along x; false where none did.</summary>
    private static bool MergeOnce(List<ShellGroup> groups)
    {
        int[] order = [.. Enumerable.Range(0, groups.Count).OrderBy(g => groups[g].Box.Min.X)];
        int[] parent = [.. Enumerable.Range(0, groups.Count)];
        bool merged = false;
        for (int i = 0; i < order.Length; i++)
        {
            ShellGroup own = groups[order[i]];
            for (int j = i + 1; j < order.Length && groups[order[j]].Box.Min.X <= own.Box.Max.X; j++)
            {
                int p = Root(parent, order[i]), q = Root(parent, order[j]);
                if (p == q || !own.Meets(groups[order[j]])) continue;
                parent[Math.Max(p, q)] = Math.Min(p, q);
                merged = true;
            }
        }
        if (!merged) return false;
        ShellGroup[] joined = [.. Enumerable.Range(0, groups.Count).GroupBy(g => Root(parent, g))
            .Select(g => ShellGroup.Joined([.. g.Select(k => groups[k])]))];
        groups.Clear();
        groups.AddRange(joined);
        return true;
    }

    private static int Root(int[] parent, int g)
    {
        while (parent[g] != g) g = parent[g] = parent[parent[g]];
        return g;
    }

    private static Mesh Part(Mesh welded, MeshTopology topology, IReadOnlyList<int> shells)
    {
        HashSet<int> own = [.. shells];
        List<int> corners = [];
        for (int t = 0; t < welded.TriangleCount; t++)
            if (own.Contains(topology.Shells[t])) corners.AddRange(welded.Corners.Slice(3 * t, 3));
        return Welding.Weld(new Mesh(welded.VertexArray, [.. corners]));
    }
}
