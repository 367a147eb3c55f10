using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>A tray that hooks onto a walking frame, with its cup ring and clamps; mm.</summary>
internal static class Trays
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("walker-tray/tray.3mf", FileKind.ThreeMf, Tray(width: 372, depth: 258), "PETG", "#8FB3A3"),
        () => Model.Stl("walker-tray/cup-ring.stl", CupRing(cup: 84)),
        () => Model.Stl("walker-tray/clamp-left.stl", Clamp(tube: 25.4)),
        () => Model.Stl("walker-tray/clamp-right.stl", Clamp(tube: 25.4).Moved(Turns.Mirror)),
    ];

    private static Solid Tray(double width, double depth)
    {
        Region sharp = Outline.Rectangle(-width / 2, -depth / 2, width / 2, depth / 2)
            .Minus(Outline.Circle(160, 0, -depth / 2 - 118));
        Region outline = sharp.Rounded(24, 20);
        Solid tray = Prism.Of(outline, Frame.Level(0), Prism.Filleted(26, 4, 1.6));
        Region well = sharp.Grown(-7).Rounded(18, 26);
        tray.Pocketed(well, new Vec3(0, 0, 99), Turns.Down, new Level(0, -1.2), new Level(1.2), new Level(18),
            new Level(20, 0.8), new Level(22, 2.8), new Level(22.6, 4.6));
        tray.Pierced(Outline.Circle(44), new Vec3(-width / 2 + 68, depth / 2 - 66, 99), Turns.Down, 0.8);
        tray.Pierced(Outline.Slot(new(-34, 0), new(34, 0), 24), new Vec3(width / 2 - 82, depth / 2 - 40, 99),
            Turns.Down, 0.8);
        Region ribs = Outline.Slot(new(0, -40), new(0, 40), 4).Row(5, 22);
        return tray.Raised(ribs, new Vec3(60, 14, 99), Turns.Down, new Level(0, -0.8), new Level(0.8),
            new Level(1.8, 0.6));
    }

    /// <summary>A flanged cup with drain slots, let into the tray's round hole.</summary>
    private static Solid CupRing(double cup)
    {
        double r = cup / 2;
        Solid ring = Revolved.Of([
            new(0, 0), new(r - 3, 0), new(r, 3), new(r + 0.6, 62), new(r + 7, 62), new(r + 8, 63), new(r + 8, 65),
                new(r + 7, 66), new(r - 0.6, 66),
            new(r - 2.2, 64), new(r - 2.6, 4.6), new(r - 4.6, 2.6), new(0, 2.6)]);
        Region slot = Outline.Slot(new(10, 0), new(r - 12, 0), 5);
        return ring.Pierced(slot.Around(6), new Vec3(0, 0, -9), Turns.Up, 0.4);
    }

    /// <summary>A jaw for the frame's tube with a bolt through its ears and an arm that carries the tray.</summary>
    private static Solid Clamp(double tube)
    {
        double r = tube / 2, outer = r + 6;
        Region jaw = Outline.Circle(outer)
            .Plus(Outline.Rectangle(0, -11, outer + 20, 11),
                Outline.Rectangle(-outer - 34, -outer, -outer + 12, -outer + 10))
            .Rounded(1.6, 4).Minus(Outline.Circle(r), Outline.Rectangle(0, -1.6, outer + 40, 1.6));
        Solid clamp = Prism.Of(jaw, 0, 30, 0.5, 0.5);
        clamp.Drilled(2.7, new Vec3(outer + 10, 99, 15), -Vec3.UnitY, head: 5);
        clamp.Drilled(2.7, new Vec3(outer + 10, -99, 15), Vec3.UnitY, head: 5);
        foreach (double z in (ReadOnlySpan<double>)[8, 22]) clamp.Drilled(2.2, new Vec3(-outer - 22, -99, z),
            Vec3.UnitY, head: 4.2);
        return clamp;
    }
}
