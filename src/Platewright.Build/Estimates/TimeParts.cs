using Platewright.Build.Motion;

namespace Platewright.Build.Estimates;

/// <summary>Where the time of a build goes, s. The parts add up to the total.</summary>
public sealed record TimeParts
{
    /// <summary>Homing and probing, then heating until ready.</summary>
    public double WarmUpS { get; init; }

    /// <summary>Moving while building, by kind of path; travel includes pulling filament back and forth.</summary>
    public PerKind MovingS { get; init; }

    /// <summary>Waiting for small layers to set, and pauses a program asks for.</summary>
    public double WaitingS { get; init; }

    /// <summary>Changes of material or colour.</summary>
    public double ChangesS { get; init; }

    /// <summary>Cooling until the part lets go.</summary>
    public double ReleaseS { get; init; }

    /// <summary>From the first move to the last.</summary>
    public double BuildingS => MovingS.Sum + WaitingS + ChangesS;

    public double TotalS => WarmUpS + BuildingS + ReleaseS;
}
