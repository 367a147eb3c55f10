using Platewright.Build.Heat;
using Platewright.Machines;

namespace Platewright.Tests.Heat;

/// <summary>
/// Plausible bands: common practice, no source, but for the measured machines of the energy cases. They find slips of
/// a factor, not of a tenth.
/// </summary>
public sealed class MachineBandTests
{
    private static readonly Material Pla = MaterialCatalog.Get("PLA");

    public static TheoryData<string> Machines() => [.. MachineCatalog.Bundled.Select(m => m.Id)];

    [Theory]
    [InlineData(60, 90, 180, 35, 70)]
    [InlineData(100, 230, 480, 100, 160)]
    public void Bed_TwoTenthsOfAMetre_WarmsAndHoldsAsUsual(
        double setC, double fastestS, double slowestS, double leastW, double mostW)
    {
        Machine machine = TypicalHeaters.OpenFrame(0.2, supplyW: 500);
        MachineHeat heat = new(machine, Pla with { UsualC = new HeatLimits(210, setC, 0) });
        Assert.InRange(heat.WarmUp!.BedS!.Value, fastestS, slowestS);
        Assert.InRange(heat.WarmUp.NozzleS!.Value, 60, 180);
        HoldPower hold = BuildCycle.Simulate(heat, new BuildLoad(3600, 14_400)).Hold!;
        Assert.InRange(hold.BedW, leastW, mostW);
        Assert.InRange(hold.NozzleW, 10, 30);
    }

    [Theory]
    [MemberData(nameof(Machines))]
    public void BundledMachine_Pla_StaysWithinTheBands(string id)
    {
        Machine machine = TypicalHeaters.On(MachineCatalog.FindBundled(id)!);
        BuildCycleResult cycle = BuildCycle.Simulate(machine, Pla, 4 * 3600, 4 * 3600 * 4);
        Assert.True(cycle.Reach.Reaches);
        Assert.InRange(cycle.WarmUpS!.Value, 60, 600);
        Assert.InRange(cycle.ReleaseS!.Value, 120, 2400);
        // The collected data reach up to beds of 0.3 m; hold power goes with the bed's area.
        double bedM2 = machine.Heating!.Bed!.AreaM2;
        Assert.InRange(cycle.MeanW!.Value, 40, 220 * Math.Max(1, bedM2 / 0.09));
        Assert.InRange(cycle.Hold!.NozzleW, 10, 30);
        Assert.True(cycle.PeakW <= machine.Heating.SupplyW + 1e-6);
        Assert.Equal(cycle.Energy!.TotalJ, cycle.MeanW.Value * cycle.CycleS!.Value, 1);
    }

    [Theory]
    [InlineData("generic-210-enclosed", 10, 60)]
    [InlineData("generic-330-enclosed", 10, 30)]
    [InlineData("generic-440-enclosed", 10, 30)]
    public void Chamber_Abs_SoaksAsLongAsUsual(string id, double leastMin, double mostMin)
    {
        MachineHeat heat = new(TypicalHeaters.On(MachineCatalog.FindBundled(id)!), MaterialCatalog.Get("ABS"));
        Assert.True(heat.Reach.Reaches, string.Join("; ", heat.Reach.Sentences));
        Assert.InRange(heat.WarmUp!.ChamberS!.Value / 60, leastMin, mostMin);
        Assert.Equal(heat.WarmUp.Seconds, Math.Max(heat.WarmUp.ChamberS.Value, heat.WarmUp.BedS!.Value), 1e-6);
    }

    [Fact]
    public void Draw_Cycle_IsInOrderAndKeepsEvents()
    {
        Machine machine = TypicalHeaters.On(MachineCatalog.FindBundled("generic-330-enclosed")!);
        MachineHeat heat = new(machine, MaterialCatalog.Get("ABS"));
        BuildLoad load = new(6 * 3600, 100_000);
        BuildCycleResult cycle = BuildCycle.Simulate(heat, load);
        CyclePoint[] points = [.. cycle.Picture];
        Assert.InRange(points.Length, 180, 240);
        Assert.Equal(0, points[0].TimeS);
        Assert.Equal(cycle.CycleS!.Value, points[^1].TimeS, 1e-6);
        for (int i = 1; i < points.Length; i++) Assert.True(points[i].TimeS >= points[i - 1].TimeS);
        Assert.Equal(cycle.PeakW!.Value, points.Max(p => p.PowerW), 1e-6);
        Assert.Contains(points, p => Math.Abs(p.TimeS - heat.WarmUp!.BedS!.Value) < 1e-6);
        double energy = points.Zip(points.Skip(1), (a, b) => (b.TimeS - a.TimeS) * (a.PowerW + b.PowerW) / 2).Sum();
        Assert.InRange(energy / cycle.Energy!.TotalJ, 0.99, 1.01);
    }
}
