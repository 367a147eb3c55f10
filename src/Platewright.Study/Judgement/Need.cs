using Platewright.Fit;

namespace Platewright.Study.Judgement;

/// <summary>
/// What a part, a group of alternatives or a whole project needs of a machine, with what the user allows taken into account.
/// </summary>
/// <param name="TurnedMm">Smallest cube without a compromise, mm.</param>
/// <param name="TiltedMm">Smallest cube when tilting is accepted, mm; null where it is forbidden.</param>
/// <param name="ScaledMm">Smallest cube at the least scale accepted, mm; null where scaling is forbidden.</param>
/// <param name="TiltedAtLeastMm">Proved lower bound of <paramref name="TiltedMm"/>, mm.</param>
/// <param name="TurnedCurve">Pareto-best beds and heights without a compromise.</param>
/// <param name="TiltedCurve">The same with tilting; empty where it is forbidden.</param>
public sealed record Need(
    double TurnedMm, double? TiltedMm, double? ScaledMm, double? TiltedAtLeastMm,
    IReadOnlyList<BedAndHeight> TurnedCurve, IReadOnlyList<BedAndHeight> TiltedCurve)
{
    /// <summary>Smallest cube with every compromise the user accepts, mm.</summary>
    public double LeastMm => Math.Min(TurnedMm, Math.Min(TiltedMm ?? double.PositiveInfinity, ScaledMm ?? double.PositiveInfinity));

    /// <summary>One part. Where turning is forbidden its own axes count.</summary>
    /// <param name="size">What the solver found.</param>
    /// <param name="allowed">What the user lets happen to it.</param>
    /// <param name="asDrawn">The square bed and the height that hold it as drawn, mm.</param>
    public static Need Of(SizeNeed size, Allowance allowed, BedAndHeight asDrawn)
    {
        double turned = allowed.Turn ? size.CubeTurnedMm : Math.Max(asDrawn.BedMm, asDrawn.HeightMm);
        double? tilted = allowed.Tilt ? size.CubeTiltedMm : null;
        double? scaled = allowed.LeastScale < 1 ? Math.Min(turned, tilted ?? turned) * allowed.LeastScale : null;
        return new Need(
            turned, tilted, scaled, allowed.Tilt ? size.CubeTiltedAtLeastMm : null,
            allowed.Turn ? [.. size.TurnedCurve] : [asDrawn], allowed.Tilt ? [.. size.TiltedCurve] : []);
    }

    /// <summary>What holds every one of these.</summary>
    /// <param name="needs">At least one.</param>
    public static Need All(IReadOnlyList<Need> needs) => needs.Count == 1 ? needs[0] : new Need(
        needs.Max(n => n.TurnedMm),
        needs.All(n => n.TiltedMm is null) ? null : needs.Max(n => n.TiltedMm ?? n.TurnedMm),
        needs.All(n => n.ScaledMm is null) ? null : needs.Max(n => n.ScaledMm ?? n.TiltedMm ?? n.TurnedMm),
        needs.All(n => n.TiltedAtLeastMm is null) ? null : needs.Max(n => n.TiltedAtLeastMm ?? n.TurnedMm),
        NeedCurve.All([.. needs.Select(n => n.TurnedCurve)]),
        NeedCurve.All([.. needs.Select(n => n.TiltedCurve.Count > 0 ? n.TiltedCurve : n.TurnedCurve)]));

    /// <summary>What holds the most modest of these.</summary>
    /// <param name="needs">At least one.</param>
    public static Need Any(IReadOnlyList<Need> needs) => needs.Count == 1 ? needs[0] : new Need(
        needs.Min(n => n.TurnedMm), needs.Min(n => n.TiltedMm), needs.Min(n => n.ScaledMm), needs.Min(n => n.TiltedAtLeastMm),
        NeedCurve.Any([.. needs.Select(n => n.TurnedCurve)]), NeedCurve.Any([.. needs.Select(n => n.TiltedCurve)]));
}
