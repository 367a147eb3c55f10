namespace Platewright.Sizing.Mixing;

/// <summary>What the mix must stay within; null for no limit. Machines already there count too.</summary>
/// <param name="Budget">Sum of prices, money.</param>
/// <param name="FloorM2">Sum of floor areas, m².</param>
/// <param name="PowerW">Sum of peak powers on the circuit, W.</param>
/// <param name="Machines">Count of all machines.</param>
public sealed record MixLimits(
    decimal? Budget = null, double? FloorM2 = null, double? PowerW = null, int? Machines = null);

/// <summary>One of the limits.</summary>
public enum MixLimit
{
    /// <summary>The sum of prices.</summary>
    Budget,

    /// <summary>The sum of floor areas.</summary>
    Floor,

    /// <summary>The sum of peak powers.</summary>
    Power,

    /// <summary>The count of machines.</summary>
    Machines,

    /// <summary>The greatest counts of the kinds.</summary>
    Counts,
}
