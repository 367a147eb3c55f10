using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>
/// Thins a mesh for viewing by merging all vertices in a cell of a grid into one, placed where the planes of the triangles
/// around them meet best (vertex clustering with error quadrics, after Lindstrom, "Out-of-core simplification of large
/// polygonal models", 2000). Flat faces and sharp edges stay; small features vanish. Never used for a verdict.
/// </summary>
internal static class MeshThinner
{
    private const int FinestCells = 1024;
    private const int CoarsestCells = 2;

    /// <summary>At most <paramref name="mostTriangles"/> triangles, unless even the coarsest grid leaves more.</summary>
    public static Mesh Thin(Mesh mesh, int mostTriangles)
    {
        Mesh finite = WithoutInfinities(mesh);
        if (finite.TriangleCount <= mostTriangles) return Merge(finite, CellGrid.Exact(finite));
        int coarse = CoarsestCells, fine = FinestCells;
        while (fine - coarse > 1)
        {
            int middle = (coarse + fine) / 2;
            if (CountAfter(finite, CellGrid.Over(finite, middle)) <= mostTriangles) coarse = middle;
            else fine = middle;
        }
        return Merge(finite, CellGrid.Over(finite, coarse));
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

    private static Mesh Merge(Mesh mesh, CellGrid grid)
    {
        var quadrics = new CellQuadric[grid.Cells];
        ReadOnlySpan<int> corners = mesh.Corners;
        var kept = new List<int>();
        for (int i = 0; i < corners.Length; i += 3)
        {
            (Vec3 p, Vec3 q, Vec3 r) = mesh.Triangle(i / 3);
            int a = grid.CellOf[corners[i]], b = grid.CellOf[corners[i + 1]], c = grid.CellOf[corners[i + 2]];
            Vec3 normal = (q - p).Cross(r - p);
            quadrics[a].Add(p, normal);
            quadrics[b].Add(q, normal);
            quadrics[c].Add(r, normal);
            if (a != b && b != c && c != a) kept.AddRange([a, b, c]);
        }
        var vertices = new Vec3[grid.Cells];
        for (int i = 0; i < vertices.Length; i++) vertices[i] = quadrics[i].Place(grid.CellEdgeMm);
        return Compact(vertices, kept);
    }

    /// <summary>Leaves out vertices that no triangle uses any more.</summary>
    private static Mesh Compact(Vec3[] vertices, List<int> corners)
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

    private static Mesh WithoutInfinities(Mesh mesh)
    {
        var corners = new List<int>(mesh.Corners.Length);
        for (int i = 0; i < mesh.TriangleCount; i++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
            if (a.IsFinite && b.IsFinite && c.IsFinite) corners.AddRange(mesh.Corners.Slice(3 * i, 3));
        }
        return corners.Count == mesh.Corners.Length ? mesh : new Mesh(mesh.Vertices.ToArray(), [.. corners]);
    }
}
