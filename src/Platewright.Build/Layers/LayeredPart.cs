using System.Collections.Immutable;
using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>A part in a pose, cut into layers. Sections are in the axes of <see cref="LayerFrame"/>.</summary>
/// <param name="Layers">Lowest first.</param>
/// <param name="Sections">One for each layer.</param>
public sealed record LayeredPart(ImmutableArray<Layer> Layers, ImmutableArray<Section> Sections)
{
    /// <summary>Layers cut at a time by one thread.</summary>
    private const int Batch = 8;

    /// <summary>Volume of all sections, mm³.</summary>
    public double VolumeMm3 => Layers.Zip(Sections, (l, s) => l.HeightMm * s.AreaMm2).Sum();

    /// <summary>Cuts a welded mesh.</summary>
    /// <param name="welded">The mesh; its lowest point is put at height 0.</param>
    /// <param name="topology">Of that mesh.</param>
    /// <param name="linear">Turns and scales it into its pose.</param>
    /// <param name="layerHeightMm">Height of a layer, mm.</param>
    /// <param name="pitchMm">Distance of the rows, mm.</param>
    /// <param name="cancel">Stops the work.</param>
    public static LayeredPart Cut(
        Mesh welded, MeshTopology topology, Matrix3 linear, double layerHeightMm, double pitchMm, CancellationToken cancel)
    {
        var vertices = new Vec3[welded.Vertices.Length];
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (int i = 0; i < vertices.Length; i++)
        {
            Vec3 p = linear.Apply(welded.Vertices[i]);
            low = Math.Min(low, p.Z);
            high = Math.Max(high, p.Z);
            vertices[i] = LayerFrame.FromMachine(p);
        }
        ImmutableArray<Layer> layers = LayerHeights.Of(high - low, layerHeightMm);
        SectionSweep sweep = new(vertices, welded.Corners, topology.Mates, [.. layers.Select(l => low + l.MiddleMm)]);
        var sections = new Section[layers.Length];
        Parallel.For(
            0, (layers.Length + Batch - 1) / Batch, new ParallelOptions { CancellationToken = cancel },
            () => new SectionCutter(sweep, pitchMm),
            (batch, _, cutter) =>
            {
                int end = Math.Min(layers.Length, (batch + 1) * Batch);
                for (int l = batch * Batch; l < end; l++) sections[l] = cutter.Cut(l);
                return cutter;
            },
            _ => { });
        return new LayeredPart(layers, [.. sections]);
    }
}
