using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>
/// Merges all vertices in a cell of a grid into one, placed where the planes of the triangles around them meet best
/// (Lindstrom, "Out-of-core simplification of large polygonal models", 2000).
/// </summary>
internal static class GridMerge
{
    private const int FinestCells = 1024;
    private const int CoarsestCells = 2;

    /// <summary>On the finest grid that leaves at most <paramref name="mostTriangles"/>, or the coarsest there is.</summary>
    public static Mesh Below(Mesh mesh, int mostTriangles)
    {
        int coarse = CoarsestCells, fine = FinestCells;
        while (fine - coarse > 1)
        {
            int middle = (coarse + fine) / 2;
            if (CountAfter(mesh, CellGrid.Over(mesh, middle)) <= mostTriangles) coarse = middle;
            else fine = middle;
        }
        return Merge(mesh, CellGrid.Over(mesh, coarse));
    }

    public static Mesh Merge(Mesh mesh, CellGrid grid)
    {
        var quadrics = new Quadric[grid.Cells];
        var sums = new Vec3[grid.Cells];
        var counts = new int[grid.Cells];
        ReadOnlySpan<int> corners = mesh.Corners;
        var kept = new List<int>();
        Vec3 origin = mesh.TriangleCount == 0 ? default : mesh.Bounds.Center;
        for (int i = 0; i < corners.Length; i += 3)
        {
            (Vec3 p, Vec3 q, Vec3 r) = mesh.Triangle(i / 3);
            Vec3 normal = (q - p).Cross(r - p);
            for (int k = 0; k < 3; k++)
            {
                int cell = grid.CellOf[corners[i + k]];
                Vec3 corner = mesh.Vertices[corners[i + k]] - origin;
                quadrics[cell].AddPlane(corner, normal, normal.Length);
                sums[cell] += corner;
                counts[cell]++;
            }
            int a = grid.CellOf[corners[i]], b = grid.CellOf[corners[i + 1]], c = grid.CellOf[corners[i + 2]];
            if (a != b && b != c && c != a) kept.AddRange([a, b, c]);
        }
        var vertices = new Vec3[grid.Cells];
        for (int i = 0; i < vertices.Length; i++)
        {
            if (counts[i] > 0) vertices[i] = origin + Place(quadrics[i], sums[i] / counts[i], grid.CellEdgeMm);
        }
        return Compact(vertices, kept);
    }

    /// <summary>Leaves out vertices that no triangle uses.</summary>
    public static Mesh Compact(Vec3[] vertices, List<int> corners)
    {
        var index = new int[vertices.Length];
        var used = new List<Vec3>();
        var renamed = new int[corners.Count];
        for (int i = 0; i < renamed.Length; i++)
        {
            int v = corners[i];
            if (index[v] == 0)
            {
                used.Add(vertices[v]);
                index[v] = used.Count;
            }
            renamed[i] = index[v] - 1;
        }
        return new Mesh([.. used], renamed);
    }

    /// <summary>At most one cell's edge from the mean, since planes may meet far away.</summary>
    private static Vec3 Place(Quadric planes, Vec3 mean, double cellEdgeMm)
    {
        if (cellEdgeMm == 0) return mean;
        Vec3 best = planes.Best(mean);
        return (best - mean).Length <= cellEdgeMm ? best : mean;
    }

    private static int CountAfter(Mesh mesh, CellGrid grid)
    {
        int count = 0;
        ReadOnlySpan<int> corners = mesh.Corners;
        for (int i = 0; i < corners.Length; i += 3)
        {
            int a = grid.CellOf[corners[i]], b = grid.CellOf[corners[i + 1]], c = grid.CellOf[corners[i + 2]];
            if (a != b && b != c && c != a) count++;
        }
        return count;
    }
}
