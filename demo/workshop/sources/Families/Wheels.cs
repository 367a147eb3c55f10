using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>The kayak trolley: hub, tyre, and the forks of its left and right side; mm.</summary>
internal static class Wheels
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("kayak-trolley/hub.3mf", FileKind.ThreeMf, Hub(diameter: 196, width: 44, spokes: 7), "PA", "#2B2B2B"),
        () => new("kayak-trolley/tyre.3mf", FileKind.ThreeMf, Tyre(outer: 254, inner: 196.6, width: 44, lugs: 36),
            "TPU", "#1A1A1A"),
        () => Model.Stl("kayak-trolley/fork-left.stl", Fork()),
        () => Model.Stl("kayak-trolley/fork-right.stl", Fork().Moved(Turns.Mirror)),
    ];

    private static Solid Hub(double diameter, double width, int spokes)
    {
        double r = diameter / 2, rim = r - 9, nave = 24;
        Solid hub = Prism.Of(Outline.Circle(r).Minus(Outline.Circle(6.2)), 0, width, 1.2, 1.2);
        Region web = Outline.Circle(rim).Minus(Outline.Circle(nave));
        double share = 360.0 / spokes;
        Region window = Outline.Of([
            .. Outline.Arc(default, nave + 6, -share / 2, share / 2, 8),
                .. Outline.Arc(default, rim - 5, share / 2, -share / 2, 16)])
            .Grown(-6).Rounded(7);
        double depth = width / 2 - 6;
        Level[] recess = [new Level(0), new Level(depth - 3), new Level(depth - 0.8, 1), new Level(depth, 3)];
        hub.Pocketed(web, new Vec3(0, 0, 999), Turns.Down, recess);
        hub.Pocketed(web, new Vec3(0, 0, -9), Turns.Up, recess);
        return hub.Pierced(window.Around(spokes), new Vec3(0, 0, 999), Turns.Down, 0.8);
    }

    /// <summary>A tyre whose lugs lean, cut as one outline and twisted there and back.</summary>
    private static Solid Tyre(double outer, double inner, double width, int lugs)
    {
        double r = outer / 2;
        List<Vec2> tread = [];
        for (int i = 0; i < lugs; i++)
        {
            double at = Math.Tau * i / lugs, share = Math.Tau / lugs;
            tread.AddRange([
                Outline.Polar(r - 5, at), Outline.Polar(r - 5, at + share * 0.2),
                    Outline.Polar(r - 5, at + share * 0.4),
                Outline.Polar(r, at + share * 0.5), Outline.Polar(r, at + share * 0.7),
                    Outline.Polar(r, at + share * 0.9)]);
        }
        Region section = Outline.Of([.. tread]).Minus(Outline.Circle(inner / 2));
        return Loft.Of(section, 0, width, 8, (p, share) =>
        {
            double from = 2 * share - 1;
            double turn = 0.06 * (1 - Math.Abs(from)), crown = p.Length > inner / 2 + 1
                ? 1 - 0.035 * from * from * from * from : 1;
            (double sin, double cos) = Math.SinCos(turn);
            return new Vec2(p.X * cos - p.Y * sin, p.X * sin + p.Y * cos) * crown;
        });
    }

    /// <summary>A cheek that holds axle and frame tube, ribbed on its outer side, with an offset foot.</summary>
    private static Solid Fork()
    {
        Region cheek = Outline.Circle(20)
            .Plus(Outline.Of(new(-20, 0), new(20, 0), new(34, 118), new(-14, 118)),
                Outline.Rectangle(-16, 104, 62, 134, 8))
            .Rounded(6, 14);
        Solid fork = Prism.Of(cheek, 0, 14, 1, 1);
        Region pocket = Outline.Of(new(-11, 26), new(13, 26), new(22, 98), new(-6, 98)).Rounded(4)
            .Minus(Outline.Stroke(4, new(-14, 40), new(20, 66)), Outline.Stroke(4, new(22, 62), new(-12, 94)))
                .Rounded(2);
        fork.Pocketed(pocket, new Vec3(0, 0, 99), Turns.Down, new Level(0), new Level(7), new Level(8, 1));
        fork.Raised(Outline.Circle(14), new Vec3(0, 0, 99), Turns.Down, new Level(0, -2), new Level(2), new Level(9),
            new Level(10, 1));
        fork.Pierced(Outline.Circle(6.2), new Vec3(0, 0, 99), Turns.Down, 0.6);
        foreach (double x in (ReadOnlySpan<double>)[-2, 24, 50]) fork.Drilled(3.3, new Vec3(x, 119, 99), Turns.Down,
            head: 6.4);
        return fork;
    }
}
