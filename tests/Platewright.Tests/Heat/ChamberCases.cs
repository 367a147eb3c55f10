using Platewright.Build.Heat.Network;
using Platewright.Tests.Motion;

namespace Platewright.Tests.Heat;

/// <summary>Air and walls, warmed by a heater in the air or by a bed that is held.</summary>
internal static class ChamberCases
{
    private const int AirNode = 0, WallNode = 1, RoomNode = 2, BedNode = 3;

    public static void Check(PhysicsCase c)
    {
        ThermalNetwork network = Network(c);
        NetworkRun run = new(network);
        List<double> air = [], wall = [];
        foreach (double time in c.List("times_s"))
        {
            run.Run(time);
            air.Add(run.TemperatureC[AirNode]);
            wall.Add(run.TemperatureC[WallNode]);
        }
        c.CheckValues("air_C", [.. air]);
        c.CheckValues("wall_C", [.. wall]);
        double[] steady = SteadyState.Of(network).TemperatureC;
        c.CheckValues("steady_air_C", steady[AirNode]);
        if (c.Has("bed_C"))
        {
            c.CheckValues("steady_bed_heat_W", c.In("G_bed_air") * (c.In("bed_C") - steady[AirNode]));
            return;
        }
        c.CheckValues("steady_wall_C", steady[WallNode]);
        Assert.SkipUnless(c.Has("target_air_C"), $"{c.Id}: no target");
        bool reachable = steady[AirNode] > c.In("target_air_C");
        NetworkRun toTarget = new(network);
        if (reachable)
        {
            Assert.True(toTarget.Run(1e7, new Goal(AirNode, c.In("target_air_C"), true)));
            c.CheckValues("time_to_target_s", toTarget.TimeS);
        }
        else c.CheckValues("time_to_target_s", double.PositiveInfinity);
        CheckTimeConstants(c, network, steady);
    }

    // The eigenvalues of the balance that the solver steps with.
    private static void CheckTimeConstants(PhysicsCase c, ThermalNetwork network, double[] at)
    {
        HeatBalance balance = new(network);
        balance.Differentiate(at);
        double ca = network.Nodes[AirNode].CapacityJK, cw = network.Nodes[WallNode].CapacityJK;
        double a = balance.Slopes[AirNode, AirNode] / ca, b = balance.Slopes[AirNode, WallNode] / ca;
        double d = balance.Slopes[WallNode, AirNode] / cw, e = balance.Slopes[WallNode, WallNode] / cw;
        double mean = (a + e) / 2, spread = Math.Sqrt(mean * mean - (a * e - b * d));
        c.CheckValues("slow_time_constant_s", -1 / (mean + spread));
        c.CheckValues("fast_time_constant_s", -1 / (mean - spread));
    }

    private static ThermalNetwork Network(PhysicsCase c)
    {
        double room = c.Has("room_C") ? c.In("room_C") : c.In("start_and_room_C");
        List<ThermalNode> nodes =
        [
            new("air", c.In("C_air_J_K"), room), new("wall", c.In("C_wall_J_K"), room),
            new("room", double.PositiveInfinity, room),
        ];
        List<ThermalLink> links =
        [
            new(AirNode, WallNode, new LinearLaw(c.In("G_air_wall"))),
            new(WallNode, RoomNode, new LinearLaw(c.In("G_wall_room"))),
            new(AirNode, RoomNode, new LinearLaw(c.In("G_leak"))),
        ];
        List<ThermalHeater> heaters = [];
        if (c.Has("bed_C"))
        {
            nodes.Add(new("bed", double.PositiveInfinity, c.In("bed_C")));
            links.Add(new(BedNode, AirNode, new LinearLaw(c.In("G_bed_air"))));
        }
        else heaters.Add(new(AirNode, c.In("heater_W"), double.PositiveInfinity));
        return new([.. nodes], [.. links], [.. heaters], room);
    }
}
