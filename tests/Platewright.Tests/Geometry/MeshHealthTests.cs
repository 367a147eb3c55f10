using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class MeshHealthTests
{
    private static readonly Mesh Block = Solids.Block(new(0, 0, 0), new(30, 20, 10));

    [Fact]
    public void Examine_SoundBlock_MeasuresItAndFindsNothing()
    {
        MeshReport report = MeshHealth.Examine(Block);
        Assert.Empty(report.Findings);
        Assert.True(report.IsClosed);
        Assert.Equal((12, 8, 1), (report.Triangles, report.Vertices, report.Shells));
        Assert.Equal(6000, report.VolumeMm3!.Value, 1e-9);
        Assert.Equal(2200, report.AreaMm2, 1e-9);
        Assert.Equal(new Vec3(15, 10, 5), report.CentreOfMass);
        Assert.Equal(10, report.ThinnestWallMm!.Value, 1e-3);
        Assert.Empty(report.PlausibleUnits);
    }

    [Fact]
    public void Examine_BlockWithTwoTrianglesMissing_CountsTwoHoles()
    {
        int[] corners = Block.Corners.ToArray();
        MeshReport report = MeshHealth.Examine(new Mesh(Block.Vertices.ToArray(), corners[3..^3]));
        Assert.Equal(2, Count(report, FindingCodes.Holes));
        Assert.False(report.IsClosed);
        Assert.Null(report.VolumeMm3);
    }

    [Fact]
    public void Examine_OneTriangleTurned_CountsOneFlippedFace()
    {
        int[] corners = Block.Corners.ToArray();
        (corners[4], corners[5]) = (corners[5], corners[4]);
        MeshReport report = MeshHealth.Examine(new Mesh(Block.Vertices.ToArray(), corners));
        Assert.Equal(1, Count(report, FindingCodes.FlippedFaces));
        Assert.Equal(0, Count(report, FindingCodes.Holes));
        Assert.False(report.IsClosed);
    }

    [Fact]
    public void Examine_InsideOutBlock_SaysSo()
    {
        MeshReport report = MeshHealth.Examine(Solids.InsideOut(Block));
        Assert.Equal(1, Count(report, FindingCodes.InsideOutShells));
        Assert.Equal(-6000, report.VolumeMm3!.Value, 1e-9);
    }

    [Fact]
    public void Examine_TwoBlocksThatShareAnEdge_CountsACrowdedEdge()
    {
        Mesh pair = SharedMeshes.Joined(Block, Solids.Block(new(30, 20, 0), new(60, 40, 10)));
        MeshReport report = MeshHealth.Examine(pair);
        Assert.Equal(1, Count(report, FindingCodes.CrowdedEdges));
        Assert.False(report.IsClosed);
        Assert.True(report.IsBalanced);
        Assert.Equal(12000, report.SignedVolumeMm3, 1e-9);
    }

    [Fact]
    public void Examine_TrianglesTwice_CountsTheCopies()
    {
        int[] corners = Block.Corners.ToArray();
        MeshReport report = MeshHealth.Examine(new Mesh(Block.Vertices.ToArray(), [.. corners, .. corners[..9]]));
        Assert.Equal(3, Count(report, FindingCodes.DuplicateFaces));
        int[] sheet = [0, 1, 3, 0, 3, 1];
        report = MeshHealth.Examine(new Mesh(Block.Vertices.ToArray(), sheet));
        Assert.Equal(1, Count(report, FindingCodes.DuplicateFaces));
        Assert.Equal(1, Count(report, FindingCodes.NothingSolid));
    }

    [Fact]
    public void Examine_TrianglesWithoutArea_CountsThemAndSlivers()
    {
        Vec3[] vertices = [.. Block.Vertices, new(10, 0, 0), new(10, 1e-9, 0)];
        int[] extra = [0, 8, 1, 3, 3, 5, 0, 1, 9];
        MeshReport report = MeshHealth.Examine(new Mesh(vertices, [.. Block.Corners, .. extra]));
        Assert.Equal(2, Count(report, FindingCodes.DegenerateFaces));
        Assert.Equal(1, Count(report, FindingCodes.Slivers));
    }

    [Fact]
    public void Examine_HollowBall_IsASealedCavityAndNothingLoose()
    {
        Mesh hollow = SharedMeshes.Joined(Solids.Ball(20), Solids.InsideOut(Solids.Ball(15)));
        MeshReport report = MeshHealth.Examine(hollow);
        Assert.Equal(1, Count(report, FindingCodes.SealedCavities));
        Assert.Single(report.Findings);
        Assert.Equal(5, report.ThinnestWallMm!.Value, 0.1);
        Mesh thin = SharedMeshes.Joined(Solids.Ball(20), Solids.InsideOut(Solids.Ball(19.5)));
        Assert.Equal(0.5, MeshHealth.Examine(thin).ThinnestWallMm!.Value, 0.02);
    }

    [Fact]
    public void Examine_BallInABall_IsNested()
    {
        MeshReport report = MeshHealth.Examine(SharedMeshes.Joined(Solids.Ball(20), Solids.Ball(15)));
        Assert.Equal(1, Count(report, FindingCodes.NestedShells));
        Assert.Equal(0, Count(report, FindingCodes.SealedCavities));
    }

    [Fact]
    public void Examine_BlocksThatOverlap_AreAnIntersectingPair()
    {
        MeshReport report = MeshHealth.Examine(SharedMeshes.Joined(Block, Solids.Moved(Block, new(7, 7, 3))));
        Assert.Equal(1, Count(report, FindingCodes.IntersectingShells));
        Assert.Equal(0, Count(report, FindingCodes.SelfIntersections));
        Assert.Equal(0, Count(report, FindingCodes.LooseShells));
    }

    [Fact]
    public void Examine_BlocksApart_AreLoose()
    {
        MeshReport report = MeshHealth.Examine(SharedMeshes.Joined(
            Block, Solids.Moved(Block, new(40, 0, 0)), Solids.Moved(Solids.Ball(4), new(0, 50, 4))));
        Assert.Equal(3, Count(report, FindingCodes.LooseShells));
        Assert.Single(report.Findings);
    }

    [Fact]
    public void Examine_FlatAndThinThings_EncloseNothing()
    {
        Vec3[] square = [new(0, 0, 0), new(9, 0, 0), new(9, 9, 0), new(0, 9, 0)];
        Assert.Equal(1, Count(MeshHealth.Examine(new Mesh(square, [0, 1, 2, 0, 2, 3])), FindingCodes.NothingSolid));
        Assert.Equal(1, Count(MeshHealth.Examine(new Mesh([], [])), FindingCodes.NothingSolid));
        Assert.Equal(1, Count(MeshHealth.Examine(new Mesh([new(1, 1, 1)], [0, 0, 0])), FindingCodes.NothingSolid));
    }

    [Fact]
    public void Examine_ThinPlate_NamesItsWall()
    {
        Mesh plate = Solids.Block(new(0, 0, 0), new(80, 50, 0.3));
        MeshReport report = MeshHealth.Examine(plate);
        Assert.Equal(0.3, report.ThinnestWallMm!.Value, 1e-4);
        Assert.True(Count(report, FindingCodes.ThinWalls) > 1000);
        report = MeshHealth.Examine(plate, HealthOptions.Default with { BeadWidthMm = 0.25 });
        Assert.Equal(0, Count(report, FindingCodes.ThinWalls));
        Assert.Equal(0.3, report.ThinnestWallMm!.Value, 1e-4);
    }

    [Fact]
    public void Examine_ThinWallOfABox_IsFoundAmongThickOnes()
    {
        // A tray with walls of 2 mm, and one of 0.6 mm.
        Mesh tray = SharedMeshes.Joined(
            Solids.Block(new(0, 0, 0), new(60, 40, 20)),
            Solids.InsideOut(Solids.Block(new(2, 2, 2), new(59.4, 38, 18))));
        Assert.Equal(0.6, MeshHealth.Examine(tray).ThinnestWallMm!.Value, 1e-3);
    }

    /// <summary>A ramp of 20° runs out to nothing at its edge, as every chamfer does; that is an edge, not a
    /// wall.</summary>
    [Fact]
    public void Examine_Ramp_HasNoThinWall()
    {
        double rise = 60 * Math.Tan(20 * Math.PI / 180);
        Vec3[] v = [new(0, 0, 0), new(60, 0, 0), new(60, 0, rise), new(0, 40, 0), new(60, 40, 0), new(60, 40, rise)];
        MeshReport report = MeshHealth.Examine(new Mesh(
            v, [0, 1, 2, 3, 5, 4, 0, 3, 4, 0, 4, 1, 1, 4, 5, 1, 5, 2, 2, 5, 3, 2, 3, 0]));
        Assert.True(report.IsClosed);
        Assert.Equal(60 * rise / 2 * 40, report.VolumeMm3!.Value, 1e-6);
        Assert.Empty(report.Findings);
    }

    [Theory]
    [InlineData(0.2, "m", 200)]
    [InlineData(2, "in", 50.8)]
    [InlineData(0.03, "m", 30)]
    [InlineData(5000, "in_twice", 196.85)]
    [InlineData(120_000, "um", 120)]
    public void Examine_DoubtfulSize_NamesTheLikeliestUnit(double edge, string symbol, double becomes)
    {
        MeshReport report = MeshHealth.Examine(Solids.Block(default, new(edge, edge / 2, edge / 3)));
        Assert.Equal(1, Count(report, FindingCodes.UnitDoubt));
        Assert.Equal(symbol, report.PlausibleUnits[0].Symbol);
        Assert.Equal(becomes, report.PlausibleUnits[0].LargestMm, 0.01);
        Assert.Equal(edge, report.Bounds.Size.X);
    }

    [Fact]
    public void Examine_CornerThatIsNoNumber_LeavesItsTrianglesOut()
    {
        Vec3[] vertices = [.. Block.Vertices, new(double.NaN, 0, 0), new(double.PositiveInfinity, 0, 0)];
        MeshReport report = MeshHealth.Examine(new Mesh(vertices, [.. Block.Corners, 0, 1, 8, 0, 9, 2]));
        Assert.Equal(2, Count(report, FindingCodes.NotFinite));
        Assert.Equal(6000, report.SignedVolumeMm3, 1e-9);
        Assert.False(report.IsClosed);
    }

    [Fact]
    public void Examine_AnyTriangleSoup_NeverThrows() =>
        Gen.Select(Gen.OneOf(Clouds.Kinds).Array[1, 14], Gen.Int[0, 13].Array[0, 60]).Sample(
            (points, picks) =>
            {
                int[] corners = [.. picks.Take(picks.Length / 3 * 3).Select(i => i % points.Length)];
                MeshReport report = MeshHealth.Examine(new Mesh(points, corners));
                Assert.All(report.Findings, f => Assert.True(f.Count > 0 && f.Message.EndsWith('.')));
                Assert.Equal(report.Findings.Count, report.Findings.DistinctBy(f => f.Code).Count());
                ShellSeparation.Separate(new Mesh(points, corners));
            },
            iter: 500);

    private static int Count(MeshReport report, string code) =>
        report.Findings.FirstOrDefault(f => f.Code == code)?.Count ?? 0;
}
