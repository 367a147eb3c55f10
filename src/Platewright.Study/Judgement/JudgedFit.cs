using Platewright.Fit;
using Platewright.Machines;

namespace Platewright.Study.Judgement;

/// <summary>A fit with everything else that decides whether the part can be made.</summary>
/// <param name="CanMake">It fits somehow and nothing stands in the way.</param>
/// <param name="Reasons">The fit's sentence, what scaling does, then each obstacle.</param>
public sealed record JudgedFit(FitResult Fit, bool CanMake, IReadOnlyList<string> Reasons)
{
    /// <inheritdoc cref="Obstacles.Of"/>
    public static JudgedFit Of(FitResult fit, Machine machine, Material? material, double? thinnestWallMm, double beadWidthMm)
    {
        IReadOnlyList<string> obstacles = Obstacles.Of(fit, machine, material, thinnestWallMm, beadWidthMm);
        List<string> reasons = [fit.Reason];
        if (fit.Verdict == Verdict.Scaled) reasons.Add(ScaleConsequence.At(fit.Pose.Scale));
        reasons.AddRange(obstacles);
        return new JudgedFit(fit, fit.Verdict != Verdict.No && obstacles.Count == 0, reasons);
    }
}
