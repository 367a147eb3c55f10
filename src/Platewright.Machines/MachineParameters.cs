using System.Collections.Immutable;
using Platewright.Formats.Toml;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>
/// Every number of a machine that an estimate uses and that nobody may have measured: what <c>[range]</c> can speak of,
/// what <c>machine new</c> fills in, and what an estimate varies for its error.
/// </summary>
public static partial class MachineParameters
{
    /// <summary>In the order of the file.</summary>
    public static ImmutableArray<MachineParameter> All { get; } = [.. Motion(), .. Making(), .. Heat()];

    /// <summary>The one with this key; null where there is none.</summary>
    public static MachineParameter? Find(string key) =>
        All.FirstOrDefault(p => string.Equals(p.Key, key, StringComparison.Ordinal));

    private static IEnumerable<MachineParameter> Motion() =>
    [
        OfMotion("speed_mm_s", "greatest speed along the path", MachineRanges.Speed,
            m => m.SpeedMmS, (m, v) => m with { SpeedMmS = v }),
        OfMotion("acceleration_mm_s2", "greatest acceleration along the path", MachineRanges.Acceleration,
            m => m.AccelerationMmS2, (m, v) => m with { AccelerationMmS2 = v }),
        OfMotion("contour_tolerance_mm", "how far a corner may be cut", MachineRanges.ContourTolerance,
            m => m.SpeedJumpMmS is null ? m.ContourToleranceMm : null, (m, v) => m with { ContourToleranceMm = v }),
        OfMotion("speed_jump_mm_s", "greatest jump of the velocity at a corner", MachineRanges.Speed,
            m => m.SpeedJumpMmS, (m, v) => m with { SpeedJumpMmS = v }),
        OfMotion("jerk_mm_s3", "greatest jerk along the path", MachineRanges.Jerk,
            m => m.JerkMmS3, (m, v) => m with { JerkMmS3 = v }),
        OfMotion("first_layer_speed_mm_s", "greatest speed in the first layer", MachineRanges.Speed,
            m => m.FirstLayerSpeedMmS, (m, v) => m with { FirstLayerSpeedMmS = v }),
        .. Axes("axis_speed_mm_s", "greatest speed of the axis", MachineRanges.Speed,
            m => m.AxisSpeedMmS, (m, v) => m with { AxisSpeedMmS = v }),
        .. Axes("axis_acceleration_mm_s2", "greatest acceleration of the axis", MachineRanges.Acceleration,
            m => m.AxisAccelerationMmS2, (m, v) => m with { AxisAccelerationMmS2 = v }),
    ];

    private static IEnumerable<MachineParameter> Axes(
        string key, string meaning, NumberRange allowed,
        Func<MotionLimits, Vec3?> of, Func<MotionLimits, Vec3, MotionLimits> with) =>
    [
        OfMotion($"{key}.x", $"{meaning} x", allowed, m => of(m)?.X, (m, v) => with(m, of(m)!.Value with { X = v })),
        OfMotion($"{key}.y", $"{meaning} y", allowed, m => of(m)?.Y, (m, v) => with(m, of(m)!.Value with { Y = v })),
        OfMotion($"{key}.z", $"{meaning} z", allowed, m => of(m)?.Z, (m, v) => with(m, of(m)!.Value with { Z = v })),
    ];

    private static IEnumerable<MachineParameter> Making() =>
    [
        OfExtruder("nozzle_bore_mm", "bore of the nozzle", MachineRanges.Bore,
            e => e.NozzleBoreMm, (e, v) => e with { NozzleBoreMm = v }),
        OfExtruder("filament_mm", "diameter of the filament", MachineRanges.Filament,
            e => e.FilamentMm, (e, v) => e with { FilamentMm = v }),
        OfExtruder("melt_rate_mm3_s", "largest melt rate for PLA", MachineRanges.MeltRate,
            e => e.MeltRateMm3S, (e, v) => e with { MeltRateMm3S = v }),
        OfExtruder("retraction_mm", "filament pulled back before a travel", MachineRanges.Retraction,
            e => e.RetractionMm, (e, v) => e with { RetractionMm = v }),
        OfExtruder("retraction_speed_mm_s", "speed of pulling back", MachineRanges.Speed,
            e => e.RetractionSpeedMmS, (e, v) => e with { RetractionSpeedMmS = v }),
        OfExtruder("prime_mm3", "laid down before each build", MachineRanges.Extruded,
            e => e.PrimeMm3, (e, v) => e with { PrimeMm3 = v }),
        OfHandling("start_s", "homing and probing before each build", MachineRanges.Time,
            h => h.StartS, (h, v) => h with { StartS = v }),
        OfHandling("material_change_s", "one change of material", MachineRanges.Time,
            h => h.MaterialChangeS, (h, v) => h with { MaterialChangeS = v }),
        OfHandling("purge_mm3", "thrown away at each change", MachineRanges.Extruded,
            h => h.PurgeMm3, (h, v) => h with { PurgeMm3 = v }),
    ];

    private static MachineParameter OfMotion(
        string key, string meaning, NumberRange allowed,
        Func<MotionLimits, double?> of, Func<MotionLimits, double, MotionLimits> with) => new(
        $"motion.{key}", meaning, allowed, m => m.Motion is { } limits ? of(limits) : null,
        (m, v) => m with { Motion = with(Stated(m, m.Motion, key), v) });

    private static MachineParameter OfExtruder(
        string key, string meaning, NumberRange allowed,
        Func<Extruder, double?> of, Func<Extruder, double, Extruder> with) => new(
        $"extruder.{key}", meaning, allowed, m => of(m.Extruder), (m, v) => m with { Extruder = with(m.Extruder, v) });

    private static MachineParameter OfHandling(
        string key, string meaning, NumberRange allowed,
        Func<Handling, double?> of, Func<Handling, double, Handling> with) => new(
        $"handling.{key}", meaning, allowed, m => of(m.Handling), (m, v) => m with { Handling = with(m.Handling, v) });

    private static T Stated<T>(Machine machine, T? table, string key)
        where T : class => table
        ?? throw new ArgumentException($"The machine \"{machine.Name}\" does not state {key}.", nameof(machine));
}
