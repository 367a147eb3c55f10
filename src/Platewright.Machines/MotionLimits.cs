using Platewright.Geometry;

namespace Platewright.Machines;

/// <summary>What a machine's drives allow. Along the path, and for single axes where the file says so.</summary>
/// <param name="SpeedMmS">Greatest speed along the path, mm/s.</param>
/// <param name="AccelerationMmS2">Greatest acceleration along the path, mm/s².</param>
/// <param name="ContourToleranceMm">
/// δ: how far a corner may be cut, mm. Corner speed is √(a·δ·s/(1−s)), s = sin(half the included angle).
/// </param>
public sealed record MotionLimits(double SpeedMmS, double AccelerationMmS2, double ContourToleranceMm)
{
    /// <summary>
    /// Greatest jump of the velocity vector at a corner, mm/s. Where it is given it rules the corners in place of the
    /// contour tolerance: v = jump / (2 cos(half the included angle)).
    /// </summary>
    public double? SpeedJumpMmS { get; init; }

    /// <summary>Greatest jerk along the path, mm/s³; null for drives that change acceleration at once.</summary>
    public double? JerkMmS3 { get; init; }

    /// <summary>Greatest speed of each axis, mm/s; null where only the path is limited.</summary>
    public Vec3? AxisSpeedMmS { get; init; }

    /// <summary>Greatest acceleration of each axis, mm/s²; null where only the path is limited.</summary>
    public Vec3? AxisAccelerationMmS2 { get; init; }

    /// <summary>Greatest speed while extruding the first layer, mm/s; null for no limit of its own.</summary>
    public double? FirstLayerSpeedMmS { get; init; }

    /// <summary>
    /// True where the bed carries the part back and forth in y: tall slender parts are then accelerated less.
    /// </summary>
    public bool MovingBed { get; init; }
}
