using Platewright.Build.Motion;
using Platewright.Build.Paths;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Build.Estimates;
using Platewright.Tests.Build.Layers;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Paths;

/// <summary>What is thin takes fewer or one bead, and its material stays: length × bead area is the volume.</summary>
public sealed class ThinFeatureTests
{
    private const double Length = 40;

    /// <summary>A plate on edge, turned against all rows.</summary>
    private static Mesh Plate(double thickness, double turnedDeg = 31) =>
        Solids.Block(default, new(Length, thickness, 0.6)).Transformed(Cuts.TurnedZ(turnedDeg), default);

    private static MotionTimes Layer(Mesh mesh, Recipe recipe, int layer = 1) =>
        Beads.Of(new LayerPlanner(Builds.Layers(mesh, recipe)).Plan(layer));

    [Theory]
    [InlineData(0.15, 0)]
    [InlineData(0.3, 1)]
    [InlineData(0.5, 1)]
    [InlineData(0.8, 1)]
    [InlineData(1.0, 1)]
    [InlineData(1.4, 2)]
    [InlineData(1.8, 2)]
    [InlineData(2.2, 2)]
    [InlineData(2.6, 3)]
    [InlineData(3.0, 3)]
    [InlineData(3.4, 4)]
    [InlineData(4.0, 4)]
    public void Plan_PlateOfSoManyBeads_TakesThatManyAndKeepsItsVolume(double thickness, int beads)
    {
        double pitch = Builds.Pitch(Builds.Solid);
        foreach (double turned in new[] { 0, 7.5, 31, 90 })
        {
            MotionTimes laid = Layer(Plate(thickness * pitch, turned), Builds.Solid with { SolidLayers = 0 });
            double length = (laid.PathMm.Sum - laid.PathMm[PathKind.Travel]) / Length;
            Assert.InRange(length, beads - 0.15 * Math.Max(1, beads), beads + 0.1);
            if (beads > 0) SharedMeshes.AssertNear(Length * thickness * pitch * 0.2, laid.MaterialMm3.Sum, 0.02);
            else Assert.Equal(0, laid.MaterialMm3.Sum);
        }
    }

    [Fact]
    public void Plan_PlateOfGrowingThickness_GrowsInVolumeWithoutAJump()
    {
        double pitch = Builds.Pitch(Builds.Solid);
        for (double beads = 0.3; beads < 5; beads += 0.1)
        {
            MotionTimes laid = Layer(Plate(beads * pitch), Builds.Solid with { SolidLayers = 0 });
            double ratio = laid.MaterialMm3.Sum / (Length * beads * pitch * 0.2);
            Assert.True(Math.Abs(ratio - 1) < 0.01, $"{beads:f1} beads keep {ratio:p2} of their volume");
        }
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.9)]
    [InlineData(1.3)]
    [InlineData(1.9)]
    [InlineData(2.4)]
    [InlineData(3)]
    public void Plan_RingOfSoManyBeads_KeepsItsVolume(double beads)
    {
        double pitch = Builds.Pitch(Builds.Solid), thickness = beads * pitch;
        Mesh ring = SharedMeshes.Joined(
            Cuts.Turned(120, (10, 0), (10, 0.6)),
            Solids.InsideOut(Cuts.Turned(120, (10 - thickness, 0), (10 - thickness, 0.6))));
        MotionTimes laid = Layer(ring, Builds.Solid with { SolidLayers = 0 });
        double area = Cuts.PolygonArea(120, 10) - Cuts.PolygonArea(120, 10 - thickness);
        SharedMeshes.AssertNear(area * 0.2, laid.MaterialMm3.Sum, 0.02);
    }

    [Fact]
    public void Plan_TaperedWedge_KeepsItsVolumeButForItsTip()
    {
        // From nothing to four beads over 60 mm: what is thinner than a quarter of a bead cannot be laid down.
        double wide = 4 * Builds.Pitch(Builds.Solid);
        Mesh wedge = Cuts.Prism(0.6, new(0, 0), new(60, 0), new(60, wide));
        MotionTimes laid = Layer(wedge, Builds.Solid with { SolidLayers = 0 });
        double area = 30 * wide;
        SharedMeshes.AssertNear(area * 0.2, laid.MaterialMm3.Sum, 0.03);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(40)]
    [InlineData(60)]
    public void Plan_AcuteCorner_KeepsItsVolume(double degrees)
    {
        (double s, double c) = Math.SinCos(degrees * Math.PI / 180);
        Mesh corner = Cuts.Prism(0.6, new(0, 0), new(30, 0), new(30 * c, 30 * s));
        MotionTimes laid = Layer(corner, Builds.Solid with { SolidLayers = 0 });
        double area = 450 * s;
        SharedMeshes.AssertNear(area * 0.2, laid.MaterialMm3.Sum, 0.02);
    }
}
