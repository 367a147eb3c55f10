using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Motion;

/// <summary>Single moves, corners and the melt-rate limit against the closed forms of the reference file.</summary>
public sealed class PointToPointReferenceTests
{
    public static TheoryData<string> Moves() => PhysicsCase.Ids("motion/point-to-point");

    public static TheoryData<string> Corners() => PhysicsCase.Ids("motion/corner");

    public static TheoryData<string> Flows() => PhysicsCase.Ids("motion/flow-limit");

    [Theory]
    [MemberData(nameof(Moves))]
    public void Trapezoid_ReferenceCase_HasItsTimes(string id)
    {
        PhysicsCase c = PhysicsCase.OrSkip(id);
        Trapezoid move = c switch
        {
            _ when c.Has("cruise_mm_s") => Trapezoid.Of(
                c.In("distance_mm"), c.In("cruise_mm_s"), c.In("accel_mm_s2"), c.InOr("start_mm_s", 0),
                c.InOr("end_mm_s", 0), c.InOr("decel_mm_s2", c.In("accel_mm_s2"))),
            // Sizing rules give the profile from its time; the profile must give that time back.
            _ when c.Has("peak_m_s") => Trapezoid.Of(
                c.In("distance_m"), c.In("peak_m_s"), c.Expected.GetProperty("accel_m_s2").GetDouble()),
            _ when c.Has("distance") => Trapezoid.Of(
                c.In("distance"), c.Expected.GetProperty("peak_speed").GetDouble(), c.Expected.GetProperty("accel").GetDouble()),
            _ when c.Has("delta") => Trapezoid.Of(
                c.In("delta"), c.In("accel") * c.Expected.GetProperty("blend_time_s").GetDouble(), c.In("accel")),
            _ => throw Xunit.Sdk.SkipException.ForSkip($"{id}: a move this test does not know."),
        };
        if (c.Has("time_s")) c.Check("time", c.In("time_s"), move.TimeS);
        c.CheckAll(key => key switch
        {
            "time_s" => move.TimeS,
            "peak_mm_s" or "peak_speed" => move.PeakMmS,
            "accel_distance_mm" => move.AccelerationMm,
            "cruise_distance_mm" => move.CruiseMm,
            "decel_distance_mm" => move.DecelerationMm,
            "accel" or "accel_m_s2" => move.PeakMmS / move.AccelerationS,
            "accel_time_s" or "blend_time_s" => move.AccelerationS,
            "cruise_time_s" => move.CruiseS,
            "mean_over_peak" => c.In("distance") / move.TimeS / move.PeakMmS,
            _ => null,
        });
        if (!c.Has("cruise_mm_s") || c.Has("decel_mm_s2") || c.InOr("start_mm_s", 0) > 0) return;
        var limits = new MotionLimits(1e6, c.In("accel_mm_s2"), 0.05);
        var planned = new Move(new Vec3(c.In("distance_mm"), 0, 0), c.In("cruise_mm_s"), 0, 0, PathKind.Travel);
        c.Check("time_s", new MotionPlanner().Plan(default, [planned], limits).TotalS);
    }

    [Theory]
    [MemberData(nameof(Corners))]
    public void Corner_ReferenceCase_HasItsSpeed(string id)
    {
        PhysicsCase c = PhysicsCase.OrSkip(id);
        double a = c.In("accel_mm_s2");
        if (c.Has("included_angles_deg"))
        {
            var expected = c.Expected.GetProperty("corner_speeds_mm_s");
            for (int i = 0; i < expected.GetArrayLength(); i++)
            {
                double degrees = c.Input.GetProperty("included_angles_deg")[i].GetDouble();
                c.Check($"{degrees}°", PhysicsCase.Number(expected[i]), At(degrees).SpeedMmS);
            }
            return;
        }
        c.CheckAll(key => key switch
        {
            "corner_speed_mm_s" => At(c.In("included_angle_deg")).SpeedMmS,
            "arc_radius_mm" => At(c.In("included_angle_deg")).RadiusMm,
            "tangent_length_mm" => At(c.In("included_angle_deg")).TangentMm,
            "deviation_mm" => Corner.ToleranceFor(c.In("corner_speed_90_mm_s"), a),
            "speed_mm_s" => Corner.ArcSpeedMmS(c.In("radius_mm"), a),
            _ => null,
        });

        Corner At(double degrees) => Corner.Of(degrees * Math.PI / 180, a, c.In("deviation_mm"));
    }

    [Theory]
    [MemberData(nameof(Flows))]
    public void Plan_MeltRateReferenceCase_HasItsSpeedAndTime(string id)
    {
        PhysicsCase c = PhysicsCase.OrSkip(id);
        double area = Bead.AreaMm2(c.In("width_mm"), c.In("layer_mm"));
        var move = new Move(new Vec3(c.In("distance_mm"), 0, 0), c.In("programmed_mm_s"), area, 0, PathKind.Wall);
        var limits = new MotionLimits(1e6, c.In("accel_mm_s2"), 0.05);
        MotionTimes times = new MotionPlanner().Plan(default, [move], limits, c.In("q_max_mm3_s"));
        // From rest to rest with a cruise, t = d/v + v/a: the greatest speed follows from the time.
        double b = times.TotalS * c.In("accel_mm_s2");
        double speed = (b - Math.Sqrt(b * b - 4 * c.In("accel_mm_s2") * c.In("distance_mm"))) / 2;
        c.Check("time_s", times.TotalS);
        c.Check("speed_mm_s", speed);
        Assert.Equal(c.Expected.GetProperty("capped").GetBoolean(), speed < c.In("programmed_mm_s") * (1 - 1e-9));
        Assert.Equal(c.In("distance_mm") * area, times.MaterialMm3[PathKind.Wall], 9);
    }
}
