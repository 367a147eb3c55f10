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

    // A setting counts as held to this, K.
    private const double HeldToK = 1e-3;

    // Correlations and walls that nobody measured: a stated rise may be this much above the computed one.
    private const double Doubt = 1.25;

    public static HeatLimits Judge(MachineHeat heat, out HeatReach reach)
    {
        HeatLimits needs = heat.Material.Needs;
        bool isPassive = heat.Chamber.IsClosed && heat.Machine.Heating?.Chamber is null;
        double?[] ceiling = [.. Enum.GetValues<HeatZone>().Select(z => Ceiling(heat, z, needs))];
        HeatLimits settings = SettingsOf(heat, ceiling);
        if (isPassive) ceiling[(int)HeatZone.Chamber] = Steady(heat, settings, HeatZone.Chamber);

        var zones = ImmutableArray.CreateBuilder<ZoneReach>(3);
        List<string> sentences = [];
        foreach (HeatZone zone in Enum.GetValues<HeatZone>())
        {
            bool passive = isPassive && zone == HeatZone.Chamber;
            ZoneReach one = Join(heat, zone, Of(needs, zone), ceiling[(int)zone], passive);
            zones.Add(one);
            if (!one.Reaches) sentences.Add(Sentence(heat, one, isPassive));
        }
        reach = new HeatReach(zones.ToImmutable(), [.. sentences]);
        return settings;
    }

    // With this heater on without end and the others at what the material needs; null where it is not known. What a bed
    // does to a chamber without a heater depends on its setting, which is chosen later.
    private static double? Ceiling(MachineHeat heat, HeatZone zone, HeatLimits needs)
    {
        Heating? heating = heat.Machine.Heating;
        const double endless = double.PositiveInfinity;
        bool isOpen = heat.Chamber.IsVented || heat.Machine.Enclosed == false;
        return zone switch
        {
            HeatZone.Nozzle when heating?.Nozzle is not null => Steady(heat, needs with { NozzleC = endless }, zone),
            HeatZone.Bed when heating?.Bed is not null => Steady(heat, needs with { BedC = endless }, zone),
            HeatZone.Chamber when heat.Chamber.IsClosed && heating?.Chamber is not null =>
                Steady(heat, needs with { ChamberC = endless }, zone),
            HeatZone.Chamber when !heat.Chamber.IsClosed && isOpen => heat.RoomC,
            _ => null,
        };
    }

    // The usual temperatures where each is reached with ease, and all of them at once; else the least ones.
    private static HeatLimits SettingsOf(MachineHeat heat, double?[] ceiling)
    {
        HeatLimits needs = heat.Material.Needs, usual = heat.Material.UsualC;
        HeatLimits raised = new(Raised(HeatZone.Nozzle), Raised(HeatZone.Bed), Raised(HeatZone.Chamber));
        if (heat.Machine.Heating is not { } heating) return raised;
        bool holds = (heating.Nozzle is null || Holds(HeatZone.Nozzle)) && (heating.Bed is null || Holds(HeatZone.Bed))
            && (heating.Chamber is null || !heat.Chamber.IsClosed || Holds(HeatZone.Chamber));
        return holds ? raised : needs;

        double Raised(HeatZone zone)
        {
            double wish = Of(usual, zone);
            bool withEase = (ceiling[(int)zone] is not { } c || c >= wish + ComfortK)
                && (heat.Machine.HeatsTo is not { } stated || Of(stated, zone) >= wish);
            bool isHeated = zone != HeatZone.Chamber
                || (heat.Chamber.IsClosed && heat.Machine.Heating?.Chamber is not null);
            return withEase && isHeated ? wish : Of(needs, zone);
        }

        bool Holds(HeatZone zone) => Steady(heat, raised, zone) >= Of(raised, zone) - HeldToK;
    }

    private static double Steady(MachineHeat heat, HeatLimits settings, HeatZone zone)
    {
        MachineNetwork network = heat.NetworkAt(settings);
        int node = zone switch
        {
            HeatZone.Nozzle => network.Nozzle,
            HeatZone.Bed => network.Bed,
            _ => network.ChamberAir,
        };
        return SteadyState.Of(network.Network).TemperatureC[node];
    }

    private static double Of(HeatLimits limits, HeatZone zone) => zone switch
    {
        HeatZone.Nozzle => limits.NozzleC,
        HeatZone.Bed => limits.BedC,
        _ => limits.ChamberC,
    };

    private static ZoneReach Join(MachineHeat heat, HeatZone zone, double needed, double? ceiling, bool passive)
    {
        double? stated = heat.Machine.HeatsTo is { } limits ? Of(limits, zone) : null;
        if (needed <= heat.RoomC) return new ZoneReach(zone, needed, ceiling ?? stated, ReachSource.Unknown);
        bool open = zone == HeatZone.Chamber && !heat.Chamber.IsClosed;
        ReachSource computed = open ? ReachSource.OpenAir : ReachSource.SteadyState;
        // What is stated as 0 stays at room temperature.
        if (stated is { } low && low < heat.RoomC) stated = heat.RoomC;
        if (ceiling is not { } top)
            return new ZoneReach(zone, needed, stated, stated is null ? ReachSource.Unknown : ReachSource.Stated);
        if (open || stated is not { } says) return new ZoneReach(zone, needed, top, computed);
        bool believed = passive && says - heat.RoomC <= Doubt * (top - heat.RoomC);
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
