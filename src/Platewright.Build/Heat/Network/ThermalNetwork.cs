using System.Collections.Immutable;

namespace Platewright.Build.Heat.Network;

/// <summary>A body of one temperature.</summary>
/// <param name="Name">What it is, for messages and pictures.</param>
/// <param name="CapacityJK">Heat capacity, J/K; infinite for surroundings, whose temperature is held.</param>
/// <param name="StartC">Temperature at the start, °C.</param>
public sealed record ThermalNode(string Name, double CapacityJK, double StartC)
{
    /// <summary>How fast the capacity grows, W/K: J/K in each second. The material arrives with its own heat.</summary>
    public double GrowthWK { get; init; }

    public bool IsHeld => double.IsPositiveInfinity(CapacityJK);
}

/// <summary>Heat flows from one node to another by a law.</summary>
public sealed record ThermalLink(int From, int To, HeatLaw Law);

/// <summary>
/// A heater with an ideal thermostat: full on below its setting, then exactly what holds the setting, off above it.
/// </summary>
/// <param name="Node">What it heats, and where its thermostat sits.</param>
/// <param name="PowerW">Power when full on, W.</param>
/// <param name="SetC">Setting, °C; infinite to heat without end.</param>
public sealed record ThermalHeater(int Node, double PowerW, double SetC);

/// <summary>
/// Heat capacities joined by conductances, with heaters. <see cref="Heaters"/> come in the order in which the supply
/// serves them: the first takes what it wants, the next of what is left.
/// </summary>
/// <param name="ReferenceC">Temperature from which stored heat counts, °C.</param>
public sealed record ThermalNetwork(
    ImmutableArray<ThermalNode> Nodes, ImmutableArray<ThermalLink> Links, ImmutableArray<ThermalHeater> Heaters,
    double ReferenceC)
{
    /// <summary>What all heaters together may draw, W.</summary>
    public double SupplyW { get; init; } = double.PositiveInfinity;
}
