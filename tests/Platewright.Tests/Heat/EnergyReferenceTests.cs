using System.Text.Json;
using Platewright.Build.Care;
using Platewright.Build.Heat;
using Platewright.Machines;
using Platewright.Tests.Motion;

namespace Platewright.Tests.Heat;

/// <summary>
/// Energy and circuits. Cases that compare with measured machines are met by an estimate of a machine as they describe
/// it, within 35 % (50 % where the case allows that): plausibility, not proof.
/// </summary>
public sealed class EnergyReferenceTests
{
    private const double SecondsPerMinute = 60, SecondsPerHour = 3600, JoulesPerWh = 3600;

    private const double Plausible = 0.35;

    public static TheoryData<string> Ids() =>
        PhysicsCase.Ids("energy/phases", "energy/model", "energy/units", "electrical");

    [Theory]
    [MemberData(nameof(Ids))]
    public void Energy_ReferenceCase_IsMet(string id)
    {
        var c = PhysicsCase.OrSkip(id);
        if (c.Has("breaker_A")) Electrical(c);
        else if (c.Has("phases_W_min")) Phases(c);
        else if (c.Has("warmup_Wh")) Sum(c);
        else if (c.Has("MJ_per_kg")) Units(c);
        else if (c.Has("bed_C")) Regression(c);
        else if (c.Has("hours")) MeasuredHour(c);
        else if (c.Has("rated_W")) ShareOfRated(c);
        else if (c.Has("machine")) Desktop(c);
        else Assert.Skip($"{id}: an input this test does not know: {c.Input}");
    }

    private static void Electrical(PhysicsCase c)
    {
        Circuit circuit = new(c.In("volts"), c.In("breaker_A"), UnderNec: true);
        c.CheckAll(key => key switch
        {
            "max_continuous_A" => circuit.LimitA(Circuit.ContinuousHours),
            "max_continuous_W" => circuit.LimitW(Circuit.ContinuousHours),
            "by_peak" => circuit.Machines(c.In("peak_W"), Circuit.ContinuousHours),
            "by_mean" => circuit.Machines(c.In("mean_W"), Circuit.ContinuousHours),
            _ => null,
        });
    }

    // Three phases that were metered, and the same cycle estimated for an enclosed machine of 210 mm.
    private static void Phases(PhysicsCase c)
    {
        double[][] phases = [.. c.Input.GetProperty("phases_W_min").EnumerateArray().Select(
            p => p.EnumerateArray().Select(e => e.GetDouble()).ToArray())];
        double[] joules = [.. phases.Select(p => p[0] * p[1] * SecondsPerMinute)];
        CycleEnergy measured = new(joules[0], joules[1], 0, joules.Skip(2).Sum());
        double seconds = phases.Sum(p => p[1]) * SecondsPerMinute;
        c.CheckOne("energy_Wh", c.Expected.GetProperty("energy_Wh").GetDouble(), measured.TotalJ / JoulesPerWh);
        c.CheckOne("mean_W", c.Expected.GetProperty("mean_W").GetDouble(), measured.TotalJ / seconds);
        c.CheckOne("cost", c.Expected.GetProperty("cost").GetDouble(), measured.TotalKwh * c.In("tariff_per_kWh"));

        if (!c.Title.Contains("bed 50, nozzle 220")) return;
        Machine machine = TypicalHeaters.On(MachineCatalog.FindBundled("generic-210-enclosed")!);
        double building = phases[1][1] * SecondsPerMinute;
        BuildCycleResult estimate = BuildCycle.Simulate(machine, Pla(220, 50), building, 4 * building);
        AssertWithin(measured.TotalJ, estimate.Energy!.TotalJ, Plausible);
    }

    private static void Sum(PhysicsCase c)
    {
        double hours = c.In("hours");
        CycleEnergy energy = new(
            c.In("warmup_Wh") * JoulesPerWh, (c.In("bed_hold_W") + c.In("nozzle_W")) * hours * JoulesPerWh, 0,
            c.In("electronics_motion_W") * hours * JoulesPerWh);
        c.CheckAll(key => key switch
        {
            "energy_Wh" => energy.TotalJ / JoulesPerWh,
            "mean_W" => energy.TotalJ / (hours * SecondsPerHour),
            _ => null,
        });
    }

