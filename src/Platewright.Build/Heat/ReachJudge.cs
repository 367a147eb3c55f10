using System.Collections.Immutable;
using Platewright.Build.Heat.Network;
using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>
/// Joins what a machine states with the steady state of its heaters. The lower counts, but for a chamber that the bed
/// alone warms: there a stated temperature is believed while the steady state comes near it.
/// </summary>
internal static class ReachJudge
{
    // The usual temperature is run where the ceiling is this much above it, K; near it warm-up takes ever longer.
    private const double ComfortK = 3;

    // Correlations and walls that nobody measured: a stated rise may be this much above the computed one.
    private const double Doubt = 1.25;

    public static HeatLimits Judge(MachineHeat heat, out HeatReach reach)
    {
        HeatLimits needs = heat.Material.Needs, usual = heat.Material.UsualC;
        HeatLimits? stated = heat.Machine.HeatsTo;
        Heating? heating = heat.Machine.Heating;
        double[] set = [needs.NozzleC, needs.BedC, needs.ChamberC];
        double[] wish = [usual.NozzleC, usual.BedC, usual.ChamberC];
        double?[] says = [stated?.NozzleC, stated?.BedC, stated?.ChamberC];
        Heater?[] heaters = [heating?.Nozzle, heating?.Bed, heat.Chamber.IsClosed ? heating?.Chamber : null];

        var zones = ImmutableArray.CreateBuilder<ZoneReach>(3);
        List<string> sentences = [];
        foreach (HeatZone zone in Enum.GetValues<HeatZone>())
        {
            int z = (int)zone;
            double? ceiling = Ceiling(heat, zone, heaters[z], set);
            bool passive = zone == HeatZone.Chamber && heaters[z] is null;
            ZoneReach one = Join(heat, zone, set[z], says[z], ceiling, passive);
            zones.Add(one);
            if (!one.Reaches) sentences.Add(Sentence(heat, one, passive));
            bool withEase = (ceiling is not { } c || c >= wish[z] + ComfortK) && (says[z] is not { } s || s >= wish[z]);
            if (withEase && !passive) set[z] = wish[z];
        }
        reach = new HeatReach(zones.ToImmutable(), [.. sentences]);
        return new HeatLimits(set[0], set[1], set[2]);
    }

    // With this heater on without end, those served before it at their settings, and the others at theirs.
    private static double? Ceiling(MachineHeat heat, HeatZone zone, Heater? heater, double[] set)
    {
        if (zone == HeatZone.Chamber)
        {
            bool isOpen = heat.Chamber.IsVented || heat.Machine.Enclosed == false;
            if (!heat.Chamber.IsClosed) return isOpen ? heat.RoomC : null;
        }
        else if (heater is null)
        {
            return null;
        }
        double[] trial = [.. set];
        if (heater is not null) trial[(int)zone] = double.PositiveInfinity;
        MachineNetwork network = heat.NetworkAt(new HeatLimits(trial[0], trial[1], trial[2]));
        int node = zone switch
        {
            HeatZone.Nozzle => network.Nozzle,
            HeatZone.Bed => network.Bed,
            _ => network.ChamberAir,
        };
        return SteadyState.Of(network.Network).TemperatureC[node];
    }

    private static ZoneReach Join(
        MachineHeat heat, HeatZone zone, double needed, double? stated, double? ceiling, bool passive)
    {
        if (needed <= heat.RoomC) return new ZoneReach(zone, needed, ceiling ?? stated, ReachSource.Unknown);
        bool open = zone == HeatZone.Chamber && !heat.Chamber.IsClosed;
        ReachSource computed = open ? ReachSource.OpenAir : ReachSource.SteadyState;
        // What is stated as 0 stays at room temperature.
        if (stated is { } low && low < heat.RoomC) stated = heat.RoomC;
        if (ceiling is not { } top)
            return new ZoneReach(zone, needed, stated, stated is null ? ReachSource.Unknown : ReachSource.Stated);
        if (stated is not { } says) return new ZoneReach(zone, needed, top, computed);
        bool believed = passive && !open && says - heat.RoomC <= Doubt * (top - heat.RoomC);
        return says <= top || believed
            ? new ZoneReach(zone, needed, says, ReachSource.Stated)
            : new ZoneReach(zone, needed, top, computed);
    }

    private static string Sentence(MachineHeat heat, ZoneReach zone, bool passive)
    {
        string needs = $"{heat.Material.Name} needs {zone.NeededC:0} °C";
        string reached = $"{Math.Floor(zone.ReachedC ?? 0):0} °C";
        return (zone.Source, zone.Zone) switch
        {
            (ReachSource.Stated, HeatZone.Chamber) => $"the chamber reaches {reached}; {needs}",
            (ReachSource.Stated, HeatZone.Bed) => $"the bed heats to {reached}; {needs}",
            (ReachSource.Stated, _) => $"the nozzle heats to {reached}; {needs}",
            (ReachSource.OpenAir, _) => $"the air around the part stays at {reached}; {needs}",
            (_, HeatZone.Chamber) when passive => $"the bed warms the closed chamber to {reached}; {needs}",
            (_, HeatZone.Chamber) => $"the chamber stalls at {reached}; {needs}",
            (_, HeatZone.Bed) => $"the bed stalls at {reached}; {needs}",
            _ => $"the nozzle stalls at {reached}; {needs}",
        };
    }
}
