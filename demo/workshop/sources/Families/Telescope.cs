using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>The school telescope: a tall ribbed tube, the cell of its mirror, a focus wheel, a cradle; mm.</summary>
internal static class Telescope
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("school-telescope/tube.3mf", FileKind.ThreeMf, Tube(bore: 86, length: 330), "PLA", "#20252B"),
        () => Model.Stl("school-telescope/mirror-cell.stl", Cell(bore: 86)),
        () => Model.Stl("school-telescope/focus-wheel.stl", FocusWheel(diameter: 38, width: 12)),
        () => Model.Stl("school-telescope/cradle.stl", Cradle(tube: 93, width: 56)),
    ];

    private static Solid Tube(double bore, double length)
    {
        double b = bore / 2, r = b + 2.4, ring = r + 3;
        List<Vec2> line = [new(b, 0), new(ring, 0), new(ring, 10), new(r, 13)];
        for (int i = 1; i < 4; i++)
        {
            double z = length * i / 4;
            line.AddRange([new(r, z - 5), new(r + 2, z - 3), new(r + 2, z + 3), new(r, z + 5)]);
        }
        line.AddRange([new(r, length - 13), new(ring, length - 10), new(ring, length), new(b, length)]);
        return Revolved.Of(line, 72);
    }

    private static Solid Cell(double bore)
    {
        double r = bore / 2 - 0.4;
        Solid cell = Prism.Of(Outline.Circle(r), 0, 14, 0.8, 0.8);
        cell.Pocketed(Outline.Circle(r - 3.5), new Vec3(0, 0, 99), Turns.Down, new Level(0), new Level(9.2),
            new Level(10, 0.8));
        Region window = Outline.Of([.. Outline.Arc(default, 13, -42, 42, 8),
            .. Outline.Arc(default, r - 8, 48, -48, 16)]).Rounded(4);
        cell.Pierced(window.Around(3), new Vec3(0, 0, 99), Turns.Down);
        Region pads = Outline.Circle(4.5, r - 13).Moved(0, 0, 60).Around(3);
        cell.Raised(pads, new Vec3(0, 0, 13), Turns.Down, new Level(0), new Level(2.4), new Level(3, 0.6));
        foreach (double degrees in (ReadOnlySpan<double>)[60, 180, 300])
        {
            Vec2 p = Outline.Polar(r - 13, double.DegreesToRadians(degrees));
            cell.Drilled(1.7, new Vec3(p.X, p.Y, 13.5), Turns.Down);
        }
        return cell;
    }

    private static Solid FocusWheel(double diameter, double width)
    {
        double r = diameter / 2;
        Vec2[] knurl = [.. Enumerable.Range(0, 96)
            .Select(i => Outline.Polar(r - (i % 4 < 2 ? 0 : 0.9), Math.Tau * i / 96))];
        Solid wheel = Prism.Of(Outline.Of(knurl).Minus(Outline.Circle(3.1)), 0, width, 0.3, 0.3);
        foreach (bool top in (ReadOnlySpan<bool>)[true, false])
            wheel.Pocketed(Outline.Circle(r - 4).Minus(Outline.Circle(7)), new Vec3(0, 0, top ? 99 : -9), top
                ? Turns.Down : Turns.Up,
                new Level(0), new Level(2.6), new Level(3.4, 0.8));
        return wheel.Pierced(Outline.Circle(2.4, 11).Around(6), new Vec3(0, 0, 99), Turns.Down);
    }

    /// <summary>A saddle that holds the tube; a strap goes through the slots beside it.</summary>
    private static Solid Cradle(double tube, double width)
    {
        double r = tube / 2, half = r + 9, height = 44;
        Region saddle = Outline.Rectangle(-half, 0, half, height)
            .Minus(Outline.Circle(r, 0, r + 9), Outline.Rectangle(-9, 7, 9, 14));
        Region light = Outline.Rectangle(-half + 7, 8, -half + 24, 17, 3)
            .Plus(Outline.Rectangle(half - 24, 8, half - 7, 17, 3));
        Region profile = saddle.Rounded(2).Minus(light);
        Solid cradle = Prism.Of(profile, 0, width, 1, 1).Moved(Turns.YUp);
        cradle.Drilled(3.3, new Vec3(0, -width / 2, -9), Turns.Up, 0.5);
        return cradle;
    }
}
