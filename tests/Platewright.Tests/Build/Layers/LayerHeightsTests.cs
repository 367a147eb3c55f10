using System.Collections.Immutable;
using Platewright.Build.Layers;

namespace Platewright.Tests.Build.Layers;

public sealed class LayerHeightsTests
{
    [Theory]
    [InlineData(20, 0.2, 100, 0.2)]
    [InlineData(100, 0.2, 500, 0.2)]
    [InlineData(0.6, 0.2, 3, 0.2)]
    [InlineData(20.1, 0.2, 101, 0.1)]
    [InlineData(20.04, 0.2, 100, 0.24)]
    [InlineData(20.06, 0.2, 101, 0.06)]
    [InlineData(0.03, 0.2, 1, 0.03)]
    public void Of_Height_HasSoManyLayersAndThisTop(double height, double layer, int count, double top)
    {
        ImmutableArray<Layer> layers = LayerHeights.Of(height, layer);
        Assert.Equal(count, layers.Length);
        Assert.Equal(top, layers[^1].HeightMm, 9);
        Assert.All(layers.SkipLast(1), l => Assert.Equal(layer, l.HeightMm));
    }

    [Fact]
    public void Of_AnyHeight_FillsItAndTopIsAQuarterToFiveQuarters()
    {
        for (int i = 1; i <= 20_000; i++)
        {
            double height = 0.0137 * i;
            ImmutableArray<Layer> layers = LayerHeights.Of(height, 0.2);
            Assert.Equal(height, layers.Sum(l => l.HeightMm), 1e-9);
            if (layers.Length > 1) Assert.InRange(layers[^1].HeightMm / 0.2, 0.25 - 1e-6, 1.25 + 1e-6);
        }
    }

    [Theory]
    [InlineData(0, 0.2)]
    [InlineData(-1, 0.2)]
    [InlineData(10, 0)]
    [InlineData(1e9, 0.2)]
    [InlineData(double.NaN, 0.2)]
    [InlineData(double.PositiveInfinity, 0.2)]
    public void Of_WhatNoPartIs_NamesTheValue(double height, double layer) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LayerHeights.Of(height, layer));
}
