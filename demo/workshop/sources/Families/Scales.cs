using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>The kitchen scale: its platform and the door of its battery case; mm.</summary>
internal static class Scales
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("kitchen-scale/platform.3mf", FileKind.ThreeMf, Platform(width: 238, depth: 184), "ABS", "#F4F4F0"),
        () => Model.Stl("kitchen-scale/battery-door.stl", Door(width: 64, depth: 34)),
    ];

    /// <summary>A plate with a turned-down rim, ribs beneath and four seats for the load cell's arms.</summary>
    private static Solid Platform(double width, double depth)
    {
        Solid plate = Prism.Of(Outline.Centred(width, depth, 26), Frame.Level(0), Prism.Filleted(13, 0, 4));
        Region inside = Outline.Centred(width - 6, depth - 6, 23);
        Region ribs = Outline.Centred(1.8, depth, 0, 0);
        for (int i = -2; i <= 2; i++)
            ribs = ribs.Plus(Outline.Centred(1.8, depth, 0, i * width / 6),
                Outline.Centred(width, 1.8, 0, 0, i * depth / 6));
        Region seats = Outline.Circle(9, width / 6, depth / 6).Plus(
            Outline.Circle(9, -width / 6, depth / 6), Outline.Circle(9, -width / 6, -depth / 6),
                Outline.Circle(9, width / 6, -depth / 6));
        plate.Pocketed(inside.Minus(ribs, seats).Rounded(2), new Vec3(0, 0, -9), Turns.Up, new Level(0), new Level(9),
            new Level(10, 1));
        foreach ((int x, int y) in (ReadOnlySpan<(int, int)>)[(-1, -1), (1, -1), (1, 1), (-1, 1)])
            plate.Bored(1.6, 8, new Vec3(x * width / 6, y * depth / 6, -9), Turns.Up);
        return plate.Moved(Turns.Over);
    }

    /// <summary>A slide-in door with two tongues and a sprung latch.</summary>
    private static Solid Door(double width, double depth)
    {
        Region sheet = Outline.Rectangle(0, 0, width, depth, 2);
        Region tongues = Outline.Rectangle(9, -4, 17, 6, 1).Plus(Outline.Rectangle(width - 17, -4, width - 9, 6, 1));
        double mid = width / 2;
        Region cut = Outline.Rectangle(mid - 9, depth - 14, mid - 7.6, depth + 9)
            .Plus(Outline.Rectangle(mid + 7.6, depth - 14, mid + 9, depth + 9));
        Solid door = Layers.Of(0, [new(sheet.Plus(tongues).Minus(cut), 1.6), new(sheet.Minus(cut), 2.6)], 0.2, 0.4);
        Region grips = Outline.Centred(10, 1, 0.45).Moved(0, 0, 90).Row(5, 2.4).Moved(0, 0, 90);
        door.Raised(grips, new Vec3(mid, depth - 9.4, 99), Turns.Down, new Level(0), new Level(0.8));
        return door;
    }
}
