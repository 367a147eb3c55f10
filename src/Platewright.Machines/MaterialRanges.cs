using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>What a material table may say besides temperatures.</summary>
internal static class MaterialRanges
{
    /// <summary>Mould shrinkage of filament families reaches 2.5 % (data sheets); ten is far beyond.</summary>
    public static readonly NumberRange Shrinkage = new(0, 0.1);

    public static readonly NumberRange Brim = new(0, 100, "mm");

    /// <summary>Foamed filament has 0.4 g/cm³, with tungsten 8 (data sheets, from memory).</summary>
    public static readonly NumberRange Density = NumberRange.Positive(20, "g/cm³");

    public static readonly NumberRange Spool = NumberRange.Positive(1_000_000, "g");

    public static readonly NumberRange Softening = new(0, 400, "°C");

    public static readonly NumberRange MeltRateFactor = NumberRange.Positive(10);

    public static readonly NumberRange DryingTemperature = new(20, 200, "°C");

    public static readonly NumberRange DryingHours = NumberRange.Positive(240, "h");
}
