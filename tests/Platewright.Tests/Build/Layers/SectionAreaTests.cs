using Platewright.Build.Layers;
using Platewright.Geometry;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Layers;

/// <summary>Sections of shapes whose areas are known by formula.</summary>
public sealed class SectionAreaTests
{
    private const double Exact = 1e-9;

    [Fact]
    public void Cut_Cube_HasItsSquareInEveryLayer()
    {
        LayeredPart part = Cuts.Of(Solids.Block(new(3, -4, 7), new(23, 16, 27)));
        Assert.Equal(100, part.Layers.Length);
        Assert.All(part.Sections, s => SharedMeshes.AssertNear(400, s.AreaMm2, Exact));
        Assert.All(part.Sections, s => SharedMeshes.AssertNear(80, s.OutlineMm, Exact));
        Assert.All(part.Sections, s => Assert.Equal(1, s.Islands));
        Assert.All(part.Sections, s => Assert.False(s.Overlapping || s.ClosedGaps > 0));
        // Rows sample y only: the midpoint rule over slanted edges.
        Assert.All(part.Sections, s => SharedMeshes.AssertNear(400, s.Solid.AreaMm2, 1e-4));
    }

    [Fact]
    public void Cut_Cylinder_HasItsPolygonInEveryLayer()
    {
        LayeredPart part = Cuts.Of(Cuts.Turned(96, (12, 0), (12, 10)));
        Assert.All(part.Sections, s => SharedMeshes.AssertNear(Cuts.PolygonArea(96, 12), s.AreaMm2, Exact));
    }

    [Fact]
    public void Cut_Cone_HasSectionsThatShrinkWithTheSquareOfHeight()
    {
        LayeredPart part = Cuts.Of(Cuts.Turned(60, (15, 0), (0, 30)));
        for (int l = 0; l < part.Layers.Length; l++)
        {
            double radius = 15 * (1 - part.Layers[l].MiddleMm / 30);
            SharedMeshes.AssertNear(Cuts.PolygonArea(60, radius), part.Sections[l].AreaMm2, Exact);
        }
    }

    [Fact]
    public void Cut_Sphere_HasTheAreasOfItsCircles()
    {
        LayeredPart part = Cuts.Of(Solids.Ball(10, 360, 720));
        for (int l = 0; l < part.Layers.Length; l++)
        {
            double z = part.Layers[l].MiddleMm - 10;
            // 360 sides lie inside the circle by 5e-5 of its area, the rings by as little.
            Assert.Equal(Math.PI * (100 - z * z), part.Sections[l].AreaMm2, 1e-4 * Math.PI * 100);
        }
        SharedMeshes.AssertNear(4.0 / 3 * Math.PI * 1000, part.VolumeMm3, 3e-4);
    }

    [Fact]
    public void Cut_StepsWhoseFacesLieInTheCuttingPlanes_BelongToOneSideThroughout()
    {
        // Treads at 0.1, 0.3, … lie exactly in the middle of layers of 0.2: which side they belong to must not depend
        // on the triangle. Vertices in the plane count as above it, so a cut sees the wider part below.
        Mesh steps = SharedMeshes.Joined(
            Solids.Block(new(0, 0, 0), new(20, 20, 0.5)), Solids.Block(new(40, 0, 0.5), new(50, 20, 1)));
        LayeredPart part = Cuts.Of(steps);
        Assert.Equal([400, 400, 400, 200, 200], part.Sections.Select(s => Math.Round(s.AreaMm2, 6)));
        Assert.All(part.Sections, s => Assert.Equal(0, s.ClosedGaps));
    }

    [Fact]
    public void Cut_HeightThatIsNoMultiple_KeepsTheVolume()
    {
        foreach (double height in new[] { 0.05, 0.29, 3.333, 7.77, 10.04, 10.06 })
        {
            LayeredPart part = Cuts.Of(Solids.Block(new(0, 0, 0), new(20, 10, height)));
            SharedMeshes.AssertNear(200 * height, part.VolumeMm3, Exact);
        }
    }

    [Fact]
    public void Cut_TurnedAboutZ_HasTheSameAreas()
    {
        Mesh gear = Solids.Gear(17, 0.4);
        LayeredPart asDrawn = Cuts.Of(gear);
        foreach (double degrees in new[] { 7.5, 15, 45, 90, 123.4 })
        {
            LayeredPart turned = Cuts.Of(gear, linear: Cuts.TurnedZ(degrees));
            for (int l = 0; l < asDrawn.Layers.Length; l++)
            {
                SharedMeshes.AssertNear(asDrawn.Sections[l].AreaMm2, turned.Sections[l].AreaMm2, Exact);
                SharedMeshes.AssertNear(asDrawn.Sections[l].OutlineMm, turned.Sections[l].OutlineMm, Exact);
            }
        }
    }
}
