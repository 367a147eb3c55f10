namespace Platewright.Geometry;

/// <summary>Numbers the edge-connected components of a mesh (union-find, the lower number wins).</summary>
internal static class ShellLabels
{
    public static int[] Of(Mesh welded, EdgeMatching edges, out int count)
    {
        int[] parent = new int[welded.TriangleCount];
        for (int t = 0; t < parent.Length; t++) parent[t] = t;
        int[] mates = edges.Mates;
        for (int t = 0, half = 0; t < parent.Length; t++)
        {
            for (int e = 0; e < 3; e++, half++)
                if (mates[half] > half) Join(parent, t, mates[half] / 3);
        }
        foreach ((int a, int b) in edges.Links) Join(parent, a, b);
        count = 0;
        // A root is the lowest of its shell, so it is numbered before the others look it up.
        for (int t = 0; t < parent.Length; t++)
        {
            if (mates[3 * t] == MeshTopology.NoEdge) parent[t] = -1;
            else parent[t] = parent[t] == t ? count++ : parent[parent[t]];
        }
        return parent;
    }

    private static void Join(int[] parent, int a, int b)
    {
        a = Root(parent, a);
        b = Root(parent, b);
        if (a < b) parent[b] = a;
        else parent[a] = b;
    }

    private static int Root(int[] parent, int t)
    {
        while (parent[t] != t) t = parent[t] = parent[parent[t]];
        return t;
    }
}
