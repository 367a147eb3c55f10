using CsCheck;
using Platewright.Build.Heat;
using Platewright.Build.Heat.Network;
using Platewright.Machines;

namespace Platewright.Tests.Heat;

/// <summary>What machines reach, how they are used and what more power does to them.</summary>
public sealed class MachineHeatTests
{
    private static readonly Material Abs = MaterialCatalog.Get("ABS");

    private static readonly Material Pla = MaterialCatalog.Get("PLA");

    [Fact]
    public void Reach_WeakBed_SaysWhereItStalls()
    {
        Machine machine = TypicalHeaters.OpenFrame(0.235, supplyW: 130);
        HeatReach reach = HeatReach.Of(machine, Abs);
        Assert.False(reach.Reaches);
        double stalls = reach[HeatZone.Bed].ReachedC!.Value;
        Assert.InRange(stalls, 60, 95);
        Assert.Contains($"the bed stalls at {Math.Floor(stalls)} °C; ABS needs 95 °C", reach.Sentences);
        Assert.Contains("the air around the part stays at 22 °C; ABS needs 45 °C", reach.Sentences);
        BuildCycleResult never = BuildCycle.Simulate(machine, Abs, 3600, 10_000);
        Assert.Null(never.WarmUpS);
        Assert.Null(never.Energy);
    }

    [Fact]
    public void Reach_StatedBelowTheHeaters_CountsAsStated()
    {
        Machine machine = TypicalHeaters.OpenFrame(0.235, 500) with { HeatsTo = new HeatLimits(240, 60, 0) };
        HeatReach reach = HeatReach.Of(machine, MaterialCatalog.Get("PETG"));
        Assert.Equal(["the bed heats to 60 °C; PETG needs 70 °C"], reach.Sentences);
        Assert.Equal(ReachSource.Stated, reach[HeatZone.Bed].Source);
    }

    [Fact]
    public void Reach_NothingDescribed_IsNotJudgedAndTakesNoTime()
    {
        Machine machine = new() { Name = "bare", BuildVolume = new BoxVolume(200, 200, 200) };
        BuildCycleResult cycle = BuildCycle.Simulate(machine, Abs, 3600, 10_000);
        Assert.True(cycle.Reach.Reaches);
        Assert.All(cycle.Reach.Zones, z => Assert.Equal(ReachSource.Unknown, z.Source));
        Assert.Equal((0, 0), (cycle.WarmUpS, cycle.ReleaseS));
        Assert.Null(cycle.Energy);
        Assert.Null(cycle.PeakW);
    }

    [Fact]
    public void Chamber_TooWarmForTheMaterial_IsOpened()
    {
        Machine machine = TypicalHeaters.On(MachineCatalog.FindBundled("generic-210-enclosed")!);
        Material soft = Pla with { VentAboveC = 30 };
        BuildCycleResult opened = BuildCycle.Simulate(machine, soft, 3600, 10_000);
        Assert.True(opened.Vented);
        const string said = "Opened: the closed chamber would reach";
        Assert.Contains(opened.Notes, n => n.StartsWith(said, StringComparison.Ordinal));
        Assert.DoesNotContain(opened.Picture, p => p.ChamberC is not null);

        Heating heating = machine.Heating!;
        Machine shut = machine with
        {
            Heating = heating with { Enclosure = heating.Enclosure! with { CanBeVented = false } },
        };
        BuildCycleResult closed = BuildCycle.Simulate(shut, soft, 3600, 10_000);
        Assert.False(closed.Vented);
        Assert.Contains(closed.Notes, n => n.StartsWith("Take care", StringComparison.Ordinal));
        Assert.True(closed.Energy!.HoldJ < opened.Energy!.HoldJ, "a closed chamber keeps its heat");
    }

    [Fact]
    public void Air_ClosedOrOpened_IsTheChambersOrTheRooms()
    {
        Machine machine = TypicalHeaters.On(MachineCatalog.FindBundled("generic-210-enclosed")!);
        Assert.InRange(new MachineHeat(machine, Pla with { VentAboveC = null }).AirC, 28, 45);
        Assert.Equal(22, new MachineHeat(machine, Pla with { VentAboveC = 25 }).AirC);
        Assert.Equal(18, new MachineHeat(TypicalHeaters.OpenFrame(0.2, 400), Abs, roomC: 18).AirC);
    }

