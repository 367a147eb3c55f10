using Platewright.Fit.Pieces;

namespace Platewright.Fit;

/// <summary>From the four ways of fitting and what the user allows to the verdict.</summary>
internal static class VerdictRules
{
    public static FitResult Judge(
        PreparedPart part, UsableVolume volume, Placing resting, Placing tilted, Ways ways, Allowance allowance,
        FitOptions options, CancellationToken stop)
    {
        WayOfFitting turnedBest = ways.Turned.LargestScale >= ways.Upright.LargestScale ? ways.Turned : ways.Upright;
        WayOfFitting best = allowance.Tilt ? ways.Tilted : allowance.Turn ? turnedBest : ways.AsDrawn;
        (Verdict verdict, WayOfFitting way) = true switch
        {
            _ when ways.AsDrawn.Fits => (Verdict.AsDrawn, ways.AsDrawn),
            _ when allowance.Turn && ways.Upright.Fits => (Verdict.Turned, ways.Upright),
            _ when allowance.Turn && ways.Turned.Fits => (Verdict.Turned, ways.Turned),
            _ when allowance.Tilt && ways.Tilted.Fits => (Verdict.Tilted, ways.Tilted),
            _ when best.LargestScale >= allowance.LeastScale - Tolerances.UnitScale => (Verdict.Scaled, best),
            _ => (Verdict.No, best),
        };
        PartCut? cut = verdict == Verdict.No && allowance.Cut
            ? SlabCut.Fewest(part, volume, allowance, options.MostPieces, stop)
            : null;
        if (cut is not null) verdict = Verdict.InPieces;
        Placing placing = ReferenceEquals(way, ways.Tilted) ? tilted : resting;
        double clearance = placing.ClearanceMm(way);
        bool fits = verdict is Verdict.AsDrawn or Verdict.Turned or Verdict.Tilted;
        var result = new FitResult
        {
            Verdict = verdict,
            Tight = fits && clearance < options.TightMm,
            AsDrawn = ways.AsDrawn,
            Upright = ways.Upright,
            Turned = ways.Turned,
            Tilted = ways.Tilted,
            UpperBound = ways.UpperBound,
            Proved = IsProved(placing, ways, verdict, allowance),
            ClearanceMm = clearance,
            Pieces = cut?.Poses.Length ?? 1,
            Cut = cut,
            Pose = placing.PoseAt(way, Math.Min(1, way.LargestScale)),
            Reason = "",
        };
        return result with { Reason = FitReason.Say(part, volume, way, result) };
    }

    // A pose proves that a part fits. That it does not is proved by the bound where tilting is allowed, and by the exact
    // answers for less freedom, as long as no keep-out was only searched around.
    private static bool IsProved(Placing placing, Ways ways, Verdict verdict, Allowance allowance)
    {
        if (verdict is Verdict.AsDrawn) return true;
        if (verdict is Verdict.Turned or Verdict.Tilted) return !placing.IsObstructed || verdict == Verdict.Turned;
        if (allowance.Tilt) return ways.UpperBound < 1;
        return !placing.IsObstructed;
    }
}
