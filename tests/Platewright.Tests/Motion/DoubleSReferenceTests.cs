using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Motion;

/// <summary>Jerk-limited single moves against closed forms and the textbook's worked example.</summary>
public sealed class DoubleSReferenceTests
{
    public static TheoryData<string> Ids() => PhysicsCase.Ids("motion/s-curve");

    [Theory]
    [MemberData(nameof(Ids))]
    public void DoubleS_ReferenceCase_HasItsTimes(string id)
    {
        PhysicsCase c = PhysicsCase.OrSkip(id);
        double distance = c.InOr("distance_mm", double.NaN), jerk = c.InOr("jerk_mm_s3", double.NaN);
        if (double.IsNaN(distance)) (distance, jerk) = (c.In("distance"), c.In("jerk"));
        double start = c.InOr("v_start", 0), end = c.InOr("v_end", 0);
        var move = DoubleS.Of(distance, c.In("v_max"), c.In("a_max"), jerk, start, end);
        c.CheckAll(key => key switch
        {
            "time_s" or "total_s" => move.TimeS,
            "peak_mm_s" or "peak_speed" => move.PeakMmS,
            "peak_accel_mm_s2" => move.PeakAccelerationMmS2,
            "jerk_time_s" => move.JerkS,
            "accel_phase_s" => move.AccelerationS,
            "decel_phase_s" => move.DecelerationS,
            "cruise_s" => move.CruiseS,
            _ => null,
        });
        if (start != 0 || end != 0) return;
        var limits = new MotionLimits(1e6, c.In("a_max"), 0.05) { JerkMmS3 = jerk };
        Move[] moves = [new(new Vec3(distance, 0, 0), c.In("v_max"), 0, 0, PathKind.Travel)];
        Assert.Equal(move.TimeS, new MotionPlanner().Plan(default, moves, limits).TotalS, 12);
    }
}
