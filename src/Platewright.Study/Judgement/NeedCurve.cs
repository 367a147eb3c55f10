using Platewright.Fit;

namespace Platewright.Study.Judgement;

/// <summary>
/// Staircases of beds and heights: a machine holds the part when some step has a bed and a height no larger than the machine's. Steps
/// go from the narrowest bed to the widest, heights fall.
/// </summary>
internal static class NeedCurve
{
    /// <summary>Where all of the curves are met.</summary>
    public static IReadOnlyList<BedAndHeight> All(IReadOnlyList<IReadOnlyList<BedAndHeight>> curves) =>
        Over(curves, bed => curves.Max(c => HeightAt(c, bed)));

    /// <summary>Where at least one of the curves is met.</summary>
    public static IReadOnlyList<BedAndHeight> Any(IReadOnlyList<IReadOnlyList<BedAndHeight>> curves) =>
        Over(curves, bed => curves.Min(c => HeightAt(c, bed)));

    private static List<BedAndHeight> Over(
        IReadOnlyList<IReadOnlyList<BedAndHeight>> curves, Func<double, double> heightAt)
    {
        List<BedAndHeight> steps = [];
        double last = double.PositiveInfinity;
        foreach (double bed in curves.SelectMany(c => c.Select(s => s.BedMm)).Distinct().Order())
        {
            double height = heightAt(bed);
            if (height >= last) continue;
            steps.Add(new BedAndHeight(bed, height));
            last = height;
        }
        return steps;
    }

    // The least height that a bed of this size needs; infinite where the bed is too small at any height.
    private static double HeightAt(IReadOnlyList<BedAndHeight> curve, double bed)
    {
        double least = double.PositiveInfinity;
        foreach (BedAndHeight step in curve)
        {
            if (step.BedMm <= bed) least = Math.Min(least, step.HeightMm);
        }
        return least;
    }
}
