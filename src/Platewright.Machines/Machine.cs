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
    public string Id => NameId.Of(Name);

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

    /// <summary>What it takes of the floor besides, while it is used.</summary>
    public FloorInUse Floor { get; init; } = new();

    /// <summary>Sound pressure level beside it while it builds, dB(A); null where the file does not say.</summary>
    public double? NoiseDb { get; init; }

    /// <summary>Where its air goes; null where the file does not say.</summary>
    public Exhaust? Exhaust { get; init; }

    public Upkeep Upkeep { get; init; } = new();

    public string? Note { get; init; }

    /// <summary>True for the bundled machines, which stand for a class of machines and copy none.</summary>
    public bool Generic { get; init; }

    /// <summary>Greatest speeds and accelerations; null where the file states none, and then no time is estimated.</summary>
    public MotionLimits? Motion { get; init; }

    public Extruder Extruder { get; init; } = new();

    public Handling Handling { get; init; } = new();

    /// <summary>Heaters, supply and enclosure; null where the file states none: no warm-up, no release, no energy.</summary>
    public Heating? Heating { get; init; }

    /// <summary>
    /// Values nobody measured, by the key of the file as <c>motion.acceleration_mm_s2</c>, with the range they are
    /// believed to lie in: estimates carry it into their error.
    /// </summary>
    public ImmutableSortedDictionary<string, ValueRange> Ranges { get; init; } =
        ImmutableSortedDictionary<string, ValueRange>.Empty;
}

/// <summary>
/// Highest temperatures, °C. A bed or chamber that stays at room temperature has 0; a chamber counts with what its air
/// reaches, be it by a heater of its own or by the bed in a closed cover.
/// </summary>
public sealed record HeatLimits(double NozzleC, double BedC, double ChamberC);

/// <summary>An amount of money in an ISO 4217 currency.</summary>
public sealed record Price(decimal Amount, string Currency);
