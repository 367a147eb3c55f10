using Platewright.Build.Estimates;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Build.Layers;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Estimates;

/// <summary>Layers timed from a sample: what is stated of their error holds.</summary>
public sealed class SamplingTests
{
    private const int Phases = 16;

    private static readonly Recipe Recipe = Builds.Recipe with { Support = true };

    /// <summary>Bodies whose sections change in every layer, slowly, at once, or in few.</summary>
    private static Mesh[] Bodies() =>
    [
        Solids.Gear(11, 0.5),
        Solids.Torus(12, 5),
        Solids.Ball(9),
        Cuts.Turned(40, (3, 0), (9, 6), (4, 12), (11, 18), (2, 26)),
        SharedMeshes.Joined(Cuts.Turned(60, (14, 0), (14, 3)), Cuts.Turned(30, (4, 3), (2, 20))),
        SharedMeshes.Joined(
            [.. Enumerable.Range(0, 6).Select(i => Solids.Block(new(7 * i, 0, 0), new(7 * i + 5, 9, 3 + 3 * i)))]),
        SharedMeshes.Joined(
            Solids.Block(default, new(30, 20, 2)), Solids.Block(new(0, 0, 2), new(3, 20, 14)),
            Solids.Block(new(0, 0, 14), new(24, 20, 15.5))),
    ];

    [Fact]
    public void Run_Sampled_ErrsByMoreThanStatedInAtMostOneOfAHundred()
    {
        int trials = 0, missed = 0, planned = 0, layers = 0;
        foreach (Mesh body in Bodies())
        {
            // Sizes a little apart put the layers elsewhere in the body.
            foreach (double scale in new[] { 1, 1.007 })
            {
                PartPaths paths = Builds.Paths(body, Recipe, scale);
                double exact = Builds.Run(paths).Total.TotalS;
                for (int i = 0; i < Phases; i++)
                {
                    LayerTimes sampled = Builds.Run(paths, full: false, phase: (i + 0.5) / Phases);
                    trials++;
                    layers += paths.LayerCount;
                    planned += sampled.Planned.Count;
                    if (Math.Abs(sampled.Total.TotalS - exact) > sampled.ErrorS + 1e-9 * exact) missed++;
                    Assert.InRange(sampled.ErrorS, 0, 0.05 * exact);
                }
            }
        }
        TestContext.Current.TestOutputHelper!.WriteLine($"{missed} of {trials} missed, {planned} of {layers} planned");
        Assert.True(missed <= trials / 100, $"{missed} of {trials} err by more than is stated");
        Assert.True(planned < layers, "everything was planned: nothing was sampled");
    }

    [Fact]
    public void Run_Full_HasNoErrorAndPlansEveryLayerThatDiffers()
    {
        LayerTimes full = Builds.Run(Builds.Paths(Solids.Gear(7, 0.3), Recipe));
        Assert.Equal(0, full.ErrorS);
        Assert.Equal(full.Layers.Length, full.Planned.Count);
        LayerTimes cube = Builds.Run(Builds.Paths(Builds.Cube(10), Recipe with { SolidLayers = 0 }));
        // The first, and two: lines run two ways in turn.
        Assert.Equal(3, cube.Planned.Count);
    }

    [Fact]
    public void Run_Again_GivesTheSameBits()
    {
        Mesh part = Solids.Torus(12, 5);
        LayerTimes first = Builds.Run(Builds.Paths(part, Recipe), full: false);
        LayerTimes[] again = new LayerTimes[4];
        Parallel.For(0, again.Length, i => again[i] = Builds.Run(Builds.Paths(part, Recipe), full: false));
        Assert.All(again, a => Assert.Equal(first.Layers, a.Layers));
        Assert.All(again, a => Assert.Equal(first.ErrorS, a.ErrorS));
        Assert.All(again, a => Assert.Equal(first.Planned, a.Planned));
    }
}
