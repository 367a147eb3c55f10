using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>
/// The rotations to search. A chart is the cube |x|, |y|, |z| ≤ 1 of Rodrigues vectors (axis × tan of half the angle),
/// followed by one of four fixed half turns; all four charts cover every rotation, a container's symmetry needs fewer.
/// </summary>
/// <param name="Charts">The half turns: 0 none, 1 about x, 2 about y, 3 about z.</param>
/// <param name="Flat">True where only tilts matter (z component 0, x² + y² ≤ 1): the container is round.</param>
/// <param name="Cut">Which part of the cube the container's symmetry leaves.</param>
internal sealed record RotationDomain(int[] Charts, bool Flat, DomainCut Cut)
{
    /// <summary>Tilts of the vertical by up to a right angle: the container is round and has two equal ends.</summary>
    public static readonly RotationDomain Tilts = new([0], Flat: true, DomainCut.Disc);

    /// <summary>
    /// The Dirichlet cell of a box's own rotations: 4 of them, 8 with two equal edges (the cut knows only the case
    /// that they are x and y), 24 for a cube.
    /// </summary>
    public static RotationDomain OfBox(double x, double y, double z) => new(
        [0], Flat: false, x == y ? (y == z ? DomainCut.Cube : DomainCut.SquareBed) : DomainCut.None);

    /// <summary>
    /// A prism: half turns about z (polygon symmetric about its centre) and about x (polygon symmetric in y, since top
    /// and bottom are alike) each halve the charts.
    /// </summary>
    public static RotationDomain OfPrism(bool pointSymmetric, bool mirrorSymmetric) => new(
        (pointSymmetric, mirrorSymmetric) switch
        {
            (true, true) => [0],
            (true, false) => [0, 1],
            (false, true) => [0, 3],
            _ => [0, 1, 2, 3],
        },
        Flat: false, DomainCut.None);

    /// <summary>The rotation at Rodrigues vector <paramref name="r"/> of a chart.</summary>
    public static Rotation RotationAt(int chart, Vec3 r)
    {
        Rotation q = new Rotation(1, r.X, r.Y, r.Z).Normalized();
        return chart switch
        {
            1 => new Rotation(0, 1, 0, 0) * q,
            2 => new Rotation(0, 0, 1, 0) * q,
            3 => new Rotation(0, 0, 0, 1) * q,
            _ => q,
        };
    }

    /// <summary>
    /// How far, in radians, a rotation of the cell may be from the one at its centre: the quaternions (1, r) and (1, c)
    /// enclose at most asin(|r − c| / |(1, c)|). π where nothing better is known.
    /// </summary>
    public double RadiusOf(Vec3 center, double half)
    {
        double reach = Math.Sqrt((Flat ? 2 : 3) / (1 + center.Dot(center))) * half;
        return reach >= 1 ? Math.PI : 2 * Math.Asin(reach);
    }

    /// <summary>True when the whole cell lies outside the domain, so that the container's symmetry covers it.</summary>
    public bool Excludes(Vec3 center, double half)
    {
        double x = Math.Max(0, Math.Abs(center.X) - half);
        double y = Math.Max(0, Math.Abs(center.Y) - half);
        double z = Math.Max(0, Math.Abs(center.Z) - half);
        return Cut switch
        {
            DomainCut.Disc => x * x + y * y > 1 + Margin,
            DomainCut.SquareBed => z > QuarterTurn || x + y > Math.Sqrt(2) + Margin,
            DomainCut.Cube => Math.Max(x, Math.Max(y, z)) > QuarterTurn || x + y + z > 1 + Margin,
            _ => false,
        };
    }

    // tan(π/8), and what is added to every cut so that rounding never loses a rotation.
    private const double Margin = 1e-9;
    private const double QuarterTurn = 0.41421356237309515 + Margin;
}

/// <summary>Which Rodrigues vectors of the cube are needed.</summary>
internal enum DomainCut
{
    /// <summary>All.</summary>
    None,

    /// <summary>x² + y² ≤ 1 (flat domains).</summary>
    Disc,

    /// <summary>|z| ≤ tan π/8, |x ± y| ≤ √2: quarter turns about z and half turns about the diagonals.</summary>
    SquareBed,

    /// <summary>All components ≤ tan π/8 and |x| + |y| + |z| ≤ 1: the 24 rotations of a cube.</summary>
    Cube,
}
