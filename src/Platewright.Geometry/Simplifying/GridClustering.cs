namespace Platewright.Geometry;

/// <summary>Makes all vertices in one cell of a grid into one (Rossignac and Borrel 1993): coarse, fast, always
/// ends.</summary>
internal static class GridClustering
{
    private const int FinestCells = 1 << 12;

    /// <summary>The finest grid, to within a few per cent, that leaves at most so many triangles.</summary>
    public static Mesh Reduce(Mesh mesh, int mostTriangles)
    {
        int low = 0, high = FinestCells;
        Mesh best = new([], []);
        while (low + Math.Max(1, low / 32) < high)
        {
            int cells = (low + high) / 2;
            Mesh tried = Clustered(mesh, cells);
            if (tried.TriangleCount <= mostTriangles) (low, best) = (cells, tried);
            else high = cells;
        }
        return best;
    }

    private static Mesh Clustered(Mesh mesh, int cells)
    {
        Vec3 size = mesh.Bounds.Size, min = mesh.Bounds.Min;
        double edge = Math.Max(size.X, Math.Max(size.Y, size.Z)) / cells;
        Dictionary<(int, int, int), int> cluster = [];
        int[] place = new int[mesh.Vertices.Length];
        List<Vec3> sums = [];
        List<int> counts = [];
        for (int v = 0; v < place.Length; v++)
        {
            Vec3 at = edge > 0 ? (mesh.Vertices[v] - min) / edge : default;
            var key = ((int)at.X, (int)at.Y, (int)at.Z);
            if (!cluster.TryGetValue(key, out place[v]))
            {
                cluster.Add(key, place[v] = sums.Count);
                sums.Add(default);
                counts.Add(0);
            }
            sums[place[v]] += mesh.Vertices[v];
            counts[place[v]]++;
        }
        Vec3[] vertices = [.. sums.Select((s, i) => s / counts[i])];
        HashSet<(int, int, int)> seen = [];
        List<int> corners = [];
        for (int i = 0; i < mesh.Corners.Length; i += 3)
        {
            int a = place[mesh.Corners[i]], b = place[mesh.Corners[i + 1]], c = place[mesh.Corners[i + 2]];
            if (a == b || b == c || c == a || !seen.Add(FromSmallest(a, b, c))) continue;
            corners.AddRange([a, b, c]);
        }
        return Welding.Weld(new Mesh(vertices, [.. corners]));
    }

    private static (int, int, int) FromSmallest(int a, int b, int c) =>
        a < b && a < c ? (a, b, c) : b < c ? (b, c, a) : (c, a, b);
}
