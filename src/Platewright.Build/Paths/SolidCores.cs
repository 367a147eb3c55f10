using System.Collections.Immutable;
using Platewright.Build.Layers;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>
/// For each layer and each direction of filling the part's section as lines a bead's pitch apart, and what of it has material in
/// every layer near it above and below: the core. The rest of a section is a solid face.
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
            Rows[] inner = cores[d] = new Rows[sections.Length];
            Parallel.For(0, sections.Length, options, l => inner[l] = Core(cuts, l, solidLayers));
        }
        return new SolidCores(rows, cores);
    }

    private static Rows Core(Rows[] cuts, int layer, int reach)
    {
        if (layer < reach || layer + reach >= cuts.Length) return Rows.Empty(cuts[layer].PitchMm);
        Rows core = cuts[layer];
        for (int k = 1; k <= reach && !core.IsEmpty; k++)
            core = RowSets.Intersect(RowSets.Intersect(core, cuts[layer - k]), cuts[layer + k]);
        return core;
    }
}
