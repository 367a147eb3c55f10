namespace Platewright.Machines;

/// <summary>A filament family: what it needs of a machine, and how it behaves while it is built.</summary>
/// <param name="Name">Its usual abbreviation, as PETG.</param>
/// <param name="Needs">Temperatures a machine must reach, °C; a chamber of 0 needs no heating.</param>
/// <param name="Shrinkage">σ: the part is built (1 + σ) times as large, 0 … 0.1.</param>
/// <param name="BrimMm">Width of the brim around what touches the build surface, mm, 0 for none.</param>
/// <param name="Source">Where the numbers come from, or "common practice, no source".</param>
public sealed record Material(string Name, HeatLimits Needs, double Shrinkage, double BrimMm, string Source)
{
    /// <summary>Temperatures it is usually built at, °C: what warm-up and energy are estimated for. Not below the needs.</summary>
    public HeatLimits UsualC { get; init; } = Needs;

    /// <summary>Density of the solid, g/cm³.</summary>
    public double DensityGCm3 { get; init; } = 1.2;

    /// <summary>Specific heat of the solid, J/(kg·K).</summary>
    public double SpecificHeatJKgK { get; init; } = 1500;

    /// <summary>Filament on one spool, g.</summary>
    public double SpoolG { get; init; } = 1000;

    /// <summary>Above this chamber temperature the part goes soft: an enclosed machine must be opened, °C; null for none.</summary>
    public double? VentAboveC { get; init; }

    /// <summary>Where it stops carrying load, °C: glass transition, or for semicrystalline families the usual limit.</summary>
    public double SofteningC { get; init; } = 60;

    /// <summary>
    /// Shrinkage of a moulded piece, which is what warps it, 0 … 0.1; also where none is compensated. The middle of the
    /// range in data sheets.
    /// </summary>
    public double MouldShrinkage { get; init; } = Shrinkage;

    /// <summary>At or below this bed temperature parts let go, °C.</summary>
    public double ReleaseC { get; init; } = 40;

    /// <summary>Least time a layer needs to set before the next, s; 0 for none.</summary>
    public double MinimumLayerTimeS { get; init; }

    /// <summary>Melt rate relative to PLA: multiplies the machine's.</summary>
    public double MeltRateFactor { get; init; } = 1;

    /// <summary>Price of a kilogram; null where not known.</summary>
    public Price? PricePerKg { get; init; }

    /// <summary>Drying before use; null where not needed.</summary>
    public Drying? Drying { get; init; }

    /// <summary>
    /// Whether it counts among the families that give off least when melted; false where nobody says so. Never a statement that a
    /// room needs no ventilation.
    /// </summary>
    public bool LowEmission { get; init; }

    /// <summary>What it gives off and what air it wants, as a sentence.</summary>
    public string? Fumes { get; init; }
}

/// <summary>How to dry a filament: °C and hours.</summary>
public sealed record Drying(double TemperatureC, double Hours);
