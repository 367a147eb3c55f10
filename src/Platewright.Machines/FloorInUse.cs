namespace Platewright.Machines;

/// <summary>What a machine takes of the floor besides its own footprint while it is used, mm; 0 where nothing is said.</summary>
public sealed record FloorInUse
{
    /// <summary>A door that swings open, or the place of whoever reaches in: adds to the depth.</summary>
    public double DoorMm { get; init; }

    /// <summary>How far a moving bed stands out, front and back together: adds to the depth.</summary>
    public double BedTravelMm { get; init; }

    /// <summary>A spool beside the machine: adds to the width.</summary>
    public double SpoolMm { get; init; }
}
