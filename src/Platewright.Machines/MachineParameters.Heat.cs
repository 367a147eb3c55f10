using Platewright.Formats.Toml;

namespace Platewright.Machines;

public static partial class MachineParameters
{
    private static IEnumerable<MachineParameter> Heat() =>
    [
        OfHeating("supply_w", "what the supply can give", MachineRanges.Power,
            h => h.SupplyW, (h, v) => h with { SupplyW = v }),
        OfHeating("electronics_w", "drawn whenever it is on", MachineRanges.BasePower,
            h => h.ElectronicsW, (h, v) => h with { ElectronicsW = v }),
        OfHeating("motors_w", "drawn by the motors while building", MachineRanges.BasePower,
            h => h.MotorsW, (h, v) => h with { MotorsW = v }),
        .. OfHeater("bed", h => h.Bed, (h, heater) => h with { Bed = heater }),
        .. OfHeater("nozzle", h => h.Nozzle, (h, heater) => h with { Nozzle = heater }),
        .. OfHeater("chamber", h => h.Chamber, (h, heater) => h with { Chamber = heater }),
        OfEnclosure("wall_mm", "thickness of the walls", MachineRanges.Wall,
            e => e.WallMm, (e, v) => e with { WallMm = v }),
        OfEnclosure("wall_conductivity_w_mk", "conductivity of the walls", MachineRanges.Conductivity,
            e => e.WallConductivityWMK, (e, v) => e with { WallConductivityWMK = v }),
        OfEnclosure("wall_capacity_j_m3k", "heat capacity of the walls per volume", MachineRanges.CapacityOfVolume,
            e => e.WallCapacityJM3K, (e, v) => e with { WallCapacityJM3K = v }),
        OfEnclosure("frame_capacity_j_k", "heat capacity of what stands within the walls", MachineRanges.Capacity,
            e => e.FrameCapacityJK, (e, v) => e with { FrameCapacityJK = v }),
        OfEnclosure("air_changes_per_h", "air exchanged with the room", MachineRanges.AirChanges,
            e => e.AirChangesPerHour, (e, v) => e with { AirChangesPerHour = v }),
    ];

    private static IEnumerable<MachineParameter> OfHeater(
        string table, Func<Heating, Heater?> of, Func<Heating, Heater, Heating> with)
    {
        yield return One("power_w", $"power of the {table} heater", MachineRanges.Power,
            h => h.PowerW, (h, v) => h with { PowerW = v });
        yield return One("capacity_j_k", $"heat capacity of the {table}", MachineRanges.Capacity,
            h => h.CapacityJK, (h, v) => h with { CapacityJK = v });
        // A chamber's heater sits in the air and has no area of its own.
        if (table == "chamber") yield break;
        yield return One("area_m2", $"area of the {table} that gives off heat", MachineRanges.Area,
            h => h.AreaM2, (h, v) => h with { AreaM2 = v });

        MachineParameter One(
            string key, string meaning, NumberRange allowed,
            Func<Heater, double> value, Func<Heater, double, Heater> withValue) => OfHeating(
            $"{table}.{key}", meaning, allowed, h => of(h) is { } heater ? value(heater) : null,
            (h, v) => with(h, withValue(of(h)!, v)));
    }

    private static MachineParameter OfEnclosure(
        string key, string meaning, NumberRange allowed,
        Func<Enclosure, double> of, Func<Enclosure, double, Enclosure> with) => OfHeating(
        $"enclosure.{key}", meaning, allowed, h => h.Enclosure is { } walls ? of(walls) : null,
        (h, v) => h with { Enclosure = with(h.Enclosure!, v) });

    private static MachineParameter OfHeating(
        string key, string meaning, NumberRange allowed,
        Func<Heating, double?> of, Func<Heating, double, Heating> with) => new(
        $"heating.{key}", meaning, allowed, m => m.Heating is { } heating ? of(heating) : null,
        (m, v) => m with { Heating = with(Stated(m, m.Heating, key), v) });
}
