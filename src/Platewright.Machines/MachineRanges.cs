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

    /// <summary>A machine used for no time at all has no price a month.</summary>
    public static readonly NumberRange Life = NumberRange.Positive(100, "years");

    public static readonly NumberRange Residual = new(0, 1);

    public static readonly NumberRange Work = new(0, 10_000, "h");

    /// <summary>More care than use is a slip of the keyboard.</summary>
    public static readonly NumberRange WorkPer100H = new(0, 100, "h");

    /// <summary>Sound pressure level beside the machine: from silence to a jet.</summary>
    public static readonly NumberRange Noise = new(0, 140, "dB");

    public static readonly NumberRange Speed = NumberRange.Positive(10_000, "mm/s");

    public static readonly NumberRange Acceleration = NumberRange.Positive(1_000_000, "mm/s²");

    public static readonly NumberRange Jerk = NumberRange.Positive(1e9, "mm/s³");

    public static readonly NumberRange ContourTolerance = NumberRange.Positive(10, "mm");

    public static readonly NumberRange Bore = NumberRange.Positive(10, "mm");

    public static readonly NumberRange Filament = NumberRange.Positive(20, "mm");

    public static readonly NumberRange MeltRate = NumberRange.Positive(10_000, "mm³/s");

    public static readonly NumberRange Retraction = new(0, 100, "mm");

    public static readonly NumberRange Extruded = new(0, 1_000_000, "mm³");

    /// <summary>Up to a day.</summary>
    public static readonly NumberRange Time = new(0, 86_400, "s");

    public static readonly NumberRange Power = NumberRange.Positive(1_000_000, "W");

    public static readonly NumberRange BasePower = new(0, 1_000_000, "W");

    public static readonly NumberRange Capacity = NumberRange.Positive(10_000_000, "J/K");

    public static readonly NumberRange Mass = NumberRange.Positive(10_000, "kg");

    /// <summary>Water, the highest of common matter, has 4200 J/(kg·K).</summary>
    public static readonly NumberRange SpecificHeat = NumberRange.Positive(10_000, "J/(kg·K)");

    public static readonly NumberRange Area = NumberRange.Positive(10_000, "m²");

    public static readonly NumberRange Wall = NumberRange.Positive(1_000, "mm");

    public static readonly NumberRange Conductivity = NumberRange.Positive(1_000, "W/(m·K)");

    public static readonly NumberRange CapacityOfVolume = NumberRange.Positive(1e8, "J/(m³·K)");

    public static readonly NumberRange AirChanges = new(0, 10_000, "changes per hour");
}
