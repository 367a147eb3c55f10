namespace Platewright.Machines;

/// <summary>What a build needs besides laying down material.</summary>
public sealed record Handling
{
    /// <summary>Homing, probing and the like before each build, s.</summary>
    public double StartS { get; init; }

    /// <summary>One change of material or colour, s.</summary>
    public double MaterialChangeS { get; init; }

    /// <summary>Material thrown away at each change, mm³.</summary>
    public double PurgeMm3 { get; init; }
}
