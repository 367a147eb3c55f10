using Platewright.Fit.Planar;
using Platewright.Fit.Search;
using Platewright.Geometry;

namespace Platewright.Fit;

/// <summary>
/// A part with what every machine needs of it: support vertices by direction, its stands, its least width. Built once for
/// a part; not for use by several threads at once.
/// </summary>
public sealed class PreparedPart
{
    // The least width is found to this relative gap, within this many cells.
    private const double WidthGap = 1e-9;
    private const int WidthCells = 60_000;
    private Shadow? _asDrawn;
    private List<Shadow>? _stands;
    private (double AtLeast, Rotation Rotation)? _leastWidth;

    /// <summary>Prepares <paramref name="shape"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Shrinkage outside 0 … 0.1, or a negative brim.</exception>
    public PreparedPart(PartShape shape)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(shape.BrimMm, nameof(shape));
        if (shape.Shrinkage is < 0 or > 0.1)
            throw new ArgumentOutOfRangeException(nameof(shape), shape.Shrinkage, "Shrinkage must be 0 … 0.1.");
        Shape = shape;
        Grid = new SupportGrid(shape.Hull.Vertices);
    }

    public PartShape Shape { get; }

    /// <summary>Built size over drawn size: 1 + shrinkage.</summary>
    internal double Growth => 1 + Shape.Shrinkage;

    internal SupportGrid Grid { get; }

    internal Shadow AsDrawn => _asDrawn ??= new Shadow(Grid, Rotation.Identity);

    /// <summary>Every way of resting on a face of the hull, lowest first.</summary>
    internal IReadOnlyList<Shadow> Stands => _stands ??= FindStands();

    /// <summary>A proved lower bound of the part's least width, mm, and the rotation that lays it along z.</summary>
    internal (double AtLeast, Rotation Rotation) LeastWidth(CancellationToken stop)
    {
        if (_leastWidth is null)
        {
            SearchResult slab = FindLeastWidth(null, stop);
            _leastWidth = (1 / slab.UpperBound, slab.Rotation);
        }
        return _leastWidth.Value;
    }

    internal SearchResult FindLeastWidth(ICellListener? listener, CancellationToken stop) =>
        new RotationSearch(Grid, new SlabContainer(1), listener, stop).Run([], WidthGap, WidthCells);

    private List<Shadow> FindStands()
    {
        var stands = new List<Shadow>();
        ConvexHull hull = Shape.Hull;
        foreach (HullFace face in hull.Faces) stands.Add(new Shadow(Grid, Rotation.Between(face.Normal, -Vec3.UnitZ)));
        if (hull.Dimension == 1)
            stands.Add(new Shadow(Grid, Rotation.Between(hull.Vertices[1] - hull.Vertices[0], Vec3.UnitX)));
        if (hull.Dimension == 0) stands.Add(new Shadow(Grid, Rotation.Identity));
        return [.. stands.OrderBy(s => s.HeightMm)];
    }
}
