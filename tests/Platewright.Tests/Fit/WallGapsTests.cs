using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Fit;

/// <summary>Distances to walls, against values by hand.</summary>
public sealed class WallGapsTests
{
    private static readonly Vec3[] Block = Solids.Box(20, 10, 30);

    [Fact]
    public void Gaps_InBox_AreLeftRightFrontBackTopLessMargins()
    {
        Machine machine = Solids.BoxMachine(100, 80, 60) with { Margins = new Margins(1, 2, 3, 4, 5) };
        // From 0 to 20, 10, 30 at twice its size from 30, 40, 0: to 70, 60, 60.
        Assert.Equal([29, 28, 37, 16, -5], WallGaps.Of(FromOrigin(), new Pose(2, Rotation.Identity, new Vec3(30, 40, 0)), machine));
    }

    [Fact]
    public void Gaps_InCylinder_AreToTheWallAndTop()
    {
        var machine = new Machine { Name = "round", BuildVolume = new CylinderVolume(100, 50) };
        // The corner farthest from the axis is at 18 + 20, 24 + 10: hypot(38, 34).
        IReadOnlyList<double> gaps = WallGaps.Of(FromOrigin(), new Pose(1, Rotation.Identity, new Vec3(18, 24, 0)), machine);
        Assert.Equal(50 - Math.Sqrt(38 * 38 + 34 * 34), gaps[0], 1e-12);
        Assert.Equal(20, gaps[1], 1e-12);
    }

    [Fact]
    public void Gaps_InPrism_FollowItsSides()
    {
        // A right triangle with legs of 120: the slanted side is x + y = 120.
        var machine = new Machine { Name = "prism", BuildVolume = new PrismVolume([new(0, 0), new(120, 0), new(0, 120)], 50) };
        IReadOnlyList<double> gaps = WallGaps.Of(FromOrigin(), new Pose(1, Rotation.Identity, new Vec3(7, 5, 0)), machine);
        Assert.Equal(5, gaps[0], 1e-12);
        Assert.Equal((120 - 27 - 15) / Math.Sqrt(2), gaps[1], 1e-12);
        Assert.Equal(7, gaps[2], 1e-12);
        Assert.Equal(20, gaps[3], 1e-12);
    }

    [Fact]
    public void Gaps_InTheVerdictsPose_AreNoneNegativeWhereItFits()
    {
        Machine machine = Solids.BoxMachine(28, 24, 32) with { Margins = Margins.Uniform(1) };
        FitResult fit = FitSolver.Solve(
            new PreparedPart(new PartShape(ConvexHull.Of(Block))), machine, new Allowance(), new FitOptions(), CancellationToken.None);
        Assert.All(WallGaps.Of(Block, fit.Pose, machine), gap => Assert.True(gap > -1e-9, $"{gap} mm"));
    }

    private static Vec3[] FromOrigin()
    {
        Vec3 low = Block.Aggregate(Vec3.Min);
        return [.. Block.Select(v => v - low)];
    }
}
