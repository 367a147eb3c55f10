using System.Collections.Immutable;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>One machine, or one kind of machine, as its file describes it.</summary>
public sealed record Machine
{
    public required string Name { get; init; }

    /// <summary>
    /// The name in small letters with hyphens, as <c>generic-210-enclosed</c>: what arguments and results refer to.
    /// </summary>
    public string Id => MachineId.Of(Name);

    public required BuildVolume BuildVolume { get; init; }

    public Margins Margins { get; init; } = Margins.None;

    /// <summary>Boxes, in the coordinates of the build volume, that a part must stay out of.</summary>
    public ImmutableArray<Bounds3> KeepOuts { get; init; } = [];

    /// <summary>What the machine heats to; null where its file does not say, and then heat is not judged.</summary>
    public HeatLimits? HeatsTo { get; init; }

    /// <summary>Whether the build volume is enclosed; null where the file does not say.</summary>
    public bool? Enclosed { get; init; }

    public Price? Price { get; init; }

    /// <summary>Floor area taken, width × depth, mm.</summary>
    public Vec2? FootprintMm { get; init; }

    public string? Note { get; init; }

    /// <summary>True for the bundled machines, which stand for a class of machines and copy none.</summary>
    public bool Generic { get; init; }

    /// <summary>Greatest speeds and accelerations, where the file has them.</summary>
    public MotionLimits? Motion { get; init; }
}

/// <summary>
/// Highest temperatures, °C. A bed or chamber that stays at room temperature has 0; a chamber counts with what its air
/// reaches, be it by a heater of its own or by the bed in a closed cover.
/// </summary>
public sealed record HeatLimits(double NozzleC, double BedC, double ChamberC);

/// <summary>An amount of money in an ISO 4217 currency.</summary>
public sealed record Price(decimal Amount, string Currency);

/// <summary>Limits of motion along the path: mm/s, mm/s², and the contour tolerance at corners, mm.</summary>
public sealed record MotionLimits(double SpeedMmS, double AccelerationMmS2, double ContourToleranceMm);
