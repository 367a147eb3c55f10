namespace Platewright.Machines;

/// <summary>A filament family: what it needs of a machine, and how it changes the geometry.</summary>
/// <param name="Name">Its usual abbreviation, as PETG.</param>
/// <param name="Needs">Temperatures a machine must reach, °C; a chamber of 0 needs no heating.</param>
/// <param name="Shrinkage">σ: the part is built (1 + σ) times as large, 0 … 0.1.</param>
/// <param name="BrimMm">Width of the brim around what touches the build surface, mm, 0 for none.</param>
/// <param name="Source">Where the numbers come from, or "common practice, no source".</param>
public sealed record Material(string Name, HeatLimits Needs, double Shrinkage, double BrimMm, string Source);
