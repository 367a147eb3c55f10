namespace Platewright.Machines;

/// <summary>The end that melts and lays the filament down.</summary>
public sealed record Extruder
{
    /// <summary>Bore of the nozzle, mm.</summary>
    public double NozzleBoreMm { get; init; } = 0.4;

    /// <summary>Diameter of the filament it takes, mm.</summary>
    public double FilamentMm { get; init; } = 1.75;

    /// <summary>
    /// Largest melt rate for PLA, mm³/s: a material's own factor multiplies it. Null where the file states none; then
    /// nothing is limited by it.
    /// </summary>
    public double? MeltRateMm3S { get; init; }

    /// <summary>Filament pulled back before a travel across open space, mm.</summary>
    public double RetractionMm { get; init; }

    /// <summary>Speed of pulling back and of pushing forward again, mm/s of filament.</summary>
    public double RetractionSpeedMmS { get; init; } = 30;

    /// <summary>Laid down once before each build to fill the nozzle, mm³.</summary>
    public double PrimeMm3 { get; init; }
}
