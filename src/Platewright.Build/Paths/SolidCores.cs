using System.Collections.Immutable;
using Platewright.Build.Layers;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>
/// For each layer and each direction of filling the part's section as lines a bead's pitch apart, and what of it has
/// material in every layer near it above and below: the core. The rest of a section is a solid face.
/// </summary>
internal sealed class SolidCores
{
    private readonly Rows[][] _sections;
    private readonly Rows[][] _cores;

    private SolidCores(Rows[][] sections, Rows[][] cores) => (_sections, _cores) = (sections, cores);

    /// <summary>The section of a layer along a direction.</summary>
    public Rows Section(int layer, int direction) => _sections[direction][layer];

    /// <summary>Its core; the section itself where no faces are wanted.</summary>
    public Rows Core(int layer, int direction) => _cores[direction][layer];

    /// <param name="sections">Of all layers.</param>
    /// <param name="along">Unit directions.</param>
    /// <param name="pitchMm">Distance of the lines, mm.</param>
    /// <param name="solidLayers">How many layers near a face are solid; 0 for none.</param>
    /// <param name="cancel">Stops the work.</param>
    public static SolidCores Of(
        ImmutableArray<Section> sections, Vec2[] along, double pitchMm, int solidLayers, CancellationToken cancel)
    {
        ParallelOptions options = new() { CancellationToken = cancel };
        var rows = new Rows[along.Length][];
        var cores = new Rows[along.Length][];
        for (int d = 0; d < along.Length; d++)
        {
            Vec2 direction = along[d];
            Rows[] cuts = rows[d] = new Rows[sections.Length];
            Parallel.For(0, sections.Length, options, () => new RowScan(), (l, _, scan) =>
            {
                cuts[l] = scan.Scan(sections[l].Loops, pitchMm, direction);
                return scan;
            }, _ => { });
            if (solidLayers == 0)
            {
                cores[d] = cuts;
                continue;
            }
            cores[d] = Common(cuts, solidLayers, options);
        }
        return new SolidCores(rows, cores);
    }

    /// <summary>
    /// What each layer has in common with all as many as <paramref name="reach"/> below and above it; nothing near the
    /// ends. Runs of 2, 4, 8, … layers each come from two of half as many; two that overlap make up the whole.
    /// </summary>
    private static Rows[] Common(Rows[] cuts, int reach, ParallelOptions options)
    {
        int window = 2 * reach + 1, run = 1;
        Rows[] upward = cuts;
        for (; 2 * run <= window; run *= 2) upward = Pairs(upward, run, options);
        var common = new Rows[cuts.Length];
        Parallel.For(0, cuts.Length, options, l =>
        {
            bool within = l >= reach && l + reach < cuts.Length;
            common[l] = within
                ? RowSets.Intersect(upward[l - reach], upward[l + reach + 1 - run])
                : Rows.Empty(cuts[l].PitchMm);
        });
        return common;
    }

    /// <summary>Each run of layers with the one that begins where it ends, where there is one.</summary>
    private static Rows[] Pairs(Rows[] runs, int run, ParallelOptions options)
    {
        var pairs = new Rows[Math.Max(0, runs.Length - run)];
        Parallel.For(0, pairs.Length, options, l => pairs[l] = RowSets.Intersect(runs[l], runs[l + run]));
        return pairs;
    }
}
