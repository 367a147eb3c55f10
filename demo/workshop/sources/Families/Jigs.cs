using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Jigs and guides of the sewing table and the bench; mm.</summary>
internal static class Jigs
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("sewing-table/seam-guide.stl", SeamGuide(length: 88, width: 40)),
        () => Model.Stl("sewing-table/hem-gauge.stl", HemGauge(length: 236, width: 46)),
        () => new("odds-and-ends/shelf-pin-jig.obj", FileKind.Obj, PinJig(holes: 6, pitch: 14)),
    ];

    /// <summary>A fence on a slotted foot that is clamped beside the needle.</summary>
    private static Solid SeamGuide(double length, double width)
    {
        Region foot = Outline.Rectangle(0, 0, length, width, 6);
        Solid guide = Prism.Of(foot, 0, 5, 0.6, 0.8);
        guide.Raised(Outline.Rectangle(6, 4, length - 6, 9, 2), new Vec3(0, 0, 99), Turns.Down,
            new Level(0, -1.6), new Level(0.6, -0.6), new Level(2), new Level(13), new Level(14, 0.8));
        Region slots = Outline.Slot(new(0, -9), new(0, 9), 5.2).Row(2, length * 0.56);
        return guide.Pierced(slots, new Vec3(length / 2, width * 0.62, 99), Turns.Down, 0.6);
    }

    /// <summary>A flat gauge with stepped edge and windows at the usual seam widths.</summary>
    private static Solid HemGauge(double length, double width)
    {
        List<Vec2> outline = [new(0, 0), new(length, 0)];
        int steps = 6;
        for (int i = 0; i < steps; i++)
        {
            double x = length - length * i / steps, y = width - i * 5;
            outline.Add(new(x, y));
            outline.Add(new(length - length * (i + 1) / steps, y));
        }
        Solid gauge = Prism.Of(Outline.Of([.. outline]).Rounded(1.6, 1.6), 0, 3, 0.5, 0.5);
        Region windows = Outline.Centred(length / steps - 14, 6, 2.4).Row(steps, length / steps);
        return gauge.Pierced(windows, new Vec3(length / 2, 9, 99), Turns.Down, 0.4);
    }

    /// <summary>A drill guide for a row of shelf pins: bushes on a plate with a stop along one edge.</summary>
    private static Solid PinJig(int holes, double pitch)
    {
        double length = holes * pitch + 12;
        Solid jig = Layers.Of(0,
            [new(Outline.Rectangle(0, 0, length, 36, 3), 6), new(Outline.Rectangle(0, 0, length, 7, 2), 16)], 0.6, 0.6);
        Region bush = Outline.Circle(5).Row(holes, pitch);
        jig.Raised(bush, new Vec3(length / 2, 22, 99), Turns.Down, new Level(0, -1), new Level(1), new Level(5),
            new Level(5.6, 0.6));
        for (int i = 0; i < holes; i++)
            jig.Drilled(2.55, new Vec3(6 + (i + 0.5) * pitch, 22, 99), Turns.Down, 0.3);
        return jig;
    }
}
