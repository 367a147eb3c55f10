using System.Collections.Immutable;
using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>
/// Reads <c>[[material]]</c> tables: families the bundled list lacks, or whose numbers the user knows better. A table
/// with the name of a bundled family starts from its numbers.
/// </summary>
public static class MaterialReader
{
    private const string StatedByUser = "stated in the study file";

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
        Material start = bundled ?? new Material("", new HeatLimits(0, 0, 0), 0, 0, "");
        HeatLimits needs = new(
            nozzle ?? start.Needs.NozzleC, bed ?? start.Needs.BedC, chamber ?? start.Needs.ChamberC);
        Material read = start with
        {
            Name = name ?? "",
            Needs = needs,
            UsualC = Usual(table, needs, start.UsualC),
            Shrinkage = table.Number("shrinkage", MaterialRanges.Shrinkage) ?? start.Shrinkage,
            BrimMm = table.Number("brim_mm", MaterialRanges.Brim) ?? start.BrimMm,
            Source = table.Text("source") ?? StatedByUser,
        };
        read = Behaviour(table, read);
        return name is null || (nozzle is null && bundled is null) ? null : read;
    }

    private static Material Behaviour(TomlTable table, Material start) => start with
    {
        DensityGCm3 = table.Number("density_g_cm3", MaterialRanges.Density) ?? start.DensityGCm3,
        SpecificHeatJKgK = table.Number("specific_heat_j_kg_k", MachineRanges.SpecificHeat) ?? start.SpecificHeatJKgK,
        SpoolG = table.Number("spool_g", MaterialRanges.Spool) ?? start.SpoolG,
        VentAboveC = table.Number("vent_above_c", MachineRanges.Chamber) ?? start.VentAboveC,
        SofteningC = table.Number("softening_c", MaterialRanges.Softening) ?? start.SofteningC,
        MouldShrinkage = table.Number("mould_shrinkage", MaterialRanges.Shrinkage)
            ?? Math.Max(start.MouldShrinkage, start.Shrinkage),
        ReleaseC = table.Number("release_c", MachineRanges.Bed) ?? start.ReleaseC,
        MinimumLayerTimeS = table.Number("minimum_layer_time_s", MachineRanges.Time) ?? start.MinimumLayerTimeS,
        MeltRateFactor = table.Number("melt_rate_factor", MaterialRanges.MeltRateFactor) ?? start.MeltRateFactor,
        PricePerKg = table.Table("price_per_kg") is { } price ? PriceReader.Read(price) : start.PricePerKg,
        Drying = table.Table("drying") is { } drying ? DryingOf(drying) : start.Drying,
        Fumes = table.Text("fumes") ?? start.Fumes,
        LowEmission = table.Flag("low_emission") ?? start.LowEmission,
    };

    /// <summary>
    /// Where it is not stated, what is usual for the family, but never below what is needed.
    /// </summary>
    private static HeatLimits Usual(TomlTable table, HeatLimits needs, HeatLimits family)
    {
        return new HeatLimits(
            Of("usual_nozzle_c", MachineRanges.Nozzle, needs.NozzleC, family.NozzleC),
            Of("usual_bed_c", MachineRanges.Bed, needs.BedC, family.BedC),
            Of("usual_chamber_c", MachineRanges.Chamber, needs.ChamberC, family.ChamberC));

        double Of(string key, NumberRange range, double needed, double usual)
        {
            if (table.Number(key, range) is not { } stated) return Math.Max(needed, usual);
            if (stated < needed)
                table.Refuse(key, $"{stated} °C is below the {needed} °C that the material needs at least.");
            return stated;
        }
    }

    private static Drying? DryingOf(TomlTable table)
    {
        double? temperature = table.Number("temperature_c", MaterialRanges.DryingTemperature, required: true);
        double? hours = table.Number("hours", MaterialRanges.DryingHours, required: true);
        return temperature is { } c && hours is { } h ? new Drying(c, h) : null;
    }
}
