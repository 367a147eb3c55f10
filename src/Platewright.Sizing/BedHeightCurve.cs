using System.Collections.Immutable;
using Platewright.Fit;

namespace Platewright.Sizing;

/// <summary>
/// Curves of square beds and heights: a machine holds the work where its bed and height are at least those of one
/// point. Points are Pareto-best: the bed grows, the height falls. An empty curve holds nowhere.
/// </summary>
public static class BedHeightCurve
{
    /// <summary>Only the points that no other point is at least as good as, narrowest bed first.</summary>
    public static ImmutableArray<BedAndHeight> Best(IEnumerable<BedAndHeight> points)
    {
        ImmutableArray<BedAndHeight>.Builder best = ImmutableArray.CreateBuilder<BedAndHeight>();
        foreach (BedAndHeight point in points.OrderBy(p => p.BedMm).ThenBy(p => p.HeightMm))
        {
            if (best.Count == 0 || point.HeightMm < best[^1].HeightMm) best.Add(point);
        }
        return best.ToImmutable();
    }

    /// <summary>Where at least one of the curves holds: the envelope of alternatives.</summary>
    public static ImmutableArray<BedAndHeight> Either(IEnumerable<ImmutableArray<BedAndHeight>> curves) =>
        Best(curves.SelectMany(c => c));

    /// <summary>Where all the curves hold: what parts that are only useful together need.</summary>
    public static ImmutableArray<BedAndHeight> All(IReadOnlyList<ImmutableArray<BedAndHeight>> curves)
    {
        double[] beds = [.. curves.SelectMany(c => c).Select(p => p.BedMm).Distinct()];
        return Best(beds
            .Select(bed => new BedAndHeight(bed, curves.Max(c => HeightAt(c, bed))))
            .Where(p => double.IsFinite(p.HeightMm)));
    }

    /// <summary>Least height on a bed of that width, mm; infinite where the bed is too narrow for any height.</summary>
    public static double HeightAt(ImmutableArray<BedAndHeight> curve, double bedMm)
    {
        double height = double.PositiveInfinity;
        foreach (BedAndHeight point in curve)
        {
            if (point.BedMm <= bedMm) height = Math.Min(height, point.HeightMm);
        }
        return height;
    }
}
