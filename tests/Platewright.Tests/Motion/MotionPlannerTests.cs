using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Motion;

public sealed class MotionPlannerTests
{
    private static readonly MotionLimits Limits = new(100, 1000, 0.05);

    [Fact]
    public void Plan_MovesOfSeveralKinds_TellsTimeLengthAndMaterialApart()
    {
        Move[] moves =
        [
            new(new(50, 0, 0), 500, 0.08, 0, PathKind.Wall),
            new(new(50, 20, 0), 80, 0, 0.4, PathKind.Travel),
            new(new(50, 20, 0), 80, 0, 0.3, PathKind.Travel),
            new(new(0, 20, 0), 50, 0.1, 0.2, PathKind.Infill),
        ];
        MotionTimes times = new MotionPlanner().Plan(default, moves, Limits);
        // Each starts from rest: d/v + v/a.
        Assert.Equal(50 / 100.0 + 0.1, times.MovingS[PathKind.Wall], 12);
        Assert.Equal(20 / 80.0 + 0.08, times.MovingS[PathKind.Travel], 12);
        Assert.Equal(50 / 50.0 + 0.05, times.MovingS[PathKind.Infill], 12);
        Assert.Equal(0.9, times.StandstillS, 12);
        Assert.Equal(times.MovingS.Sum + 0.9, times.TotalS, 12);
        Assert.Equal(times.MovingS[PathKind.Travel] + 0.9, times.TravelAndStandstillS, 12);
        Assert.Equal(20, times.PathMm[PathKind.Travel], 12);
        Assert.Equal(4, times.MaterialMm3[PathKind.Wall], 12);
        Assert.Equal(5, times.MaterialMm3[PathKind.Infill], 12);
    }

    [Fact]
    public void Plan_NothingToDo_TakesNoTime()
    {
        var planner = new MotionPlanner();
        Assert.Equal(default, planner.Plan(default, [], Limits));
        MotionTimes still = planner.Plan(Vec3.UnitX, [new(Vec3.UnitX, 10, 0, 0, PathKind.Wall)], Limits);
        Assert.Equal(default, still);
    }

    [Fact]
    public void Plan_MoveWithoutLengthBetweenCollinearOnes_StopsNothing()
    {
        Move[] moves = [Wall(20, 0), Wall(20, 0), Wall(50, 0)];
        Assert.Equal(50 / 100.0 + 0.1, new MotionPlanner().Plan(default, moves, Limits).TotalS, 12);
    }

    [Fact]
    public void Plan_Reversal_StopsAtIt()
    {
        Move[] moves = [Wall(50, 0), Wall(0, 0)];
        Assert.Equal(2 * (50 / 100.0 + 0.1), new MotionPlanner().Plan(default, moves, Limits).TotalS, 9);
    }

    [Fact]
    public void Plan_SpeedJump_RulesTheCornerInPlaceOfTheTolerance()
    {
        // At a right angle the velocity vector jumps by v·√2.
        var planner = new MotionPlanner();
        planner.Plan(default, [Wall(50, 0), Wall(50, 50)], Limits with { SpeedJumpMmS = 10 });
        Assert.Equal(10 / Math.Sqrt(2), planner.VertexSpeedsMmS.ElementAt(1), 12);
    }

    [Fact]
    public void Plan_ContourToleranceOfZero_PassesStraightOnAndStopsAtCorners()
    {
        var planner = new MotionPlanner();
        planner.Plan(default, [Wall(20, 0), Wall(40, 0), Wall(40, 20)], Limits with { ContourToleranceMm = 0 });
        Assert.Equal([0, 100, 0, 0], planner.VertexSpeedsMmS);
    }

    [Fact]
    public void Plan_AxisLimits_HoldForTheAxisNotThePath()
    {
        MotionLimits limits = new(1000, 10_000, 0.05)
        {
            AxisSpeedMmS = new(80, 60, 10),
            AxisAccelerationMmS2 = new(800, 600, 100),
        };
        var planner = new MotionPlanner();
        // A 3-4-5 direction: y, at 4/5, allows 75 mm/s and 750 mm/s².
        Assert.Equal(Trapezoid.Of(50, 75, 750).TimeS, planner.Plan(default, [Wall(30, 40)], limits).TotalS, 12);
        Assert.Equal(Trapezoid.Of(50, 80, 800).TimeS, planner.Plan(default, [Wall(50, 0)], limits).TotalS, 12);
        Move lift = new(new(0, 0, 5), 500, 0, 0, PathKind.Travel);
        Assert.Equal(Trapezoid.Of(5, 10, 100).TimeS, planner.Plan(default, [lift], limits).TotalS, 12);
    }

    [Fact]
    public void Plan_ShareOfTheAccelerationInY_SlowsYAlone()
    {
        var planner = new MotionPlanner();
        Assert.Equal(Trapezoid.Of(50, 100, 1000).TimeS, PlanTo(50, 0), 12);
        Assert.Equal(Trapezoid.Of(50, 100, 250).TimeS, PlanTo(0, 50), 12);

        double PlanTo(double x, double y) =>
            planner.Plan(default, [Wall(x, y)], Limits, yAccelerationShare: 0.25).TotalS;
    }

    [Fact]
    public void Plan_ReusedPlanner_ForgetsTheLastRun()
    {
        var planner = new MotionPlanner();
        Move[] moves = [Wall(10, 0), Wall(10, 10), Wall(20, 10)];
        MotionTimes first = planner.Plan(default, moves, Limits);
        planner.Plan(default, [.. Enumerable.Range(0, 100).Select(i => Wall(i, i % 2))], Limits with { SpeedMmS = 7 });
        Assert.Equal(first, planner.Plan(default, moves, Limits));
    }

    [Fact]
    public void Plan_ReusedPlanner_AllocatesNothing()
    {
        var planner = new MotionPlanner();
        Move[] moves = [.. Enumerable.Range(0, 1000).Select(i => Wall(i, i % 7))];
        planner.Plan(default, moves, Limits);
        long before = GC.GetAllocatedBytesForCurrentThread();
        planner.Plan(default, moves, Limits);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    [Theory]
    [InlineData(double.NaN, 10, 0)]
    [InlineData(double.PositiveInfinity, 10, 0)]
    [InlineData(5, 0, 0)]
    [InlineData(5, double.NaN, 0)]
    [InlineData(5, 10, -1)]
    [InlineData(5, 10, double.NaN)]
    public void Plan_MoveOutOfRange_IsRefused(double x, double speed, double area)
    {
        Move[] moves = [new(new(x, 0, 0), speed, area, 0, PathKind.Wall)];
        Assert.Throws<ArgumentException>(() => new MotionPlanner().Plan(default, moves, Limits));
    }

    [Fact]
    public void Plan_LimitOutOfRange_IsRefused()
    {
        var planner = new MotionPlanner();
        Assert.Throws<ArgumentException>(() => planner.Plan(default, [], Limits with { AccelerationMmS2 = 0 }));
        Assert.Throws<ArgumentException>(() => planner.Plan(default, [], Limits with { SpeedMmS = double.NaN }));
        Assert.ThrowsAny<ArgumentException>(() => planner.Plan(default, [], Limits, 0));
        Assert.ThrowsAny<ArgumentException>(() => planner.Plan(default, [], Limits, yAccelerationShare: 1.5));
    }

    private static Move Wall(double x, double y) => new(new(x, y, 0), 1000, 0.08, 0, PathKind.Wall);
}
