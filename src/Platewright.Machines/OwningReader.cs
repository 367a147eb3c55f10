using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Reads <c>[upkeep]</c> and <c>[floor]</c>: what owning a machine takes besides its price and footprint.</summary>
internal static class OwningReader
{
    public static Upkeep Upkeep(TomlTable table) => new()
    {
        LifeYears = table.Number("life_years", MachineRanges.Life),
        ResidualShare = table.Number("residual_share", MachineRanges.Residual),
        AssembleH = table.Number("assemble_h", MachineRanges.Work),
        TuneHPerYear = table.Number("tune_h_per_year", MachineRanges.Work),
        MaintainHPer100H = table.Number("maintain_h_per_100h", MachineRanges.WorkPer100H),
        WearPer100H = table.Number("wear_per_100h", MachineRanges.Price),
    };

    public static FloorInUse Floor(TomlTable table) => new()
    {
        DoorMm = table.Number("door_mm", MachineRanges.Margin) ?? 0,
        BedTravelMm = table.Number("bed_travel_mm", MachineRanges.Margin) ?? 0,
        SpoolMm = table.Number("spool_mm", MachineRanges.Margin) ?? 0,
    };
}
