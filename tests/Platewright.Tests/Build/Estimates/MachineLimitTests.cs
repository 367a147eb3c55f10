using Platewright.Build.Estimates;
using Platewright.Build.Heat;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Estimates;

/// <summary>What a machine and a material hold back of what a recipe wishes.</summary>
public sealed class MachineLimitTests
{
    private const double Layer = 0.2;

    private static readonly Mesh Apart = SharedMeshes.Joined(
        Solids.Block(default, new(10, 10, 10 * Layer)), Solids.Block(new(30, 0, 0), new(40, 10, 10 * Layer)));

    private static Machine With(Func<MotionLimits, MotionLimits> change) =>
        Builds.Machine with { Motion = change(Builds.Machine.Motion!) };

    [Fact]
    public void Run_TravelAcrossOpenSpace_PullsFilamentBack()
    {
        Machine machine = Builds.Machine with
        {
            Extruder = new Extruder { RetractionMm = 1.5, RetractionSpeedMmS = 25 },
        };
        // There and back in every layer; each time filament goes back and forth.
        double once = 2 * 1.5 / 25;
        Assert.Equal(10 * 2 * once, Builds.Full(Apart, Builds.Solid, machine).StandstillS, 1e-9);
        Assert.Equal(0, Builds.Full(Builds.Cube(10), Builds.Solid, machine).StandstillS);
    }

    [Fact]
    public void Run_MeltRate_IsNotExceeded()
    {
        Machine machine = Builds.Machine with { Extruder = new Extruder { MeltRateMm3S = 1 } };
        MotionTimes times = Builds.Full(Builds.Cube(10), Builds.Solid, machine);
        double extruding = times.MovingS.Sum - times.MovingS[PathKind.Travel];
        Assert.InRange(extruding, times.MaterialMm3.Sum, 1.15 * times.MaterialMm3.Sum);
        Material viscous = Builds.Material with { MeltRateFactor = 0.5 };
        PartPaths paths = Builds.Paths(Builds.Cube(10), Builds.Solid);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        PerKind slower = LayerSampler.Run(paths, machine, viscous, full: true, 0.5, cancel).Total.MovingS;
        Assert.True(slower.Sum - slower[PathKind.Travel] >= 2 * times.MaterialMm3.Sum);
    }

    [Fact]
    public void Run_FirstLayerSpeed_SlowsTheFirstLayerAlone()
    {
        Machine slow = With(m => m with { FirstLayerSpeedMmS = 20 });
        var paths = Builds.Paths(Builds.Cube(10), Builds.Solid);
        LayerTimes usual = Builds.Run(paths), first = Builds.Run(paths, slow);
        double extruded = first.Layers[0].PathMm.Sum - first.Layers[0].PathMm[PathKind.Travel];
        double moving = first.Layers[0].MovingS.Sum - first.Layers[0].MovingS[PathKind.Travel];
        Assert.InRange(moving, extruded / 20, 1.1 * extruded / 20);
        Assert.True(usual.Layers[0].TotalS < first.Layers[0].TotalS);
        Assert.Equal(usual.Layers[1..], first.Layers[1..]);
    }

    [Fact]
    public void Run_BedThatMoves_SlowsTheTopOfTallSlenderParts()
    {
        Machine moving = With(m => m with { MovingBed = true });
        var tower = Builds.Paths(Solids.Block(default, new(5, 5, 50)), Builds.Solid);
        LayerTimes still = Builds.Run(tower), carried = Builds.Run(tower, moving);
        Assert.Equal(still.Layers[10], carried.Layers[10]);
        Assert.True(carried.Layers[200].TotalS > 1.05 * still.Layers[200].TotalS);
        Assert.True(carried.Layers[240].TotalS > carried.Layers[200].TotalS);
        Assert.Equal(Builds.Full(Builds.Cube(10), Builds.Solid), Builds.Full(Builds.Cube(10), Builds.Solid, moving));
    }

    [Fact]
    public void Estimate_MinimumLayerTime_WaitsInEverySmallLayer()
    {
        var quick = Builds.Paths(Builds.Cube(5), Builds.Recipe);
        var patient = Builds.Paths(Builds.Cube(5), Builds.Recipe with { MinimumLayerTimeS = 10 });
        MachineHeat heat = new(Builds.Machine, Builds.Material);
        CancellationToken cancel = TestContext.Current.CancellationToken;
        TimeParts asPlanned = BuildEstimator.Estimate(quick, heat, full: true, cancel).Time;
        TimeParts waiting = BuildEstimator.Estimate(patient, heat, full: true, cancel).Time;
        Assert.Equal(0, asPlanned.WaitingS);
        Assert.Equal(10.0 * quick.LayerCount, waiting.BuildingS, 1e-6);
        Assert.Equal(asPlanned.MovingS, waiting.MovingS);
    }

    [Fact]
    public void Plan_Brim_SurroundsTheFirstLayer()
    {
        double pitch = Builds.Pitch(Builds.Recipe), width = 8 * pitch;
        MotionTimes laid = Builds.Run(Builds.Paths(Builds.Cube(20), Builds.Recipe, brim: width)).Layers[0];
        // A square grown by a distance: its sides, and a quarter circle at each corner.
        double area = 4 * 20 * width + Math.PI * width * width;
        SharedMeshes.AssertNear(area * Layer, laid.MaterialMm3[PathKind.Brim], 0.01);
    }
}
