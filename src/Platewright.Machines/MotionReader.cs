using Platewright.Formats.Toml;
using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>Reads the <c>[motion]</c> table.</summary>
internal static class MotionReader
{
    public static MotionLimits? Read(TomlTable table)
    {
        double? speed = table.Number("speed_mm_s", MachineRanges.Speed, required: true);
        double? acceleration = table.Number("acceleration_mm_s2", MachineRanges.Acceleration, required: true);
        bool byJump = table.Has("speed_jump_mm_s");
        if (byJump) table.RefuseIfPresent("contour_tolerance_mm", "speed_jump_mm_s rules the corners too; keep one.");
        double? jump = table.Number("speed_jump_mm_s", MachineRanges.Speed);
        double? tolerance = table.Number("contour_tolerance_mm", MachineRanges.ContourTolerance, required: !byJump);
        double? jerk = table.Number("jerk_mm_s3", MachineRanges.Jerk);
        Vec3? axisSpeed = Axes(table, "axis_speed_mm_s", MachineRanges.Speed);
        Vec3? axisAcceleration = Axes(table, "axis_acceleration_mm_s2", MachineRanges.Acceleration);
        double? firstLayer = table.Number("first_layer_speed_mm_s", MachineRanges.Speed);
        bool movingBed = table.Flag("moving_bed") ?? false;
        if (speed is not { } v || acceleration is not { } a) return null;
        if ((byJump ? ToleranceOf(jump, a) : tolerance) is not { } d) return null;
        return new MotionLimits(v, a, d)
        {
            SpeedJumpMmS = jump,
            JerkMmS3 = jerk,
            AxisSpeedMmS = axisSpeed,
            AxisAccelerationMmS2 = axisAcceleration,
            FirstLayerSpeedMmS = firstLayer,
            MovingBed = movingBed,
        };
    }

    /// <summary>
    /// The contour tolerance, mm, with the same speed at a right angle: there the jump of a corner speed v is √2·v, and
    /// δ = v²(√2 − 1)/a.
    /// </summary>
    private static double? ToleranceOf(double? jump, double acceleration) =>
        jump is { } j ? j * j / 2 * (Math.Sqrt(2) - 1) / acceleration : null;

    private static Vec3? Axes(TomlTable table, string key, NumberRange range) =>
        table.Numbers(key, 3, range, "x, y and z") is { } axes ? new Vec3(axes[0], axes[1], axes[2]) : null;
}
