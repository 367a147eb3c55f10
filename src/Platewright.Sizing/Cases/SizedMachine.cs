using Platewright.Machines;

namespace Platewright.Sizing.Cases;

/// <summary>A machine as sizing looks at it: where it stands on the size line, what it costs, takes and gives off.</summary>
/// <param name="EdgeMm">Edge of the cube with its usable volume, mm.</param>
/// <param name="Price">In the currency of the case; null where not known, and then it takes no part in questions of money.</param>
/// <param name="FloorM2">Floor in use, m²; null where not known.</param>
/// <param name="Upkeep">What its file says of owning it.</param>
public sealed record SizedMachine(
    string Id, string Name, double EdgeMm, decimal? Price, double? FloorM2, double? NoiseDb, Exhaust? Exhaust, Upkeep Upkeep)
{
    private const double Mm2PerM2 = 1e6;

    /// <summary>Width with the spool × depth with the door and the travel of the bed, m²; null without a footprint.</summary>
    public static double? FloorOf(Machine machine) => machine.FootprintMm is not { } f
        ? null
        : (f.X + machine.Floor.SpoolMm) * (f.Y + machine.Floor.DoorMm + machine.Floor.BedTravelMm) / Mm2PerM2;
}
