namespace Platewright.Geometry;

/// <summary>
/// Fewer triangles for looking at a part; never for measuring it. Meshes far above the limit are first clustered on a
/// grid, then edges are collapsed where that changes the shape least (Garland and Heckbert 1997).
/// </summary>
public static class MeshSimplification
{
    /// <summary>Collapsing begins from at most this many times the wanted triangles …</summary>
    private const int CollapseFactor = 6;

    /// <summary>… or from this many, whichever is more.</summary>
    private const int CollapseAlways = 60_000;

    /// <summary>
    /// The mesh with at most <paramref name="mostTriangles"/> triangles, none of them without area; the same mesh
    /// always gives the same result. A mesh that is small enough is only welded and rid of triangles that use a vertex
    /// twice.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Less than one triangle is wanted.</exception>
    public static Mesh Reduce(Mesh mesh, int mostTriangles)
    {
        if (mostTriangles < 1)
        {
            throw new ArgumentOutOfRangeException(
                nameof(mostTriangles), mostTriangles, "At least one triangle must be left.");
        }
        Mesh reduced = WithoutCollapsed(Welding.Weld(FiniteTriangles.Of(mesh, out _)));
        if (reduced.TriangleCount <= mostTriangles) return reduced;
        int start = Math.Max(CollapseAlways, (int)Math.Min(int.MaxValue, (long)CollapseFactor * mostTriangles));
        if (reduced.TriangleCount > start) reduced = GridClustering.Reduce(reduced, start);
        reduced = WithoutCollapsed(Welding.Weld(EdgeCollapse.Reduce(reduced, mostTriangles)));
        return reduced.TriangleCount <= mostTriangles ? reduced : GridClustering.Reduce(reduced, mostTriangles);
    }

    internal static Mesh WithoutCollapsed(Mesh mesh)
    {
        List<int> kept = new(mesh.Corners.Length);
        for (int i = 0; i < mesh.Corners.Length; i += 3)
        {
            ReadOnlySpan<int> c = mesh.Corners.Slice(i, 3);
            if (c[0] != c[1] && c[1] != c[2] && c[2] != c[0]) kept.AddRange(c);
        }
        return kept.Count == mesh.Corners.Length ? mesh : Welding.Weld(new Mesh(mesh.VertexArray, [.. kept]));
    }
}
