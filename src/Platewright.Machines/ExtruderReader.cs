using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>Reads the <c>[extruder]</c> and <c>[handling]</c> tables; what they leave out keeps its default.</summary>
internal static class ExtruderReader
{
    public static Extruder Read(TomlTable table)
    {
        Extruder usual = new();
        return new Extruder
        {
            NozzleBoreMm = table.Number("nozzle_bore_mm", MachineRanges.Bore) ?? usual.NozzleBoreMm,
            FilamentMm = table.Number("filament_mm", MachineRanges.Filament) ?? usual.FilamentMm,
            MeltRateMm3S = table.Number("melt_rate_mm3_s", MachineRanges.MeltRate),
            RetractionMm = table.Number("retraction_mm", MachineRanges.Retraction) ?? usual.RetractionMm,
            RetractionSpeedMmS =
                table.Number("retraction_speed_mm_s", MachineRanges.Speed) ?? usual.RetractionSpeedMmS,
            PrimeMm3 = table.Number("prime_mm3", MachineRanges.Extruded) ?? usual.PrimeMm3,
        };
    }

    public static Handling Handling(TomlTable table) => new()
    {
        StartS = table.Number("start_s", MachineRanges.Time) ?? 0,
        MaterialChangeS = table.Number("material_change_s", MachineRanges.Time) ?? 0,
        PurgeMm3 = table.Number("purge_mm3", MachineRanges.Extruded) ?? 0,
    };
}
