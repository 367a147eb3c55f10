using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;

namespace Platewright.Study.Describing;

/// <summary>A fit as the documents show it.</summary>
internal static class FitDescription
{
    public static PartFitDocument Of(string machine, JudgedFit judged, PartEstimateDocument? estimate, decimal? cost)
    {
        FitResult fit = judged.Fit;
        return new PartFitDocument(
            machine, fit.Verdict.Code(), fit.Verdict.CountsAs(), fit.Tight, judged.CanMake, fit.Proved, fit.Pieces, judged.Reasons,
            Of(fit.AsDrawn) with { Rotation = null }, Of(fit.Upright), Of(fit.Turned),
            Of(fit.Tilted, fit.UpperBound), fit.ClearanceMm,
            new PoseDocument(fit.Pose.Scale, Numbers(fit.Pose.Rotation), MachineDescription.Numbers(fit.Pose.Translation)),
            estimate)
        {
            Cost = cost,
        };
    }

    public static FitRowDocument RowOf(string file, string? part, string machine, JudgedFit judged, double seconds)
    {
        FitResult fit = judged.Fit;
        return new FitRowDocument(
            file, part, machine, fit.Verdict.Code(), fit.Tight, judged.CanMake, judged.Reasons,
            new TranslatedDocument(fit.AsDrawn.Fits, fit.AsDrawn.LargestScale), RotatedOf(fit.Upright), RotatedOf(fit.Turned),
            new TiltedDocument(fit.Tilted.Fits, fit.Tilted.LargestScale, fit.UpperBound, Numbers(fit.Tilted.Pose.Rotation)),
            fit.ClearanceMm, seconds);
    }

    private static WayDocument Of(WayOfFitting way, double? upperBound = null) =>
        new(
            way.Fits, way.LargestScale, upperBound, Numbers(way.Pose.Rotation), MachineDescription.Numbers(way.Pose.Translation));

    private static RotatedDocument RotatedOf(WayOfFitting way) => new(way.Fits, way.LargestScale, Numbers(way.Pose.Rotation));

    private static IReadOnlyList<double> Numbers(Rotation r) => [r.W, r.X, r.Y, r.Z];
}
