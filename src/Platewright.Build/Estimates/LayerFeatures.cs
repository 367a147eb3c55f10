using System.Collections.Immutable;
using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Build.Paths;

namespace Platewright.Build.Estimates;

/// <summary>
/// What is known exactly of every layer without planning its paths: for each kind of path a length that its time is nearly
/// proportional to.
/// </summary>
internal sealed class LayerFeatures
{
    /// <summary>Layers with more than this share of solid face are floors and lids.</summary>
    private const double FlatShare = 0.5;

    private readonly PerKind[] _lengths;

    private LayerFeatures(PerKind[] lengths, bool[] flat, double overhangAreaMm2, ImmutableArray<string> findings)
    {
        _lengths = lengths;
        Flat = flat;
        OverhangAreaMm2 = overhangAreaMm2;
        Findings = findings;
    }

    /// <summary>True for floors and lids.</summary>
    public bool[] Flat { get; }

    public double OverhangAreaMm2 { get; }

    public ImmutableArray<string> Findings { get; }

    public double Length(int layer, PathKind kind) => _lengths[layer][kind];

    public static LayerFeatures Of(BuildLayers layers)
    {
        int count = layers.Part.Layers.Length;
        var lengths = new PerKind[count];
        var flat = new bool[count];
        double hanging = 0;
        for (int l = 0; l < count; l++)
        {
            Section section = layers.Part.Sections[l];
            int d = layers.Directions.Solid(l);
            Rows whole = layers.Cores.Section(l, d);
            double all = whole.LengthMm, core = layers.Cores.Core(l, d).LengthMm;
            if (l > 0) hanging += RowSets.Subtract(layers.Cores.Section(l, 0), layers.Cores.Section(l - 1, 0)).AreaMm2;
            PerKind length = default;
            length[PathKind.Wall] = section.OutlineMm;
            length[PathKind.SolidFace] = all - core;
            length[PathKind.Infill] = core;
            if (!layers.Support.IsEmpty) length[PathKind.Support] = layers.Support[l].LengthMm;
            length[PathKind.Travel] = section.OutlineMm + Math.Sqrt(Math.Max(0, section.AreaMm2));
            lengths[l] = length;
            flat[l] = all - core > FlatShare * all;
        }
        return new LayerFeatures(lengths, flat, hanging, FindingsOf(layers.Part));
    }

    private static ImmutableArray<string> FindingsOf(LayeredPart part)
    {
        List<string> findings = [];
        int overlapping = part.Sections.Count(s => s.Overlapping), open = part.Sections.Count(s => s.ClosedGaps > 0);
        if (overlapping > 0)
            findings.Add($"shells overlap in {overlapping} of {part.Layers.Length} layers; they were united.");
        if (open > 0)
            findings.Add($"the surface is open in {open} of {part.Layers.Length} layers; outlines were closed straight across.");
        return [.. findings];
    }
}
