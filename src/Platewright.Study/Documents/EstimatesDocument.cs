using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>What <c>estimate --json</c> says. Keys are the snake_case of these names.</summary>
public sealed record EstimatesDocument(IReadOnlyList<EstimateRowDocument> Estimates, IReadOnlyList<UnusableDocument> Unusable)
{
    [JsonPropertyOrder(-1)]
    public int Format { get; init; } = 1;
}

/// <summary>One part, or one motion program, on one machine.</summary>
/// <param name="Recipe">Null for a motion program, which needs none.</param>
/// <param name="BoreMm">Bore of the nozzle; beads and layers of the recipe are in proportion to it.</param>
/// <param name="FilamentMm">Length of filament used up.</param>
/// <param name="RelativeError">
/// Half-width of the 99 % interval of the total time that comes from planning only some of the layers.
/// </param>
/// <param name="TimeError">How far the model may be off besides, as shares of the total time, 95 %.</param>
/// <param name="EnergyError">The same for energy.</param>
/// <param name="Reaches">Whether the machine reaches the temperatures of the material.</param>
/// <param name="Notes">Sentences: what is not counted, what to watch for.</param>
public sealed record EstimateRowDocument(
    string File, string? Part, string Machine, string? Recipe, double BoreMm, string Material, int Layers,
    TimeDocument TimeS, double MaterialMm3, double FilamentMm, double MassG, EnergyDocument EnergyKwh, double PeakPowerW, double RelativeError,
    ErrorDocument TimeError, ErrorDocument EnergyError, bool Reaches, double SupportMm3, IReadOnlyList<string> Notes);

/// <summary>Seconds by what they are for; they add up to the total.</summary>
/// <param name="Extruding">Of a motion program in place of walls, solid faces, infill, support and brim.</param>
public sealed record TimeDocument(
    double Total, double WarmUp,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Walls,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? SolidFaces,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Infill,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Support,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Brim,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? Extruding,
    double Travel, double Waiting, double Changes, double Release);

/// <summary>Electrical energy, kWh, by what draws it; it adds up to the total. All 0 where a machine describes no heaters.</summary>
public sealed record EnergyDocument(double Total, double WarmUp, double Hold, double Motion, double Base);

/// <param name="Low">Share below the estimate, negative.</param>
/// <param name="High">Share above it.</param>
/// <param name="Source">prior where no past jobs are known, log where some are.</param>
public sealed record ErrorDocument(double Low, double High, string Source);
