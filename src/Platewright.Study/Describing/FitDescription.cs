using System.Runtime.InteropServices;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Study.Documents;
using Platewright.Study.Judgement;
using Platewright.Study.Pipeline;

namespace Platewright.Study.Describing;

/// <summary>A fit as the documents show it.</summary>
internal static class FitDescription
{
    // A thousandth of a millimetre: finer than a machine moves.
    private const int GapDecimals = 3;

    public static PartFitDocument Of(
        Machine machine, StudyPart part, JudgedFit judged, PartEstimateDocument? estimate, decimal? cost)
    {
        FitResult fit = judged.Fit;
        return new PartFitDocument(
            machine.Id, fit.Verdict.Code(), fit.Verdict.CountsAs(), fit.Tight, judged.CanMake, fit.Proved, fit.Pieces, judged.Reasons,
            Of(fit.AsDrawn) with { Rotation = null }, Of(fit.Upright), Of(fit.Turned),
            Of(fit.Tilted, fit.UpperBound), fit.ClearanceMm,
            Of(fit.Pose), estimate)
        {
            Cost = cost,
            GapsMm = [.. GapsIn(fit, part, machine).Select(g => Math.Round(g, GapDecimals))],
            Cuts = fit.Cut is { } cut ? new CutsDocument(MachineDescription.Numbers(cut.Direction), cut.BoundsMm, [.. cut.Poses.Select(Of)]) : null,
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

    private static IReadOnlyList<double> GapsIn(FitResult fit, StudyPart part, Machine machine)
    {
        ReadOnlySpan<Vec3> corners = MemoryMarshal.Cast<byte, Vec3>(part.Hull);
        Pose shown = fit.Verdict is Verdict.No or Verdict.InPieces ? InFull(corners, fit.Pose, 1 + part.Shrinkage) : fit.Pose;
        return WallGaps.Of(corners, shown, machine);
    }

    // Grown about its middle, standing on the surface.
    private static Pose InFull(ReadOnlySpan<Vec3> corners, Pose pose, double growth)
    {
        Matrix3 turn = pose.Rotation.ToMatrix();
        Bounds3 turned = Bounds3.Empty;
        foreach (Vec3 corner in corners) turned = turned.Including(turn.Apply(corner));
        Vec3 middle = turned.Center * (pose.Scale - growth) + pose.Translation;
        return new Pose(growth, pose.Rotation, new Vec3(middle.X, middle.Y, -turned.Min.Z * growth));
    }

    private static PoseDocument Of(Pose pose) =>
        new(pose.Scale, Numbers(pose.Rotation), MachineDescription.Numbers(pose.Translation));

    private static WayDocument Of(WayOfFitting way, double? upperBound = null) =>
        new(
            way.Fits, way.LargestScale, upperBound, Numbers(way.Pose.Rotation), MachineDescription.Numbers(way.Pose.Translation));

    private static RotatedDocument RotatedOf(WayOfFitting way) => new(way.Fits, way.LargestScale, Numbers(way.Pose.Rotation));

    private static IReadOnlyList<double> Numbers(Rotation r) => [r.W, r.X, r.Y, r.Z];
}
