using Platewright.Fit.Search;
using Platewright.Machines;

namespace Platewright.Fit;

/// <summary>
/// Does a part fit a machine, in which pose, how large at most, and what proves it: as drawn → upright → turned → tilted →
/// verdict. The exact statement is s (1 + σ) P + t ⊂ C ⊖ m, with the brim only around the contact at z = 0.
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
        var placing = new Placing(part, volume);
        WayOfFitting asDrawn = placing.AsDrawn();
        WayOfFitting upright = Better(placing.Upright(), asDrawn);
        WayOfFitting turned = placing.Turned();
        WayOfFitting resting = Better(turned, upright);
        (WayOfFitting tilted, double upper) = Tilt(part, volume, placing, resting, options, stop);
        var ways = new Ways(asDrawn, upright, turned, tilted, upper);
        return VerdictRules.Judge(part, volume, placing, ways, allowance, options, stop);
    }

    private static (WayOfFitting Way, double UpperBound) Tilt(
        PreparedPart part, UsableVolume volume, Placing placing, WayOfFitting resting, FitOptions options, CancellationToken stop)
    {
        double gap = resting.Fits ? options.SettledTolerance ?? options.Tolerance : options.Tolerance;
        (WayOfFitting way, double upper) = Tilt(part, volume, placing, resting, options, gap, stop);
        bool straddles = way.LargestScale < 1 - Tolerances.UnitScale && upper >= 1;
        return straddles && !placing.IsObstructed && options.Tolerance > RazorGap
            ? Tilt(part, volume, placing, way, options, RazorGap, stop)
            : (way, upper);
    }

    private static (WayOfFitting Way, double UpperBound) Tilt(
        PreparedPart part, UsableVolume volume, Placing placing, WayOfFitting known, FitOptions options, double gap,
        CancellationToken stop)
    {
        SearchResult found = FreeSearch.Run(part, volume.Container, [known.Pose.Rotation], gap, options.MostCells, null, stop);
        // Brim and keep-outs, which the search does not see, may favour another of its optima, or a pose beside one.
        WayOfFitting way = Better(known, placing.IsPlain ? placing.At(found.Rotation) : Nudging.Best(placing, found.Tried));
        return (way, Math.Max(Math.Min(found.UpperBound / part.Growth, Placing.MostScale), way.LargestScale));
    }

    private static WayOfFitting Better(WayOfFitting a, WayOfFitting b) => b.LargestScale > a.LargestScale ? b : a;
}

/// <summary>The four freedoms of one part on one machine.</summary>
internal sealed record Ways(
    WayOfFitting AsDrawn, WayOfFitting Upright, WayOfFitting Turned, WayOfFitting Tilted, double UpperBound);
