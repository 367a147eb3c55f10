using System.Collections.Immutable;
using Platewright.Machines;

namespace Platewright.Sizing;

/// <summary>What a whole project needs: the most of its parts, and of alternatives the least.</summary>
public static class ProjectNeed
{
    /// <summary>
    /// The need; null where the project is not complete. Each number is the smallest that suffices by itself:
    /// alternatives may give the size by one and the heat by another, so what is decided by several numbers together is
    /// counted by
    /// <see cref="CoverageCurve"/>, part by part.
    /// </summary>
    public static PartNeed? Of(SizedProject project)
    {
        if (!project.Complete || project.Parts.IsEmpty) return null;
        return All([.. project.Groups.Select(g => Either([.. g.Select(p => p.Need)]))]);
    }

    private static PartNeed Either(ImmutableArray<PartNeed> needs) => needs.Length == 1 ? needs[0] : new PartNeed(
        needs.Min(n => n.CubeTurnedMm),
        needs.Any(n => n.CubeTiltedMm is not null) ? needs.Min(n => n.CubeUnscaledMm) : null,
        needs.Any(n => n.CubeScaledMm is not null) ? needs.Min(n => n.CubeAcceptedMm) : null,
        needs.Any(n => n.CubeTiltedMm is not null) ? needs.Min(AtLeast) : null,
        needs.Min(n => n.LeastScale),
        BedHeightCurve.Either(needs.Select(n => n.TurnedCurve)),
        BedHeightCurve.Either(needs.Select(n => n.TiltedCurve)),
        needs.Any(n => n.Heat is null) ? null : Combined([.. needs.Select(n => n.Heat!)], Enumerable.Min),
        needs.Any(n => n.ThinnestWallMm is null) ? null : needs.Max(n => n.ThinnestWallMm));

    private static PartNeed All(ImmutableArray<PartNeed> needs) => needs.Length == 1 ? needs[0] : new PartNeed(
        needs.Max(n => n.CubeTurnedMm),
        needs.Any(n => n.CubeTiltedMm is not null) ? needs.Max(n => n.CubeUnscaledMm) : null,
        needs.Any(n => n.CubeScaledMm is not null) ? needs.Max(n => n.CubeAcceptedMm) : null,
        needs.Any(n => n.CubeTiltedMm is not null) ? needs.Max(AtLeast) : null,
        needs.Max(n => n.LeastScale),
        BedHeightCurve.All([.. needs.Select(n => n.TurnedCurve)]),
        BedHeightCurve.All([.. needs.Select(n => n.TiltedCurve)]),
        Combined([.. needs.Select(n => n.Heat).OfType<HeatLimits>()], Enumerable.Max),
        needs.Min(n => n.ThinnestWallMm));

    /// <summary>
    /// No smaller cube holds it at full size: proved where tilting is allowed, exact where only turning is.
    /// </summary>
    private static double AtLeast(PartNeed need) => need.CubeTiltedAtLeastMm ?? need.CubeTurnedMm;

    private static HeatLimits? Combined(ImmutableArray<HeatLimits> heats, Func<IEnumerable<double>, double> pick) =>
        heats.IsEmpty ? null : new HeatLimits(
            pick(heats.Select(h => h.NozzleC)),
            pick(heats.Select(h => h.BedC)),
            pick(heats.Select(h => h.ChamberC)));
}
