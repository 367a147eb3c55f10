using Platewright.Fit.Search;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Fit;

/// <summary>
/// Does a part fit a machine, in which pose, how large at most, and what proves it: as drawn → upright → turned → tilted →
/// verdict. The exact statement is s (1 + σ) P + t ⊂ C ⊖ m. A part that rests on the surface has its brim around the contact;
/// a tilted one stands on support, which stands under all of it, so its brim surrounds the whole shadow.
/// </summary>
public static class FitSolver
{
    // Where the bracket straddles 100 %, the search is repeated with this gap.
    private const double RazorGap = 1e-8;

    /// <summary>Solves one part on one machine.</summary>
    /// <exception cref="ArgumentException">The machine's margins leave no room.</exception>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static FitResult Solve(
        PreparedPart part, Machine machine, Allowance allowance, FitOptions options, CancellationToken stop)
    {
        UsableVolume volume = UsableVolume.Of(machine);
        double brim = part.Shape.BrimMm;
        var resting = new Placing(part, volume, brim);
        WayOfFitting asDrawn = resting.AsDrawn();
        WayOfFitting upright = Better(resting.Upright(), asDrawn);
        WayOfFitting turned = resting.Turned();
        WayOfFitting known = Better(turned, upright);

        UsableVolume? underSupport = brim > 0 ? UsableVolume.ForSupported(machine, brim) : volume;
        if (underSupport is null)
            return Judge(new Ways(asDrawn, upright, turned, known, known.LargestScale), resting);
        var supported = new Placing(part, underSupport, 0);
        double gap = known.Fits ? options.SettledTolerance ?? options.Tolerance : options.Tolerance;
        (WayOfFitting tilted, double upper) = Tilt(part, underSupport, supported, known, gap, options, stop);
        bool straddles = tilted.LargestScale < 1 - Tolerances.UnitScale && upper >= 1;
        if (straddles && !supported.IsObstructed && gap > RazorGap)
            (tilted, upper) = Tilt(part, underSupport, supported, tilted, RazorGap, options, stop);
        return Judge(new Ways(asDrawn, upright, turned, tilted, upper), tilted == known ? resting : supported);

        FitResult Judge(Ways ways, Placing tiltedPlacing) =>
            VerdictRules.Judge(part, volume, resting, tiltedPlacing, ways, allowance, options, stop);
    }

    /// <summary>The largest scale of a part that stands at a rotation and may be turned about the vertical.</summary>
    /// <param name="part">The part.</param>
    /// <param name="machine">The machine.</param>
    /// <param name="standing">How it stands; its turn about the vertical does not matter.</param>
    /// <exception cref="ArgumentException">The machine's margins leave no room.</exception>
    public static WayOfFitting Standing(PreparedPart part, Machine machine, Rotation standing) =>
        new Placing(part, UsableVolume.Of(machine), part.Shape.BrimMm).Standing(standing);

    private static (WayOfFitting Way, double UpperBound) Tilt(
        PreparedPart part, UsableVolume volume, Placing placing, WayOfFitting known, double gap, FitOptions options,
        CancellationToken stop)
    {
        SearchResult found = FreeSearch.Run(part, volume.Container, [known.Pose.Rotation], gap, options.MostCells, null, stop);
        // Keep-outs, which the search does not see, may favour another of its optima, or a pose beside one.
        WayOfFitting way = Better(
            known, placing.IsObstructed ? Nudging.Best(placing, found.Tried) : placing.At(found.Rotation));
        return (way, Math.Max(Math.Min(found.UpperBound / part.Growth, Placing.MostScale), way.LargestScale));
    }

    private static WayOfFitting Better(WayOfFitting a, WayOfFitting b) => b.LargestScale > a.LargestScale ? b : a;
}

/// <summary>The four freedoms of one part on one machine.</summary>
internal sealed record Ways(
    WayOfFitting AsDrawn, WayOfFitting Upright, WayOfFitting Turned, WayOfFitting Tilted, double UpperBound);