    private static void Units(PhysicsCase c) =>
        c.CheckValues("kWh_per_kg", [.. c.List("MJ_per_kg").Select(mj => new CycleEnergy(mj * 1e6, 0, 0, 0).TotalKwh)]);

    private static void Regression(PhysicsCase c)
    {
        double seconds = c.In("minutes") * SecondsPerMinute;
        Machine machine = TypicalHeaters.OpenFrame(bedSideM: 0.235, supplyW: 350);
        Material material = Pla(c.In("nozzle_C"), c.In("bed_C"));
        BuildCycleResult estimate = BuildCycle.Simulate(machine, material, seconds, 4 * seconds);
        double allowed = c.Tolerance.GetProperty("rel").GetDouble();
        AssertWithin(c.Expected.GetProperty("energy_MJ").GetDouble() * 1e6, Running(estimate, seconds), allowed);
    }

    // Warm-up included, from cold to the end of the hour.
    private static void MeasuredHour(PhysicsCase c)
    {
        double window = c.In("hours") * SecondsPerHour;
        c.CheckValues("energy_kWh", c.In("mean_W") * window / CycleEnergy.JoulesPerKwh);
        c.CheckValues("share_of_rated", c.In("mean_W") / c.In("rated_W"));
        c.CheckValues("window_s", c.In("samples") * c.In("sample_period_s"));

        Machine machine = TypicalHeaters.OpenFrame(bedSideM: 0.3, c.In("rated_W"));
        MachineHeat heat = new(machine, Pla(225, 65));
        double building = window - heat.WarmUp!.Seconds;
        BuildCycleResult estimate = BuildCycle.Simulate(heat, new BuildLoad(building, 5 * building));
        AssertWithin(c.In("mean_W") * window, Running(estimate, window), Plausible);
        AssertWithin(c.In("max_W"), estimate.PeakW!.Value, Plausible);
    }

    private static void ShareOfRated(PhysicsCase c)
    {
        const double seconds = 2 * SecondsPerHour;
        Machine machine = TypicalHeaters.OpenFrame(bedSideM: 0.235, c.In("rated_W"));
        BuildCycleResult estimate = BuildCycle.Simulate(machine, Pla(210, 60), seconds, 4 * seconds);
        double mean = Running(estimate, seconds + estimate.WarmUpS!.Value) / (seconds + estimate.WarmUpS!.Value);
        AssertWithin(c.Expected.GetProperty("mean_W").GetDouble(), mean, c.Tolerance.GetProperty("rel").GetDouble());
    }

    private static void Desktop(PhysicsCase c)
    {
        JsonElement range = c.Expected.GetProperty("mean_W");
        foreach (double side in new[] { 0.2, 0.25, 0.3 })
            foreach ((double nozzle, double bed) in new[] { (210.0, 55.0), (230, 65) })
            {
                Machine machine = TypicalHeaters.OpenFrame(side, supplyW: 400);
                BuildCycleResult estimate = BuildCycle.Simulate(
                    machine, Pla(nozzle, bed), SecondsPerHour, 4 * SecondsPerHour);
                double mean = Running(estimate, SecondsPerHour) / SecondsPerHour;
                Assert.InRange(mean, range[0].GetDouble(), range[1].GetDouble());
            }
    }

    // Without what the electronics draw while cooling down.
    private static double Running(BuildCycleResult estimate, double windowS)
    {
        CycleEnergy e = estimate.Energy!;
        return e.WarmUpJ + e.HoldJ + e.MotionJ + e.BaseJ * windowS / estimate.CycleS!.Value;
    }

    private static Material Pla(double nozzleC, double bedC) =>
        MaterialCatalog.Get("PLA") with { UsualC = new HeatLimits(nozzleC, bedC, 0) };

    private static void AssertWithin(double measured, double estimated, double share) =>
        Assert.InRange(estimated / measured, 1 - share, 1 + share);
}
