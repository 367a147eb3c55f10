namespace Platewright.Machines;

/// <summary>What a person can say of a machine without measuring it.</summary>
/// <param name="Name">Its name, with a letter or a digit.</param>
/// <param name="BuildVolume">Size and shape.</param>
public sealed record KnownMachine(string Name, BuildVolume BuildVolume)
{
    /// <summary>Closed against the room, or open; null where not said.</summary>
    public bool? Closed { get; init; }

    /// <summary>What the label of its supply says, W.</summary>
    public double? SupplyW { get; init; }

    /// <summary>What the label of its bed heater says, W.</summary>
    public double? BedHeaterW { get; init; }

    /// <summary>False for a bed that is not heated.</summary>
    public bool HeatedBed { get; init; } = true;

    /// <summary>How long the bed takes from cold; null where not said.</summary>
    public BedWarmUp? BedWarmUp { get; init; }

    public Price? Price { get; init; }

    /// <summary>A program made for it; null for none.</summary>
    public ProgramSeen? Program { get; init; }

    /// <summary>True where the build volume is only as large as the program needs.</summary>
    public bool SizeFromProgram { get; init; }
}

/// <summary>A bed that was watched getting hot.</summary>
/// <param name="Minutes">From cold, min, greater than 0.</param>
/// <param name="ToC">To this temperature, °C, at least 30: below that nothing can be told.</param>
public sealed record BedWarmUp(double Minutes, double ToC);
