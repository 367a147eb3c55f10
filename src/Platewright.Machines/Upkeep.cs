namespace Platewright.Machines;

/// <summary>
/// What owning a machine takes besides its price. Null where the file does not say: then what the study assumes for all machines
/// holds.
/// </summary>
public sealed record Upkeep
{
    /// <summary>How long it is used before it is sold or scrapped, years.</summary>
    public double? LifeYears { get; init; }

    /// <summary>What is left of its price then, 0 … 1.</summary>
    public double? ResidualShare { get; init; }

    /// <summary>To assemble it and get it going, once, h of somebody's time.</summary>
    public double? AssembleH { get; init; }

    /// <summary>To tune and adjust it, h of somebody's time a year.</summary>
    public double? TuneHPerYear { get; init; }

    /// <summary>To maintain it, h of somebody's time for every 100 h of building.</summary>
    public double? MaintainHPer100H { get; init; }

    /// <summary>Worn parts for every 100 h of building, in the currency of the price.</summary>
    public double? WearPer100H { get; init; }
}
