using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Motion;

/// <summary>The limits of one plan, checked once: what the inner loops of the planner need.</summary>
internal readonly struct DriveLimits
{
    private readonly Vec3 _axisSpeed;
    private readonly Vec3 _axisAcceleration;
    private readonly double _jumpSquared;

    public DriveLimits(MotionLimits limits, double yAccelerationShare)
    {
        Require(limits.SpeedMmS > 0, "speed", limits.SpeedMmS);
        Require(limits.AccelerationMmS2 > 0, "acceleration", limits.AccelerationMmS2);
        Require(limits.ContourToleranceMm >= 0, "contour tolerance", limits.ContourToleranceMm);
        Require(limits.SpeedJumpMmS is null or >= 0, "speed jump", limits.SpeedJumpMmS);
        Require(limits.JerkMmS3 is null or > 0, "jerk", limits.JerkMmS3);
        if (!(yAccelerationShare is > 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(yAccelerationShare), yAccelerationShare, "A share is above 0, up to 1.");
        }
        SpeedMmS = limits.SpeedMmS;
        AccelerationMmS2 = limits.AccelerationMmS2;
        ContourToleranceMm = limits.ContourToleranceMm;
        SpeedJumps = limits.SpeedJumpMmS is not null;
        double jump = limits.SpeedJumpMmS ?? 0;
        _jumpSquared = jump * jump;

        const double None = double.PositiveInfinity;
        _axisSpeed = limits.AxisSpeedMmS ?? new Vec3(None, None, None);
        Vec3 acceleration = limits.AxisAccelerationMmS2 ?? new Vec3(None, None, None);
        double y = acceleration.Y;
        if (yAccelerationShare < 1) y = Math.Min(y, AccelerationMmS2) * yAccelerationShare;
        _axisAcceleration = new Vec3(acceleration.X, y, acceleration.Z);
        foreach (double axis in (ReadOnlySpan<double>)[_axisSpeed.X, _axisSpeed.Y, _axisSpeed.Z])
            Require(axis > 0, "axis speed", axis);
        foreach (double axis in (ReadOnlySpan<double>)[_axisAcceleration.X, _axisAcceleration.Y, _axisAcceleration.Z])
            Require(axis > 0, "axis acceleration", axis);
        PerAxis = limits.AxisSpeedMmS is not null || limits.AxisAccelerationMmS2 is not null || yAccelerationShare < 1;
    }

    public double SpeedMmS { get; }

    /// <summary>Along the path; single axes may allow less.</summary>
    public double AccelerationMmS2 { get; }

    /// <summary>True where single axes limit more than the path does.</summary>
    public bool PerAxis { get; }

    /// <summary>Greatest speed in a direction, mm/s: no axis faster than it may.</summary>
    public double SpeedAlong(double x, double y, double z) => Within(_axisSpeed, x, y, z, SpeedMmS);

    /// <summary>Greatest acceleration in a direction, mm/s².</summary>
    public double AccelerationAlong(double x, double y, double z) =>
        Within(_axisAcceleration, x, y, z, AccelerationMmS2);

    /// <summary>True where the greatest speed jump rules the corners.</summary>
    public bool SpeedJumps { get; }

    public double ContourToleranceMm { get; }

    /// <summary>v² at a corner, mm²/s²: the speed jump over |u − u'| of the unit directions.</summary>
    public double JumpSpeedSquared(double turnSquared) => _jumpSquared / turnSquared;

    /// <summary>
    /// Greatest acceleration while a corner is rounded, mm/s². The difference (x, y, z) of the unit directions, of the
    /// given squared length, is the direction the machine is accelerated in there, so the axes limit along it.
    /// </summary>
    public double CornerAcceleration(double x, double y, double z, double turnSquared)
    {
        if (!PerAxis) return AccelerationMmS2;
        double scale = 1 / Math.Sqrt(turnSquared);
        return AccelerationAlong(x * scale, y * scale, z * scale);
    }

    private static double Within(Vec3 limit, double x, double y, double z, double path) => Math.Min(
        Math.Min(path, limit.X / Math.Abs(x)), Math.Min(limit.Y / Math.Abs(y), limit.Z / Math.Abs(z)));

    private static void Require(bool holds, string what, double? value)
    {
        if (!holds) throw new ArgumentException($"The {what} of a machine is above 0, found {value}.", what);
    }
}
