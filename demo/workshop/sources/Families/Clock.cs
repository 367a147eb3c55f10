using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>
/// The workshop clock: an open dial, an escape wheel, a pendulum, and a plate of its small parts; mm.
/// </summary>
internal static class Clock
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("workshop-clock/dial.3mf", FileKind.ThreeMf, Dial(diameter: 244), "PLA", "#F3EFE4"),
        () => new("workshop-clock/escape-wheel.3mf", FileKind.ThreeMf, EscapeWheel(diameter: 72, teeth: 30), "PLA",
            "#C9A227"),
        () => Model.Stl("workshop-clock/pendulum-rod.stl", Pendulum(length: 326)),
        () => Model.Stl("workshop-clock/hands plate.stl", Plate()),
    ];

    public static Solid Dial(double diameter)
    {
        double r = diameter / 2;
        Solid dial = Prism.Of(Outline.Circle(r), 0, 5, 0.8, 1.2);
        Region mark = Outline.Centred(18, 5, 2, r - 17);
        Region quarter = Outline.Centred(26, 9, 3, r - 21);
        Region marks = quarter.Around(4);
        for (int hour = 0; hour < 12; hour++)
            if (hour % 3 != 0) marks = marks.Plus(mark.Moved(0, 0, 30 * hour));
        dial.Pierced(marks, new Vec3(0, 0, 99), Turns.Down, 0.3);
        Region window = Outline.Of([.. Outline.Arc(default, 34, -36, 36, 10),
            .. Outline.Arc(default, r - 42, 39, -39, 18)]).Rounded(8);
        dial.Pierced(window.Moved(0, 0, 45).Around(4), new Vec3(0, 0, 99), Turns.Down, 0.6);
        dial.Raised(Outline.Circle(16), new Vec3(0, 0, 99), Turns.Down, new Level(0, -2), new Level(2), new Level(5),
            new Level(6, 1));
        return dial.Pierced(Outline.Circle(5.2), new Vec3(0, 0, 99), Turns.Down, 0.4);
    }

    /// <summary>Teeth with a steep and a leaning flank, five curved spokes.</summary>
    private static Solid EscapeWheel(double diameter, int teeth)
    {
        double r = diameter / 2;
        List<Vec2> outline = [];
        for (int i = 0; i < teeth; i++)
        {
            double at = Math.Tau * i / teeth, share = Math.Tau / teeth;
            outline.AddRange([
                Outline.Polar(r - 6, at), Outline.Polar(r - 5.8, at + share * 0.35),
                    Outline.Polar(r - 0.3, at + share * 0.92), Outline.Polar(r, at + share * 1.02)]);
        }
        Region disc = Outline.Of([.. outline]).Minus(Outline.Circle(3.1));
        Region windows = Outline.Circle(r - 9).Minus(Outline.Circle(9));
        for (int i = 0; i < 5; i++)
            windows = windows.Minus(Outline.Stroke(3.4, Outline.Arc(new(18, 0), 18, 180, 68)).Moved(0, 0, 72 * i));
        return Prism.Of(disc.Minus(windows.Rounded(1.4)), 0, 4, 0.3, 0.3);
    }

    private static Solid Pendulum(double length)
    {
        Region rod = Outline.Slot(new(9, 0), new(length - 9, 0), 7)
            .Plus(Outline.Circle(8, 9), Outline.Circle(8, length - 9), Outline.Centred(60, 10, 4, length - 60))
            .Minus(Outline.Circle(2.6, 9), Outline.Circle(2.1, length - 9),
                Outline.Slot(new(length - 84, 0), new(length - 36, 0), 3.4))
            .Rounded(1.2, 3);
        return Prism.Of(rod, 0, 5, 0.6, 0.6);
    }

    /// <summary>Hands, a bush and washers laid out side by side in one file, as they were last made.</summary>
    private static Solid Plate()
    {
        Solid minute = Hand(96, 7);
        Solid hour = Hand(68, 9);
        Solid bush = Revolved.Of([
            new(3.1, 0), new(9, 0), new(9, 2), new(5, 3), new(5, 14), new(4.4, 14.6), new(3.1, 14.6)], 32);
        Solid plate = minute.With(hour, new Vec3(0, 24, 0)).With(bush, new Vec3(94, 24, 0));
        for (int i = 0; i < 4; i++)
            plate.With(Revolved.Of([new(3.2, 0), new(7, 0), new(7, 1.6), new(3.2, 1.6)], 28),
                new Vec3(6 + 18 * i, 46, 0));
        return plate;
    }

    private static Solid Hand(double length, double width)
    {
        Region hand = Outline.Circle(8).Plus(
            Outline.Of(new(0, -width / 2), new(length * 0.7, -width / 2 - 1), new(length, -0.8), new(length, 0.8),
                new(length * 0.7, width / 2 + 1), new(0, width / 2)))
            .Minus(Outline.Circle(5.1),
                Outline.Of(new(18, -width * 0.18), new(length * 0.68, -width * 0.3), new(length * 0.68, width * 0.3),
                    new(18, width * 0.18)).Rounded(0.8))
            .Rounded(0.7, 3);
        return Prism.Of(hand, 0, 2.4, 0, 0.4);
    }
}
