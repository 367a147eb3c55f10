using System.Collections.Immutable;
using Platewright.Build.Layers;
using Platewright.Machines;

namespace Platewright.Build.Paths;

/// <summary>
/// Where a part needs support. A layer may reach beyond the one below by layer height × tan(overhang angle); where it reaches
/// farther, all of it beyond the layer below hangs. What hangs is supported down to the part below it or to the build surface.
/// There is no gap between part and support, and bridges are supported like any overhang.
/// </summary>
internal static class SupportRegions
{
    /// <summary>The support in each layer, as rows of the layer's axes.</summary>
    public static ImmutableArray<Rows> Of(LayeredPart part, Recipe recipe, double pitchMm, CancellationToken cancel)
    {
        int count = part.Layers.Length;
        var cuts = new Rows[count];
        var hanging = new Rows[count];
        ParallelOptions options = new() { CancellationToken = cancel };
        Parallel.For(0, count, options, () => new RowScan(), (l, _, scan) =>
        {
            cuts[l] = scan.Scan(part.Sections[l].Loops, pitchMm);
            return scan;
        }, _ => { });
        double slope = Math.Tan(recipe.OverhangAngleDeg * Math.PI / 180);
        Parallel.For(1, count, options, () => new RowOffset(), (l, _, offset) =>
        {
            double reach = slope * (part.Layers[l].MiddleMm - part.Layers[l - 1].MiddleMm);
            hanging[l] = Hanging(cuts[l], cuts[l - 1], part.Sections[l - 1], reach, offset);
            return offset;
        }, _ => { });
        var support = new Rows[count];
        support[count - 1] = Rows.Empty(pitchMm);
        for (int l = count - 2; l >= 0; l--)
            support[l] = RowSets.Subtract(RowSets.Unite(support[l + 1], hanging[l + 1]), cuts[l]);
        return [.. support];
    }

    private static Rows Hanging(Rows cut, Rows below, Section sectionBelow, double reach, RowOffset offset)
    {
        Rows beyond = RowSets.Subtract(cut, below);
        if (beyond.IsEmpty || reach <= 0) return beyond;
        Rows unheld = RowSets.Subtract(beyond, offset.Grow(below, sectionBelow.Loops, reach));
        return RowSets.KeepTouched(beyond, unheld);
    }
}
