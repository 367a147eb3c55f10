using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>Thins a mesh for viewing. Never used for a verdict.</summary>
internal static class MeshThinner
{
    /// <summary>Larger meshes are first merged on a grid, which is fast, and then thinned edge by edge, which is good.</summary>
    private const int MostTrianglesEdgeByEdge = 40_000;

    /// <summary>About <paramref name="mostTriangles"/> triangles at most.</summary>
    public static Mesh Thin(Mesh mesh, int mostTriangles)
    {
        Mesh finite = WithoutInfinities(mesh);
        if (finite.TriangleCount > MostTrianglesEdgeByEdge) finite = GridMerge.Below(finite, MostTrianglesEdgeByEdge);
        Mesh welded = GridMerge.Merge(finite, CellGrid.Exact(finite));
        if (welded.TriangleCount <= mostTriangles) return welded;
        Mesh thin = EdgeCollapse.Thin(welded, mostTriangles);
        return thin.TriangleCount <= mostTriangles ? thin : GridMerge.Below(thin, mostTriangles);
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
