namespace Platewright.Geometry;

/// <summary>How two parts are alike.</summary>
public enum LikenessKind
{
    /// <summary>Different shapes.</summary>
    None,

    /// <summary>One shape at one size, perhaps turned.</summary>
    Same,

    /// <summary>One shape at another size, perhaps turned.</summary>
    Scaled,

    /// <summary>One is the mirror image of the other and no turn makes them the same; perhaps at another
    /// size.</summary>
    Mirrored,
}

/// <summary>What came of comparing two parts.</summary>
/// <param name="Kind">How they are alike.</param>
/// <param name="Scale">Size of the second over that of the first; 1 where they are not alike.</param>
public readonly record struct Likeness(LikenessKind Kind, double Scale)
{
    /// <summary>Sizes closer than this are one size.</summary>
    private const double SizeTolerance = 1e-3;

    /// <summary>Numbers that do not turn with the part may differ by this share between two exports of one
    /// shape.</summary>
    private const double InvariantTolerance = 4e-3;

    /// <summary>Summed difference of the histograms of one shape: mostly the unevenness of the samples.</summary>
    private const double HistogramTolerance = 0.15;

    private static readonly Likeness Different = new(LikenessKind.None, 1);

    /// <summary>Compares two parts. Near-duplicates count as alike: this serves to point them out, not to prove them
    /// equal.</summary>
    public static Likeness Compare(ShapeSignature a, ShapeSignature b)
    {
        if (!MayBeAlike(a, b)) return Different;
        Match match = Alignment.Best(a, b);
        if (match == Match.None) return Different;
        double scale = Math.Sqrt(b.AreaMm2 / a.AreaMm2);
        if (Math.Abs(scale - 1) <= SizeTolerance) scale = 1;
        if (match == Match.Mirrored) return new Likeness(LikenessKind.Mirrored, scale);
        return new Likeness(scale == 1 ? LikenessKind.Same : LikenessKind.Scaled, scale);
    }

    private static bool MayBeAlike(ShapeSignature a, ShapeSignature b)
    {
        if (!Near(a.VolumeShare, b.VolumeShare) || !Near(a.HullVolumeShare, b.HullVolumeShare)) return false;
        if (!Near(a.HullAreaShare, b.HullAreaShare)) return false;
        if ((a.Spread - b.Spread).Length > InvariantTolerance * a.Spread.Length) return false;
        double apart = 0;
        for (int i = 0; i < a.Histogram.Count; i++) apart += Math.Abs(a.Histogram[i] - b.Histogram[i]);
        return apart <= HistogramTolerance;
    }

    private static bool Near(double x, double y) => Math.Abs(x - y) <= InvariantTolerance * Math.Max(x, y);
}
