using System.Text.Json;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Motion;

/// <summary>Plans of whole polylines; the file checks each by a dense sweep of v² besides.</summary>
public sealed class LookAheadReferenceTests
{
    public static TheoryData<string> Ids() => PhysicsCase.Ids("motion/look-ahead");

    [Theory]
    [MemberData(nameof(Ids))]
    public void Plan_ReferenceCase_HasItsTimeAndVertexSpeeds(string id)
    {
        PhysicsCase c = PhysicsCase.OrSkip(id);
        if (c.Has("base"))
        {
            CheckAgainstBase(c, PhysicsCase.OrSkip(c.Input.GetProperty("base").GetString()!));
            return;
        }
        var planner = new MotionPlanner();
        MotionTimes times = Plan(planner, c, 1);
        double[] speeds = [.. planner.VertexSpeedsMmS];
        foreach (JsonProperty expected in c.Expected.EnumerateObject())
        {
            switch (expected.Name)
            {
                case "time_s":
                    c.Check("time_s", times.TotalS);
                    break;
                case "path_mm":
                    c.Check("path_mm", times.PathMm.Sum);
                    break;
                case "vertex_speeds_mm_s":
                    int i = 0;
                    foreach (JsonElement speed in expected.Value.EnumerateArray())
                        c.Check($"speed at vertex {i}", speed.GetDouble(), speeds[i++]);
                    break;
                default:
                    Assert.Skip($"{id}: a value this test does not know: {expected.Name}");
                    break;
            }
        }
    }

    private static void CheckAgainstBase(PhysicsCase c, PhysicsCase original)
    {
        var planner = new MotionPlanner();
        double time = Plan(planner, original, 1).TotalS;
        if (c.Expected.TryGetProperty("time_ratio", out _))
            c.Check("time_ratio", Plan(planner, original, c.In("scale")).TotalS / time);
        else if (c.Expected.TryGetProperty("time_greater_than_s", out JsonElement bound))
            Assert.True(time > bound.GetDouble(), $"{c.Id}: {time} s is not above {bound} s.");
        else
            Assert.Skip($"{c.Id}: nothing this test knows is expected.");
    }

    private static MotionTimes Plan(MotionPlanner planner, PhysicsCase c, double scale)
    {
        Vec3[] points = [.. Points(c).Select(p => p * scale)];
        double cruise = c.In("cruise_mm_s") * scale;
        Move[] moves = [.. points.Skip(1).Select(p => new Move(p, cruise, 0, 0, PathKind.Wall))];
        var limits = new MotionLimits(cruise, c.In("accel_mm_s2") * scale, c.In("deviation_mm") * scale);
        return planner.Plan(points[0], moves, limits);
    }

    /// <summary>The polyline, listed or by the case's rule.</summary>
    private static IEnumerable<Vec3> Points(PhysicsCase c)
    {
        if (c.Has("points_mm"))
            return c.Input.GetProperty("points_mm").EnumerateArray().Select(p => new Vec3(p[0].GetDouble(), p[1].GetDouble(), 0));
        if (c.Has("sides")) return RegularPolygon((int)c.In("sides"), 10);
        if (c.Has("lines")) return Raster((int)c.In("lines"), c.In("line_mm"), c.In("pitch_mm"));
        if (c.Has("segments")) return Staircase((int)c.In("segments"), 0.5);
        Assert.Skip($"{c.Id}: a polyline this test does not know.");
        return [];
    }

    private static IEnumerable<Vec3> RegularPolygon(int sides, double radius) => Enumerable.Range(0, sides + 1)
        .Select(k => 2 * Math.PI * k / sides)
        .Select(angle => new Vec3(radius * Math.Cos(angle), radius * Math.Sin(angle), 0));

    private static IEnumerable<Vec3> Raster(int lines, double lineMm, double pitchMm)
    {
        for (int i = 0; i < lines; i++)
        {
            yield return new Vec3(i % 2 == 0 ? 0 : lineMm, i * pitchMm, 0);
            yield return new Vec3(i % 2 == 0 ? lineMm : 0, i * pitchMm, 0);
        }
    }

    private static IEnumerable<Vec3> Staircase(int segments, double stepMm)
    {
        for (int i = 0; i <= segments; i++) yield return new Vec3((i + 1) / 2 * stepMm, i / 2 * stepMm, 0);
    }
}
