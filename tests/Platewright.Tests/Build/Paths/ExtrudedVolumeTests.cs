using Platewright.Build.Estimates;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Build.Estimates;
using Platewright.Tests.Build.Layers;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Paths;

/// <summary>Volume is conserved: what is laid down is what was asked for.</summary>
public sealed class ExtrudedVolumeTests
{
    public static IEnumerable<TheoryDataRow<string>> Files => SharedMeshes.Valid;

    [Theory, MemberData(nameof(Files))]
    public void Plan_SharedMeshSolid_HasTheVolumeOfItsSections(string file)
    {
        Mesh mesh = SharedMeshes.Of(file);
        double scale = Scaled.By(mesh, 60);
        PartPaths paths = Builds.Paths(mesh, Builds.Solid, scale);
        double laid = Builds.Run(paths).Total.MaterialMm3.Sum;
        // What is thinner than a quarter of a bead cannot be laid down. Mean thickness of a plate: twice the volume
        // over the surface.
        double area = MeshMeasures.Of(mesh).AreaMm2 * scale * scale;
        double beads = 2 * paths.SectionVolumeMm3 / area / Builds.Solid.BeadWidthMm;
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{beads:f1} beads thick, {laid / paths.SectionVolumeMm3 - 1:p2}");
        Assert.SkipWhen(paths.SectionVolumeMm3 == 0, "nothing to lay down");
        SharedMeshes.AssertNear(paths.SectionVolumeMm3, laid, beads > 4 ? 0.01 : 0.08);
    }

    [Theory]
    [InlineData(InfillPattern.Lines)]
    [InlineData(InfillPattern.Grid)]
    [InlineData(InfillPattern.Triangles)]
    [InlineData(InfillPattern.Gyroid)]
    public void Plan_InfillShare_GrowsVolumeInALine(InfillPattern pattern)
    {
        // Of the gyroid two periods at 20 % and four at 40 %, nearly.
        const double Side = 60, Height = 12;
        Mesh block = Solids.Block(default, new(Side, Side, Height));
        double At(double share) =>
            Builds.Full(block, Builds.Recipe with { InfillPattern = pattern, InfillShare = share }).MaterialMm3.Sum;
        double none = At(0), fifth = At(0.2), twoFifths = At(0.4);
        // The core: what lies inside the walls and four layers from top and bottom.
        double inside = Side - 2 * Builds.Recipe.Walls * Builds.Pitch(Builds.Recipe);
        double core = inside * inside * (Height - 8 * 0.2);
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{pattern}: {(fifth - none) / core:p2} and {(twoFifths - none) / core:p2}, all {none + core:f0}");
        double allowed = pattern == InfillPattern.Gyroid ? 0.03 : 0.02;
        SharedMeshes.AssertNear(0.2 * core, fifth - none, allowed);
        SharedMeshes.AssertNear(0.4 * core, twoFifths - none, allowed);
        SharedMeshes.AssertNear(2 * (fifth - none), twoFifths - none, allowed);
    }

    [Fact]
    public void Plan_WithoutWalls_FillsTheWholeSection()
    {
        MotionTimes laid = Builds.Full(Builds.Cube(10), Builds.Solid with { Walls = 0 });
        SharedMeshes.AssertNear(1000, laid.MaterialMm3.Sum, 0.01);
        Assert.Equal(0, laid.MaterialMm3[PathKind.Wall]);
    }

    [Fact]
    public void Plan_WallsAlone_AreAVase()
    {
        Recipe vase = Builds.Recipe with { Walls = 1, SolidLayers = 0, InfillShare = 0 };
        MotionTimes laid = Builds.Full(Builds.Cube(20), vase);
        double pitch = Builds.Pitch(Builds.Recipe);
        Assert.Equal(laid.MaterialMm3.Sum, laid.MaterialMm3[PathKind.Wall]);
        SharedMeshes.AssertNear((400 - Math.Pow(20 - 2 * pitch, 2)) * 20, laid.MaterialMm3.Sum, 0.005);
        SharedMeshes.AssertNear(100 * 4 * (20 - pitch), laid.PathMm[PathKind.Wall], 0.005);
    }
}
