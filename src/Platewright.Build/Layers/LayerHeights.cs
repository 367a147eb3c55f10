using System.Collections.Immutable;

namespace Platewright.Build.Layers;

/// <summary>
/// Where the layers of a part lie. All have the recipe's height but the top one, which takes what is left: between a
/// quarter and five quarters of a layer, so that the layers fill the part's height and their volume is not rounded.
/// </summary>
public static class LayerHeights
{
    private const double LeastTopShare = 0.25;

    // Heights that are a whole number of layers but for rounding are that number.
    private const double Rounding = 1e-7;

    /// <summary>The most layers a part may have: beyond it is a slip of the unit.</summary>
    public const int MostLayers = 200_000;

    /// <summary>The layers of a part of a height, both mm; a part flatter than a layer has one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Either is not above 0, or there would be too many layers.</exception>
    public static ImmutableArray<Layer> Of(double heightMm, double layerHeightMm)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(heightMm);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(layerHeightMm);
        double whole = heightMm / layerHeightMm;
        if (whole > MostLayers)
        {
            throw new ArgumentOutOfRangeException(
                nameof(heightMm), heightMm, $"more than {MostLayers} layers of {layerHeightMm} mm.");
        }
        int count = Math.Max(1, (int)Math.Ceiling(whole - LeastTopShare - Rounding));
        var layers = ImmutableArray.CreateBuilder<Layer>(count);
        for (int i = 0; i < count - 1; i++) layers.Add(new Layer(i * layerHeightMm, layerHeightMm));
        double top = (count - 1) * layerHeightMm;
        double left = heightMm - top;
        bool regular = Math.Abs(left - layerHeightMm) < Rounding * layerHeightMm * count;
        layers.Add(new Layer(top, regular ? layerHeightMm : left));
        return layers.MoveToImmutable();
    }
}

/// <summary>One layer: its lower face and its height, mm above the part's lowest point.</summary>
public readonly record struct Layer(double BottomMm, double HeightMm)
{
    /// <summary>Where the mesh is cut for it, mm.</summary>
    public double MiddleMm => BottomMm + HeightMm / 2;
}
