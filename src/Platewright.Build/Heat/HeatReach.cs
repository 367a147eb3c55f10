using System.Collections.Immutable;
using Platewright.Machines;

namespace Platewright.Build.Heat;

/// <summary>What is heated.</summary>
public enum HeatZone
{
    Nozzle,
    Bed,
    Chamber,
}

/// <summary>Where a temperature that a zone reaches is known from.</summary>
public enum ReachSource
{
    /// <summary>Nothing is stated or described: not judged.</summary>
    Unknown,

    /// <summary>The machine's file says what it heats to.</summary>
    Stated,

    /// <summary>The steady state of the described heaters.</summary>
    SteadyState,

    /// <summary>An open frame, or a chamber opened for this material: the air stays at room temperature.</summary>
    OpenAir,
}

/// <summary>One zone against what a material needs of it.</summary>
/// <param name="Zone">What is heated.</param>
/// <param name="NeededC">What the material needs, °C; at or below room temperature nothing is needed.</param>
/// <param name="ReachedC">What it reaches at most, °C; null where not known.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record ZoneReach(HeatZone Zone, double NeededC, double? ReachedC, ReachSource Source)
{
    /// <summary>False where it does not get there; true also where it is not judged.</summary>
    public bool Reaches => ReachedC is not { } reached || reached >= NeededC;
}

/// <summary>Whether a machine reaches what a material needs.</summary>
/// <param name="Zones">Nozzle, bed and chamber.</param>
/// <param name="Sentences">One for each zone that does not get there, with its numbers.</param>
public sealed record HeatReach(ImmutableArray<ZoneReach> Zones, ImmutableArray<string> Sentences)
{
    public bool Reaches => Zones.All(z => z.Reaches);

    public ZoneReach this[HeatZone zone] => Zones[(int)zone];

    /// <summary>Judges a machine for a material in a room of that temperature, °C.</summary>
    public static HeatReach Of(Machine machine, Material material, double roomC = MachineHeat.UsualRoomC) =>
        new MachineHeat(machine, material, roomC).Reach;
}
