using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Boxes for drawers on a grid of 60 mm, with feet that register in each other; mm.</summary>
internal static class Drawers
{
    private const double GridMm = 60;

    /// <summary>The boxes go into one zipped pack.</summary>
    public static IReadOnlyList<Func<Model>> Packed { get; } =
    [
        () => Model.Stl("box 1x1.stl", Box(1, 1, 45, 1)),
        () => Model.Stl("box 2x1 split.stl", Box(2, 1, 45, 3)),
        () => Model.Stl("sizes/box 2x2.stl", Box(2, 2, 45, 1)),
        () => Model.Stl("sizes/box 3x2 split.stl", Box(3, 2, 45, 4)),
    ];

    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("drawer-boxes/base-3x2.stl", Base(3, 2)),
    ];

    private static Solid Box(int across, int deep, double height, int cells)
    {
        double w = across * GridMm - 0.6, d = deep * GridMm - 0.6, wall = 1.6;
        Solid box = Prism.Of(Outline.Centred(w, d, 5), Frame.Level(0), [
            new Level(0, 2.4), new Level(0.8, 1.8), new Level(3, 1.8), new Level(4.6), new Level(height - 1.2),
                new Level(height, 0.5)]);
        Region inside = Outline.Centred(w - 2 * wall, d - 2 * wall, 3.4);
        for (int i = 1; i < cells; i++)
            inside = inside.Minus(Outline.Centred(wall, d, 0, -w / 2 + w * i / cells));
        Solid made = box.Pocketed(inside.Rounded(2.2), new Vec3(0, 0, 99), Turns.Down,
            new Level(0), new Level(height - 9), new Level(height - 6.6, 0.8), new Level(height - 5.6, 2));
        return made;
    }

    /// <summary>A base plate whose pockets take the boxes' feet.</summary>
    private static Solid Base(int across, int deep)
    {
        double w = across * GridMm, d = deep * GridMm;
        Solid plate = Prism.Of(Outline.Centred(w, d, 5), 0, 5, 0, 0.4);
        Region seats = Outline.Centred(GridMm - 3.4, GridMm - 3.4, 3.6).Row(across, GridMm);
        for (int i = 0; i < deep; i++)
            plate.Pocketed(seats, new Vec3(0, (i - (deep - 1) / 2.0) * GridMm, 99), Turns.Down, new Level(0),
                new Level(2.2), new Level(3.2, 0.8));
        for (int i = 0; i < across * deep; i++)
        {
            double x = (i % across - (across - 1) / 2.0) * GridMm, y = (i / across - (deep - 1) / 2.0) * GridMm;
            plate.Pierced(Outline.Circle(19), new Vec3(x, y, 99), Turns.Down, 0.4);
        }
        return plate;
    }
}
