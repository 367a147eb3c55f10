using System.Collections.Immutable;

namespace Platewright.Machines;

/// <summary>
/// Typical values of desktop machines by class, with their range and source. Every number of
/// <see cref="MachineParameters"/> has one.
/// </summary>
internal static partial class TypicalValues
{
    private const string FromMemory = "common practice, from memory";

    private static readonly ImmutableDictionary<string, Func<MachineClass, TypicalValue>> ByKey = ImmutableDictionary
        .CreateRange(StringComparer.Ordinal, [.. Motion(), .. Making(), .. Heat()]);

    /// <exception cref="ArgumentException">There is no such parameter.</exception>
    public static TypicalValue Of(string key, MachineClass kind) => ByKey.TryGetValue(key, out var typical)
        ? typical(kind)
        : throw new ArgumentException($"There is no parameter called \"{key}\".", nameof(key));

    // Acceleration 500 … 3000 mm/s² on older machines and moving beds, 5000 … 20000 on recent light gantries; contour
    // tolerance 0.01 … 0.05 mm; jumps of 5 … 10 mm/s at a right angle: common practice, from memory.
    private static IEnumerable<KeyValuePair<string, Func<MachineClass, TypicalValue>>> Motion()
    {
        yield return ByClass("motion.speed_mm_s", Typical(180, 90, 300), Typical(250, 120, 400), Typical(350, 150, 500));
        yield return ByClass(
            "motion.acceleration_mm_s2", Typical(2000, 700, 4000), Typical(3500, 1000, 10_000), Typical(7000, 2500, 18_000));
        yield return Same("motion.contour_tolerance_mm", TypicalValue.Of(0.02, 0.01, 0.05, FromMemory));
        yield return Same("motion.speed_jump_mm_s", TypicalValue.Of(10, 7, 14, FromMemory));
        yield return Same("motion.jerk_mm_s3", Typical(300_000, 50_000, 2_000_000));
        yield return Same("motion.first_layer_speed_mm_s", Typical(35, 18, 60));
        foreach (string axis in (string[])["x", "y"])
        {
            yield return ByClass(
                $"motion.axis_speed_mm_s.{axis}", Typical(180, 90, 300), Typical(250, 120, 400), Typical(350, 150, 500));
            yield return ByClass(
                $"motion.axis_acceleration_mm_s2.{axis}", Typical(2000, 700, 4000), Typical(3500, 1000, 10_000),
                Typical(7000, 2500, 18_000));
        }
        yield return Same("motion.axis_speed_mm_s.z", Typical(12, 5, 25));
        yield return Same("motion.axis_acceleration_mm_s2.z", Typical(150, 50, 500));
    }

    // PLA through a bore of 0.4 mm: 8 … 12 mm³/s with a short melt zone, 15 … 20 with a medium, 24 … 40 with a long one.
    private static IEnumerable<KeyValuePair<string, Func<MachineClass, TypicalValue>>> Making()
    {
        yield return Same("extruder.nozzle_bore_mm", Typical(0.4, 0.35, 0.45));
        yield return Same("extruder.filament_mm", Typical(1.75, 1.7, 1.8));
        yield return ByClass(
            "extruder.melt_rate_mm3_s", TypicalValue.Of(12, 8, 18, FromMemory), TypicalValue.Of(14, 8, 26, FromMemory),
            TypicalValue.Of(18, 10, 30, FromMemory));
        yield return Same("extruder.retraction_mm", Typical(1, 0.4, 4));
        yield return Same("extruder.retraction_speed_mm_s", Typical(35, 25, 50));
        yield return Same("extruder.prime_mm3", Typical(30, 10, 80));
        yield return Same("handling.start_s", Typical(100, 40, 240));
        yield return Same("handling.material_change_s", Typical(150, 60, 300));
        yield return Same("handling.purge_mm3", Typical(100, 50, 200));
    }

    private static TypicalValue Typical(double value, double low, double high) => TypicalValue.Of(value, low, high);

    private static KeyValuePair<string, Func<MachineClass, TypicalValue>> Same(string key, TypicalValue value) =>
        new(key, _ => value);

    private static KeyValuePair<string, Func<MachineClass, TypicalValue>> ByClass(
        string key, TypicalValue movingBed, TypicalValue between, TypicalValue closed) => new(
        key, kind => kind.Closed is true ? closed : kind.MovesItsBed ? movingBed : between);

    private static KeyValuePair<string, Func<MachineClass, TypicalValue>> ByArea(
        string key, double value, double low, double high, string source = TypicalValue.Practice) => new(
        key, kind => TypicalValue.Of(
            value * kind.SurfaceM2, low * kind.SurfaceM2, high * kind.SurfaceM2, source));
}
