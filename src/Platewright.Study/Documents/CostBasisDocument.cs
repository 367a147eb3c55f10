using System.Text.Json.Serialization;

namespace Platewright.Study.Documents;

/// <summary>
/// The physical quantities that an account multiplies by rates, so that whoever changes a rate can reckon every line anew; how is said
/// line by line in <c>docs/sizing.md</c>, and a test holds that quantities times rates are the lines.
/// </summary>
/// <param name="Count">Machines owned.</param>
/// <param name="Price">Of one, without tax.</param>
/// <param name="PrintedPartsEach">What the printed parts of one cost to make; 0 for none.</param>
/// <param name="Load">The work of all of them in a month, if nothing fails.</param>
/// <param name="Upkeep">What the machine's file says in place of the assumptions.</param>
public sealed record CostBasisDocument(int Count, decimal Price, decimal PrintedPartsEach, LoadDocument Load, UpkeepDocument Upkeep);

/// <summary>What work takes on one machine, if nothing fails.</summary>
/// <param name="Builds">Builds, each prepared and taken off by somebody.</param>
/// <param name="Hours">Machine time, h.</param>
/// <param name="EnergyKwh">Electricity, kWh.</param>
/// <param name="PricedFilament">Filament whose material has a price, in money.</param>
/// <param name="UnpricedKg">Filament without one, kg.</param>
public sealed record LoadDocument(double Builds, double Hours, double EnergyKwh, double PricedFilament, double UnpricedKg);

/// <summary>What a machine's file says of owning it; null leaves it to the assumptions.</summary>
/// <param name="WearPer100H">In money; where it is silent the assumption is a share of the price.</param>
public sealed record UpkeepDocument(
    double? LifeYears, double? ResidualShare, double? AssembleH, double? TuneHPerYear,
    [property: JsonPropertyName("maintain_h_per_100h")] double? MaintainHPer100H,
    [property: JsonPropertyName("wear_per_100h")] double? WearPer100H);

public sealed record MachineLoadDocument(string Machine, LoadDocument Load);
