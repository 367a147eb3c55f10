using Platewright.Build.Estimates;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Geometry;
using Platewright.Tests.Motion;

namespace Platewright.Tests.Build.Estimates;

/// <summary>Build times of the reference cases: bounds, bands, and volumes known by formula.</summary>
public sealed class BuildTimeReferenceTests
{
    private const double SecondsPerHour = 3600, PlaGCm3 = 1.24;

    public static TheoryData<string> Ids() =>
        PhysicsCase.Ids("build-time/bound", "build-time/band", "build-time/geometry", "build-time/layer");

    [Theory]
    [MemberData(nameof(Ids))]
    public void BuildTime_ReferenceCase_IsMet(string id)
    {
        var c = PhysicsCase.OrSkip(id);
        if (c.Has("q_mm3_s")) Bound(c);
        else if (c.Has("era")) Rate(c);
        else if (c.Has("mass_g")) Mean(c);
        else if (c.Has("fillet_radius_mm")) Bar(c);
        else if (c.Has("side_mm")) Cube(c);
        else Assert.Skip($"{id}: an input this test does not know: {c.Input}");
    }

    // One long bead, as fast as its melt rate lets it go.
    private static void Bound(PhysicsCase c)
    {
        const double Area = 0.1;
        double volume = 1000 * c.In("volume_cm3");
        Move bead = new(new Vec3(volume / Area, 0, 0), double.PositiveInfinity, Area, 0, PathKind.Infill);
        MotionLimits any = new(1e6, 1e12, 0.05);
        MotionTimes times = new MotionPlanner().Plan(default, [bead], any, c.In("q_mm3_s"));
        c.CheckAll(key => key switch
        {
            "min_time_s" => times.TotalS,
            "rate_cm3_h" => times.MaterialMm3.Sum / 1000 / times.TotalS * SecondsPerHour,
            _ => null,
        });
    }

    // A compact solid part on the machine of the command-line contract.
    private static void Rate(PhysicsCase c)
    {
        MotionTimes times = Builds.Full(Builds.Cube(20), Builds.Solid with { LayerHeightMm = c.In("layer_mm") });
        double rate = times.MaterialMm3.Sum / 1000 / times.TotalS * SecondsPerHour;
        double[] band = [.. c.Expected.GetProperty("rate_cm3_h").EnumerateArray().Select(PhysicsCase.Number)];
        Assert.InRange(rate, band[0], band[1]);
    }

    private static void Mean(PhysicsCase c)
    {
        double seconds = 60 * c.In("minutes");
        c.CheckAll(key => key switch
        {
            "g_per_h" => c.In("mass_g") / seconds * SecondsPerHour,
            "mean_mm3_s_at_1_24" => c.In("mass_g") / PlaGCm3 * 1000 / seconds,
            _ => null,
        });
    }

    private static void Bar(PhysicsCase c)
    {
        double radius = c.In("fillet_radius_mm");
        double narrow = c.In("narrow_width_mm") / 2, wide = c.In("overall_width_mm") / 2;
        double fillet = Math.Sqrt(radius * radius - Math.Pow(radius - (wide - narrow), 2));
        const int Steps = 40;
        List<Vec2> half = [new(0, narrow)];
        for (int i = 0; i <= Steps; i++)
        {
            double t = fillet * i / Steps;
            half.Add(new(c.In("narrow_length_mm") / 2 + t, narrow + radius - Math.Sqrt(radius * radius - t * t)));
        }
        half.Add(new(c.In("overall_length_mm") / 2, wide));
        Vec2[] edge = [.. half.Skip(1).Reverse().Select(p => new Vec2(-p.X, p.Y)), .. half];
        PartPaths paths = Builds.Paths(Strip(edge, c.In("thickness_mm")), Builds.Solid);
        MotionTimes laid = Builds.Run(paths).Total;
        SharedMeshes.AssertNear(paths.SectionVolumeMm3, laid.MaterialMm3.Sum, 0.01);
        c.CheckAll(key => key switch
        {
            "area_mm2" => paths.ContactAreaMm2,
            "volume_cm3" => paths.SectionVolumeMm3 / 1000,
            "fillet_length_mm" => fillet,
            "mass_g_PLA_solid" => paths.SectionVolumeMm3 / 1000 * PlaGCm3,
            "min_time_s_at_8_mm3_s" => paths.SectionVolumeMm3 / 8,
            _ => null,
        });
    }

    private static void Cube(PhysicsCase c)
    {
        Recipe solid = Builds.Solid with
        {
            LayerHeightMm = c.In("layer_mm"),
            BeadWidthMm = c.In("width_mm"),
            Speeds = PathSpeeds.All(c.In("speed_mm_s")),
        };
        var paths = Builds.Paths(Builds.Cube(c.In("side_mm")), solid);
        MotionTimes built = Builds.Run(paths).Total;
        double bead = Bead.AreaMm2(solid.BeadWidthMm, solid.LayerHeightMm);
        double perLayer = paths.SectionVolumeMm3 / bead / paths.LayerCount;
        SharedMeshes.AssertNear(perLayer, built.MaterialMm3.Sum / bead / paths.LayerCount, 0.01);
        double deposition = perLayer * paths.LayerCount / c.In("speed_mm_s");
        Assert.True(built.TotalS > deposition, "an estimate must exceed the time of deposition alone");
        c.CheckAll(key => key switch
        {
            "layers" => paths.LayerCount,
            "bead_mm_per_layer" => perLayer,
            "deposition_time_s" => deposition,
            _ => null,
        });
    }

    /// <summary>A plate between an upper edge, from left to right, and its mirror image.</summary>
    private static Mesh Strip(Vec2[] edge, double thickness)
    {
        List<Vec3> v = [];
        foreach (Vec2 p in edge)
        {
            v.AddRange([new(p.X, p.Y, 0), new(p.X, -p.Y, 0), new(p.X, p.Y, thickness), new(p.X, -p.Y, thickness)]);
        }
        List<int> corners = [];
        for (int i = 0; i + 1 < edge.Length; i++)
        {
            int a = 4 * i, b = a + 4;
            Quad(a, b, b + 1, a + 1);
            Quad(a + 2, a + 3, b + 3, b + 2);
            Quad(a, a + 2, b + 2, b);
            Quad(a + 1, b + 1, b + 3, a + 3);
        }
        int end = 4 * (edge.Length - 1);
        Quad(0, 1, 3, 2);
        Quad(end, end + 2, end + 3, end + 1);
        return new Mesh([.. v], [.. corners]);

        void Quad(int a, int b, int c, int d) => corners.AddRange([a, b, c, a, c, d]);
    }
}