    [Fact]
    public void Reach_OpenFrameThatStatesNoChamber_SaysTheAirStaysCool()
    {
        Machine machine = TypicalHeaters.OpenFrame(0.2, 600) with { HeatsTo = new HeatLimits(300, 120, 0) };
        Assert.Equal(
            ["the air around the part stays at 22 °C; ABS needs 45 °C"], HeatReach.Of(machine, Abs).Sentences);
    }

    [Fact]
    public void Melt_MoreFlow_TakesItsHeatFromTheNozzle()
    {
        MachineHeat heat = new(TypicalHeaters.OpenFrame(0.235, 500), Pla);
        HoldPower idle = BuildCycle.Simulate(heat, new BuildLoad(7200, 0)).Hold!;
        HoldPower busy = BuildCycle.Simulate(heat, new BuildLoad(7200, 7200 * 10)).Hold!;
        Assert.Equal(0, idle.MeltW);
        Assert.Equal(busy.MeltW, busy.NozzleW - idle.NozzleW, 0.01 * busy.MeltW);
    }

    [Fact]
    public void Release_BedBelowReleaseOrWarmRoom_TakesNoneOrNever()
    {
        Machine machine = TypicalHeaters.OpenFrame(0.235, 500);
        Material cool = Pla with { ReleaseC = 70 };
        Assert.Equal(0, BuildCycle.Simulate(machine, cool, 3600, 1000).ReleaseS);
        Assert.Null(BuildCycle.Simulate(machine, Pla with { ReleaseC = 20 }, 3600, 1000).ReleaseS);
    }

    [Fact]
    public void Reach_RandomMachine_AgreesWithALongRun() =>
        Gen.Select(RandomHeating.Any, RandomHeating.AnyMaterial).Sample(
            (heating, material) =>
            {
                MachineHeat heat = new(RandomHeating.With(heating), material);
                MachineNetwork machine = heat.NetworkAt(material.Needs);
                NetworkRun run = new(machine.Network);
                run.Run(1e6);
                (HeatZone, int)[] heated = [(HeatZone.Bed, machine.Bed), (HeatZone.Nozzle, machine.Nozzle)];
                foreach ((HeatZone zone, int node) in heated)
                {
                    double end = run.TemperatureC[node], need = heat.Reach[zone].NeededC;
                    if (Math.Abs(heat.Reach[zone].ReachedC!.Value - need) < 0.5) continue;
                    Assert.Equal(heat.Reach[zone].Reaches, end >= need - 1e-3);
                }
                if (heat.Reach.Reaches) Assert.InRange(heat.WarmUp!.Seconds, 1, 1e6);
                else Assert.Null(heat.WarmUp);
            },
            iter: 80, threads: 1);

    [Fact]
    public void WarmUp_MoreSupplyOrPower_IsNotSlower() =>
        Gen.Select(RandomHeating.Any, RandomHeating.AnyMaterial, Gen.Double[1.01, 2]).Sample(
            (heating, material, factor) =>
            {
                Heating more = heating with { SupplyW = heating.SupplyW * factor };
                AssertNotSlower(heating, more, material);
                Heating free = heating with { SupplyW = null };
                Heater stronger = heating.Bed! with { PowerW = heating.Bed.PowerW * factor };
                AssertNotSlower(free, free with { Bed = stronger }, material);
            },
            iter: 60, threads: 1);

    // The steady state decides what it is run at, so compare at the needs.
    private static void AssertNotSlower(Heating heating, Heating more, Material material)
    {
        Material plain = material with { UsualC = material.Needs };
        double? before = new MachineHeat(RandomHeating.With(heating), plain).WarmUp?.Seconds;
        if (before is not { } slow) return;
        double fast = new MachineHeat(RandomHeating.With(more), plain).WarmUp!.Seconds;
        Assert.True(fast <= slow * (1 + 1e-4), $"{fast} s with more, {slow} s with less");
    }
}
