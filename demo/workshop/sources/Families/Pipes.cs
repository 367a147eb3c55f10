using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Bent and gated pipes of the rain barrel and the dust hose; mm.</summary>
internal static class Pipes
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("rain-barrel/overflow-elbow.obj", FileKind.Obj, Elbow(bore: 36, leg: 46, radius: 42)),
        () => Model.Stl("dust-hose/gate-body.stl", GateBody(bore: 63)),
        () => Model.Stl("dust-hose/gate-slide.stl", GateSlide(bore: 63)),
    ];

    /// <summary>A quarter bend with a bell at each end.</summary>
    private static Solid Elbow(double bore, double leg, double radius)
    {
        List<Vec3> path = [];
        foreach (double z in (ReadOnlySpan<double>)[0, 12, 13, 14, 15, 16, 17, 18, leg - 1]) path.Add(new(0, 0, z));
        List<Vec3> bend = Loft.Path(radius, new(0, 0, 0), new(0, 0, leg + radius), new(leg + radius, 0, leg + radius));
        path.AddRange(bend[1..^1]);
        foreach (double x in (ReadOnlySpan<double>)[leg - 18, leg - 17, leg - 16, leg - 15, leg - 14, leg - 13,
            leg - 12, leg]) path.Add(new(radius + x, 0, leg + radius));
        Region section = Outline.Circle(bore / 2 + 2.4).Minus(Outline.Circle(bore / 2));
        int last = path.Count - 1;
        return Loft.Along(section, path, Vec3.UnitY, share =>
        {
            int i = (int)Math.Round(share * last);
            int from = Math.Min(i, last - i);
            return 1 + 0.13 * Math.Clamp((7 - from) / 6.0, 0, 1);
        });
    }

    /// <summary>A frame with a slot for the slide and a collar for a hose on either side.</summary>
    private static Solid GateBody(double bore)
    {
        double r = bore / 2, half = r + 13, cover = 4, slot = 3.4;
        Region plate = Outline.Centred(2 * half, 2 * half, 8);
        Region hole = Outline.Circle(r);
        Region track = Outline.Rectangle(-r - 4, -r - 4, r + 4, half + 9, 2);
        Solid body = Layers.Of(0, [
            new(plate.Minus(hole), cover), new(plate.Minus(track), cover + slot),
                new(plate.Minus(hole), 2 * cover + slot)], 0.8, 0.8);
        Region collar = Outline.Circle(r + 4.4).Minus(Outline.Circle(r + 1.6));
        Level[] levels = [new(0), new(20), new(21, 0.6)];
        body.Raised(collar, new Vec3(0, 0, 99), Turns.Down, levels);
        body.Raised(collar, new Vec3(0, 0, -99), Turns.Up, levels);
        Region screws = Outline.Circle(2.2, half - 6, half - 6).Around(4);
        return body.Pierced(screws, new Vec3(0, 0, cover + slot + cover + 1), Turns.Down);
    }

    private static Solid GateSlide(double bore)
    {
        double r = bore / 2 + 3.6;
        Region slide = Outline.Rectangle(-r, -r, r, 2.4 * r, 3)
            .Plus(Outline.Rectangle(-r - 7, 2.4 * r - 12, r + 7, 2.4 * r + 4, 5)).Rounded(2, 2);
        Solid plate = Prism.Of(slide.Minus(Outline.Circle(bore / 2, 0, 1.2 * r)), 0, 3, 0.4, 0.4);
        Region grips = Outline.Centred(1.8, 10, 0.8).Row(9, 6);
        return plate.Raised(grips, new Vec3(0, 2.4 * r - 4, 99), Turns.Down, new Level(0), new Level(1.2),
            new Level(1.6, 0.4));
    }
}
