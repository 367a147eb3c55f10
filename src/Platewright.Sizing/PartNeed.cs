using System.Collections.Immutable;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Sizing;

/// <summary>What a part, or a project, needs of a machine with a cube-shaped volume.</summary>
/// <param name="CubeTurnedMm">Smallest cube without a compromise, mm.</param>
/// <param name="CubeTiltedMm">Smallest cube when tilting is accepted too, mm; null where it is forbidden.</param>
/// <param name="CubeScaledMm">Smallest cube at the least scale accepted, mm; null where scaling is forbidden.</param>
/// <param name="CubeTiltedAtLeastMm">
/// Proved: no smaller cube holds it unscaled; null where tilting is forbidden.
/// </param>
/// <param name="LeastScale">Smallest scale accepted, 0 … 1; 1 where scaling is forbidden.</param>
/// <param name="TurnedCurve">Beds and heights without a compromise.</param>
/// <param name="TiltedCurve">Beds and heights when tilting is accepted too; the former where it is forbidden.</param>
/// <param name="Heat">Temperatures needed; null where no material is named.</param>
/// <param name="ThinnestWallMm">As drawn, mm; null where it is not known.</param>
/// <param name="BrimMm">Brim around the contact with the build surface, mm; it does not scale with the part.</param>
public sealed record PartNeed(
    double CubeTurnedMm, double? CubeTiltedMm, double? CubeScaledMm, double? CubeTiltedAtLeastMm, double LeastScale,
    ImmutableArray<BedAndHeight> TurnedCurve, ImmutableArray<BedAndHeight> TiltedCurve,
    HeatLimits? Heat, double? ThinnestWallMm, double BrimMm = 0)
{
    /// <summary>Smallest cube at full size, tilted where that is accepted, mm.</summary>
    public double CubeUnscaledMm => Math.Min(CubeTurnedMm, CubeTiltedMm ?? double.PositiveInfinity);

    /// <summary>Smallest cube with any compromise that is accepted, mm.</summary>
    public double CubeAcceptedMm => Math.Min(CubeUnscaledMm, CubeScaledMm ?? double.PositiveInfinity);

    /// <summary>
    /// A cube that holds the part at a scale, mm, in the pose of the smallest one at full size. Let that be c: the body
    /// needs s·c; the contact, at most c − 2·brim wide, needs s·(c − 2·brim) + 2·brim, which is never less.
    /// </summary>
    /// <param name="scale">Greater than 0, at most 1.</param>
    public double CubeAtScaleMm(double scale) => CubeAtScaleMm(CubeUnscaledMm, scale, BrimMm);

    /// <summary>A part's need, within what its user allows.</summary>
    /// <param name="size">The smallest volumes found for it.</param>
    /// <param name="drawnMm">Its size as drawn, mm: that is what it needs where turning is forbidden.</param>
    /// <param name="allowed">What may happen to it.</param>
    /// <param name="heat">Temperatures its material needs; null where none is named.</param>
    /// <param name="thinnestWallMm">As drawn, mm; null where it is not known.</param>
    /// <param name="brimMm">Brim that <paramref name="size"/> was found with, mm.</param>
    public static PartNeed Of(
        SizeNeed size, Vec3 drawnMm, Allowance allowed, HeatLimits? heat, double? thinnestWallMm,
        double brimMm = 0)
    {
        double bed = Math.Max(drawnMm.X, drawnMm.Y);
        double turned = allowed.Turn ? size.CubeTurnedMm : Math.Max(bed, drawnMm.Z);
        ImmutableArray<BedAndHeight> turnedCurve = allowed.Turn ? size.TurnedCurve : [new(bed, drawnMm.Z)];
        double? tilted = allowed.Tilt ? Math.Min(turned, size.CubeTiltedMm) : null;
        return new PartNeed(
            turned,
            tilted,
            allowed.LeastScale < 1 ? CubeAtScaleMm(tilted ?? turned, allowed.LeastScale, brimMm) : null,
            allowed.Tilt ? size.CubeTiltedAtLeastMm : null,
            allowed.LeastScale,
            turnedCurve,
            allowed.Tilt ? BedHeightCurve.Either([turnedCurve, size.TiltedCurve]) : turnedCurve,
            heat,
            thinnestWallMm,
            brimMm);
    }

    private static double CubeAtScaleMm(double cubeMm, double scale, double brimMm) =>
        scale * cubeMm + (1 - scale) * 2 * brimMm;
}
