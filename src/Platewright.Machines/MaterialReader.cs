using System.Collections.Immutable;
using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>
/// Reads <c>[[material]]</c> tables: families the bundled list lacks, or whose numbers the user knows better. A table
/// with the name of a bundled family starts from its numbers.
/// </summary>
public static class MaterialReader
{
    /// <summary>Reads all of them; what is wrong is noted in the file's errors.</summary>
    public static ImmutableArray<Material> Read(ImmutableArray<TomlTable> tables)
    {
        List<Material> own = [];
        foreach (TomlTable table in tables)
        {
            if (Read(table) is not { } material) continue;
            if (own.Any(m => string.Equals(m.Name, material.Name, StringComparison.OrdinalIgnoreCase)))
                table.Refuse("name", $"a material called \"{material.Name}\" is already given above.");
            own.Add(material);
        }
        return [.. own];
    }

    private static Material? Read(TomlTable table)
    {
        string? name = table.Text("name", required: true);
        Material? bundled = name is null ? null : MaterialCatalog.Find(name);
        double? nozzle = table.Number("nozzle_c", MachineRanges.Nozzle, required: bundled is null);
        double? bed = table.Number("bed_c", MachineRanges.Bed);
        double? chamber = table.Number("chamber_c", MachineRanges.Chamber);
        double? shrinkage = table.Number("shrinkage", MachineRanges.Shrinkage);
        double? brim = table.Number("brim_mm", MachineRanges.Brim);
        string source = table.Text("source") ?? "stated in the study file";
        if (name is null || (nozzle ?? bundled?.Needs.NozzleC) is not { } needed) return null;
        HeatLimits needs = new(needed, bed ?? bundled?.Needs.BedC ?? 0, chamber ?? bundled?.Needs.ChamberC ?? 0);
        return new Material(
            name, needs, shrinkage ?? bundled?.Shrinkage ?? 0, brim ?? bundled?.BrimMm ?? 0, source);
    }
}
