using System.Text.Json;
using Platewright.Build.Heat.Network;
using Platewright.Tests.Motion;

namespace Platewright.Tests.Heat;

/// <summary>Beds and plates of one temperature.</summary>
internal static class LumpedCases
{
    private const double JoulesPerWh = 3600;

    public static NetworkRun BedRun(PhysicsCase c, double factor) => new(BedNetwork(c, factor));

    private static ThermalNetwork BedNetwork(PhysicsCase c, double factor) => Lumped.Of(
        factor * c.In("C_J_K"), c.In("start_C"), c.In("ambient_C"), new LinearLaw(factor * c.In("UA_W_K")),
        factor * c.In("heater_W"), c.In("target_C"));

    public static void Bed(PhysicsCase c)
    {
        var steady = SteadyState.Of(BedNetwork(c, 1));
        bool reachable = steady.TemperatureC[0] >= c.In("target_C") - 1e-9;
        Assert.Equal(c.Expected.GetProperty("reachable").GetBoolean(), reachable);
        if (!reachable)
        {
            c.CheckValues("ceiling_C", steady.TemperatureC[0]);
            return;
        }
        NetworkRun run = BedRun(c, 1);
        Assert.True(run.Run(1e7, new Goal(0, c.In("target_C"), true)));
        c.CheckValues("time_s", run.TimeS);
        c.CheckValues("energy_Wh", run.EnergyJ / JoulesPerWh);
        c.CheckValues("stored_Wh", c.In("C_J_K") * (run.TemperatureC[0] - c.In("start_C")) / JoulesPerWh);
        run.Run(run.TimeS + 1000);
        c.CheckValues("hold_W", run.PowerW[0]);
        c.CheckValues("hold_W", steady.PowerW[0]);
        c.CheckValues("hold_duty", run.PowerW[0] / c.In("heater_W"));
    }

    public static void Plate(PhysicsCase c)
    {
        if (c.Has("dT0_K")) CoolDown(c);
        else if (c.Has("flux_W_m2")) Flux(c);
        else if (c.Has("eta")) Iron(c);
        else if (c.Has("emissivity")) OneFace(c);
        else Assert.Skip($"{c.Id}: an input this test does not know: {c.Input}");
    }

    private static void Flux(PhysicsCase c)
    {
        NetworkRun run = new(Lumped.Of(
            c.In("rho") * c.In("cp") * c.In("thickness_m"), c.In("T0_C"), c.In("T_inf_C"), new LinearLaw(c.In("h")),
            c.In("flux_W_m2"), besides: new RadiationLaw(c.In("eps"))));
        Assert.True(run.Run(1e6, new Goal(0, c.In("T_C"), true)));
        foreach (JsonProperty p in c.Expected.EnumerateObject()) c.CheckOne(p.Name, p.Value.GetDouble(), run.TimeS);
    }

    private static void Iron(PhysicsCase c)
    {
        double capacity = c.In("rho") * c.In("cp") * c.In("thickness_m") * c.In("area_m2");
        double power = c.In("P_W") * c.In("eta");
        NetworkRun run = new(Lumped.Of(
            capacity, c.In("T0_C"), c.In("T_inf_C"), new LinearLaw(c.In("h") * c.In("area_m2")), power));
        Assert.True(run.Run(1e6, new Goal(0, c.In("T_C"), true)));
        c.CheckValues("published_about", run.TimeS);
        c.CheckValues("recomputed", run.TimeS);
        NetworkRun noLoss = new(Lumped.Of(capacity, c.In("T0_C"), c.In("T_inf_C"), new LinearLaw(0), power));
        Assert.True(noLoss.Run(1e6, new Goal(0, c.In("T_C"), true)));
        c.CheckValues("no_loss_s", noLoss.TimeS);
    }

    private static void OneFace(PhysicsCase c)
    {
        double area = c.In("side_m") * c.In("side_m");
        double capacity = c.In("rho") * c.In("cp") * c.In("thickness_m") * area;
        ThermalNetwork network = Lumped.Of(
            capacity, c.In("start_C"), c.In("ambient_C"), new PowerLaw(c.In("c") * area, c.In("n")), c.In("heater_W"),
            c.In("target_C"), new RadiationLaw(c.In("emissivity") * area));
        NetworkRun run = new(network);
        Assert.True(run.Run(1e6, new Goal(0, c.In("target_C"), true)));
        c.CheckValues("time_s", run.TimeS);
        run.Run(run.TimeS + 1);
        c.CheckValues("hold_W", run.PowerW[0]);
        c.CheckValues("hold_W", SteadyState.Of(network).PowerW[0]);
        c.CheckValues("no_loss_time_s", capacity * (c.In("target_C") - c.In("start_C")) / c.In("heater_W"));
    }

    private static void CoolDown(PhysicsCase c)
    {
        double n = c.In("n"), start = c.In("dT0_K");
        double coefficient = c.In("h_initial") * c.In("area_m2") / Math.Pow(start, n);
        NetworkRun run = new(Lumped.Of(c.In("C_J_K"), start, 0, new PowerLaw(coefficient, n)));
        Assert.True(run.Run(1e7, new Goal(0, c.In("dT_K"), false)));
        c.CheckValues("time_s", run.TimeS);
    }
}
