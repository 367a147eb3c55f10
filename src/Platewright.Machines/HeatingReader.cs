using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Reads the <c>[heating]</c> table with its heaters and the enclosure.</summary>
internal static class HeatingReader
{
    /// <summary>Aluminium, J/(kg·K): what heated plates and blocks are mostly made of.</summary>
    private const double AluminiumJKgK = 900;

    /// <param name="table">The table.</param>
    /// <param name="volume">The build volume: a bed gives heat from an area as large as the build surface.</param>
    public static Heating Read(TomlTable table, BuildVolume? volume) => new()
    {
        SupplyW = table.Number("supply_w", MachineRanges.Power),
        ElectronicsW = table.Number("electronics_w", MachineRanges.BasePower) ?? 0,
        MotorsW = table.Number("motors_w", MachineRanges.BasePower) ?? 0,
        Bed = table.Table("bed") is { } bed
            ? Surface(bed, capacityJK: null, volume is null ? 0 : BuildSurface.AreaM2(volume))
            : null,
        Nozzle = table.Table("nozzle") is { } nozzle
            ? Surface(nozzle, HeaterDefaults.NozzleCapacityJK, HeaterDefaults.NozzleAreaM2)
            : null,
        Chamber = table.Table("chamber") is { } chamber
            ? Heater(chamber, HeaterDefaults.ChamberCapacityJK)
            : null,
        Enclosure = table.Table("enclosure") is { } walls ? Enclosure(walls, volume) : null,
    };

    /// <summary>A heater with a surface of its own.</summary>
    private static Heater? Surface(TomlTable table, double? capacityJK, double areaM2)
    {
        double area = table.Number("area_m2", MachineRanges.Area) ?? areaM2;
        return Heater(table, capacityJK) is { } heater ? heater with { AreaM2 = area } : null;
    }

    private static Heater? Heater(TomlTable table, double? capacityJK)
    {
        double? power = table.Number("power_w", MachineRanges.Power, required: true);
        double? capacity = Capacity(table, capacityJK);
        return power is { } p && capacity is { } c ? new Heater(p, c, AreaM2: 0) : null;
    }

    private static double? Capacity(TomlTable table, double? otherwise)
    {
        bool byMass = table.Has("mass_kg");
        if (byMass) table.RefuseIfPresent("capacity_j_k", "mass_kg already gives the heat capacity; keep one.");
        else table.RefuseIfPresent("specific_heat_j_kg_k", "belongs to mass_kg, which is not stated here.");
        double? stated = table.Number("capacity_j_k", MachineRanges.Capacity);
        double? mass = table.Number("mass_kg", MachineRanges.Mass);
        double specific = table.Number("specific_heat_j_kg_k", MachineRanges.SpecificHeat) ?? AluminiumJKgK;
        if (stated is null && !byMass && !table.Has("capacity_j_k") && otherwise is null)
            table.Refuse("capacity_j_k", $"missing; expected a number {MachineRanges.Capacity}, or mass_kg in its place.");
        return byMass ? mass * specific : stated ?? otherwise;
    }

    private static Enclosure? Enclosure(TomlTable table, BuildVolume? volume)
    {
        const string What = "inner width, depth and height";
        var size = table.Numbers("size_mm", 3, MachineRanges.Size, What, required: true);
        double? wall = table.Number("wall_mm", MachineRanges.Wall, required: true);
        Enclosure usual = new(1, 1, 1, 1);
        Enclosure read = usual with
        {
            WallConductivityWMK = table.Number("wall_conductivity_w_mk", MachineRanges.Conductivity)
                ?? usual.WallConductivityWMK,
            WallCapacityJM3K = table.Number("wall_capacity_j_m3k", MachineRanges.CapacityOfVolume)
                ?? usual.WallCapacityJM3K,
            AirChangesPerHour = table.Number("air_changes_per_h", MachineRanges.AirChanges) ?? usual.AirChangesPerHour,
            CanBeVented = table.Flag("can_be_vented") ?? usual.CanBeVented,
        };
        double? frame = table.Number("frame_capacity_j_k", MachineRanges.Capacity);
        if (size is not { } inner || wall is not { } thick) return null;
        if (volume is not null && FreeSpace.BoundsOf(volume).Size is var needed
            && (inner[0] < needed.X || inner[1] < needed.Y || inner[2] < needed.Z))
        {
            table.Refuse(
                "size_mm", $"smaller than the build volume inside it, {needed.X} × {needed.Y} × {needed.Z} mm.");
        }
        return read with
        {
            WidthMm = inner[0],
            DepthMm = inner[1],
            HeightMm = inner[2],
            WallMm = thick,
            FrameCapacityJK = frame ?? Machines.Enclosure.UsualFrameJK(inner[0], inner[1], inner[2]),
        };
    }
}
