using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Build.Estimates;
using Platewright.Tests.Build.Layers;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Paths;

/// <summary>Volumes of supports against formulas: what hangs is held up from the build surface.</summary>
public sealed class SupportVolumeTests
{
    private static readonly Recipe Recipe = Builds.Recipe with { Support = true };

    private static double Volume(Mesh mesh, Recipe? recipe = null) =>
        Builds.Paths(mesh, recipe ?? Recipe).SupportVolumeMm3;

    private static Mesh Box(double x, double z, double toX, double toZ, double depth = 20) =>
        Solids.Block(new(x, 0, z), new(toX, depth, toZ));

    [Fact]
    public void Of_Cube_IsNone() => Assert.Equal(0, Volume(Builds.Cube(20)));

    [Fact]
    public void Of_CubeInAnyPhaseOfTheLayers_IsNone()
    {
        foreach (double height in new[] { 9.93, 10.01, 10.07, 10.11 })
            Assert.Equal(0, Volume(Box(0, 0, 20, height)));
    }

    [Fact]
    public void Of_Bridge_IsTheSpaceBelow()
    {
        Mesh bridge = SharedMeshes.Joined(Box(0, 0, 10, 20), Box(30, 0, 40, 20), Box(0, 20, 40, 24));
        SharedMeshes.AssertNear(20 * 20 * 20, Volume(bridge), 0.01);
    }

    [Fact]
    public void Of_Staircase_IsTheSpaceBelowItsSteps()
    {
        Mesh stairs = SharedMeshes.Joined(
            [.. Enumerable.Range(0, 4).Select(k => Box(0, 5 * k, 10 + 5 * k, 5 * k + 5))]);
        SharedMeshes.AssertNear(20 * 5 * (5 + 10 + 15), Volume(stairs), 0.01);
    }

    [Fact]
    public void Of_Tee_IsTheSpaceBelowItsArmsAndItsMaterialAShareOfIt()
    {
        Mesh tee = SharedMeshes.Joined(Box(10, 0, 20, 8, 60), Box(0, 8, 30, 10, 60));
        SharedMeshes.AssertNear(20 * 8 * 60, Volume(tee), 0.01);
        double laid = Builds.Full(tee, Recipe with { SupportShare = 0.25 }).MaterialMm3[PathKind.Support];
        SharedMeshes.AssertNear(0.25 * 20 * 8 * 60, laid, 0.03);
    }

    [Fact]
    public void Of_ArmAboveTheFoot_StandsOnThePart()
    {
        Mesh part = SharedMeshes.Joined(Box(0, 0, 40, 4), Box(0, 4, 10, 12), Box(0, 12, 30, 14));
        SharedMeshes.AssertNear(20 * 8 * 20, Volume(part), 0.01);
    }

    [Fact]
    public void Of_ConeOnItsTip_BeginsAtTheOverhangAngle()
    {
        Assert.Equal(0, Volume(Widening(44)));
        double top = 2 + 10 * Math.Tan(46 * Math.PI / 180);
        double frustum = Cuts.PolygonArea(90, 1) * 10 * (4 + 2 * top + top * top) / 3;
        SharedMeshes.AssertNear(Cuts.PolygonArea(90, top) * 10 - frustum, Volume(Widening(46)), 0.03);

        static Mesh Widening(double degrees) =>
            Cuts.Turned(90, (2, 0), (2 + 10 * Math.Tan(degrees * Math.PI / 180), 10));
    }

    [Fact]
    public void Of_Sphere_IsTheSpaceBelowItsCapInAnyPhaseOfTheLayers()
    {
        // Below the circle of 45°: ∫ 2πr (R − √(R² − r²)) dr from 0 to R/√2, over R³.
        double exact = Math.PI / 2 - 2 * Math.PI / 3 * (1 - Math.Pow(0.5, 1.5));
        List<double> shares = [];
        for (double radius = 20; radius < 20.1; radius += 0.033)
        {
            Mesh ball = Solids.Ball(radius, 180, 180);
            shares.Add(Volume(ball, Recipe with { LayerHeightMm = 0.1 }) / Math.Pow(radius, 3));
        }
        // One layer's ring more or less is 3 % of it.
        Assert.All(shares, s => SharedMeshes.AssertNear(exact, s, 0.04));
    }

    [Fact]
    public void Plan_Supported_TakesNoMaterialFromThePart()
    {
        Mesh tee = SharedMeshes.Joined(Box(10, 0, 20, 4), Box(0, 4, 30, 6));
        MotionTimes with = Builds.Full(tee, Recipe), without = Builds.Full(tee, Builds.Recipe);
        SharedMeshes.AssertNear(
            without.MaterialMm3.Sum, with.MaterialMm3.Sum - with.MaterialMm3[PathKind.Support], 1e-9);
    }
}
