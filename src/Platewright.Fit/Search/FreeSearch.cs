using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>The search over all rotations with its shortcut for parts limited by the container's least width.</summary>
internal static class FreeSearch
{
    /// <summary>
    /// A scale above least width of the container / least width of the part is impossible in any pose; where the
    /// incumbent reaches that, there is nothing to search.
    /// </summary>
    public static SearchResult Run(
        PreparedPart part, Container container, ReadOnlySpan<Rotation> starts, double gap, int mostCells,
        ICellListener? listener, CancellationToken stop)
    {
        (double width, Rotation flat) = part.LeastWidth(stop);
        double slabBound = width > 0 ? container.LeastWidth / width : double.PositiveInfinity;
        var search = new RotationSearch(part.Grid, container, listener, stop);
        return search.Run([.. starts, .. LaidAlongAxes(flat)], gap, mostCells, slabBound);
    }

    // The part's least width along z, x and y, each at two turns: where a slab-limited optimum is.
    private static Rotation[] LaidAlongAxes(Rotation flat)
    {
        Rotation toX = Rotation.About(Vec3.UnitY, Math.PI / 2), toY = Rotation.About(Vec3.UnitX, Math.PI / 2);
        Rotation spin = Rotation.About(Vec3.UnitZ, Math.PI / 4) * flat;
        return [flat, spin, toX * flat, toX * spin, toY * flat, toY * spin];
    }
}
