using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>What a machine or material file may say: generous, but a slip of the keyboard is outside.</summary>
internal static class MachineRanges
{
    /// <summary>Up to 100 m: the largest building machines are far smaller.</summary>
    public static readonly NumberRange Size = NumberRange.Positive(100_000, "mm");

    public static readonly NumberRange Coordinate = new(-100_000, 100_000, "mm");

    public static readonly NumberRange Margin = new(0, 10_000, "mm");

    /// <summary>
    /// No filament melts below 60 °C (common practice, no source); 600 °C is beyond every thermoplastic.
    /// </summary>
    public static readonly NumberRange Nozzle = new(60, 600, "°C");

    public static readonly NumberRange Bed = new(0, 300, "°C");

    public static readonly NumberRange Chamber = new(0, 300, "°C");

    public static readonly NumberRange Price = new(0, 100_000_000);

    public static readonly NumberRange Speed = NumberRange.Positive(10_000, "mm/s");

    public static readonly NumberRange Acceleration = NumberRange.Positive(1_000_000, "mm/s²");

    public static readonly NumberRange ContourTolerance = NumberRange.Positive(10, "mm");

    /// <summary>Mould shrinkage of filament families reaches 2.5 % (data sheets); ten is far beyond.</summary>
    public static readonly NumberRange Shrinkage = new(0, 0.1);

    public static readonly NumberRange Brim = new(0, 100, "mm");
}
