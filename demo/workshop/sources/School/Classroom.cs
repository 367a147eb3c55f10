using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.School;

/// <summary>Things for the room itself: stands, a door stop, a marble run for the wall; mm.</summary>
internal static class Classroom
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("marble-run/straight.stl", Straight(length: 148)),
        () => Model.Stl("marble-run/bend.stl", Bend(radius: 58)),
        () => Model.Stl("tablet-stand/tablet-stand.stl", TabletStand(width: 84)),
        () => Model.Stl("door-stop/door-stop.stl", DoorStop(length: 108, height: 30, width: 40)),
        () => Model.Stl("display-stand/steps.stl", Steps(count: 3, rise: 24, run: 40, width: 222)),
    ];

    /// <summary>A channel for marbles of 16 mm, drawn with x upwards.</summary>
    private static Region Channel => Outline.Centred(18, 26, 2).Minus(Outline.Circle(10, 9.5)).Rounded(0.5);

    private static Solid Straight(double length) =>
        Loft.Along(Channel, [default, new(length / 2, 0, 0), new(length, 0, 0)], Vec3.UnitZ);

    private static Solid Bend(double radius) =>
        Loft.Along(Channel, [.. Outline.Arc(default, radius, 0, 90, 14).Select(p => new Vec3(p.X, p.Y, 0))],
            Vec3.UnitZ);

    /// <summary>A foot, a leaning back, a lip, and a stay behind.</summary>
    private static Solid TabletStand(double width)
    {
        Region profile = Outline.Stroke(5, new(-16, 18), new(-10, 2.5), new(96, 2.5))
            .Plus(Outline.Stroke(5, new(8, 2.5), new(50, 112)), Outline.Stroke(4, new(36, 76), new(88, 2.5)))
            .Rounded(0, 3);
        return Prism.Of(profile, 0, width, 0.5, 0.5).Moved(Turns.YUp);
    }

    /// <summary>A soft wedge with a grooved sole.</summary>
    private static Solid DoorStop(double length, double height, double width)
    {
        Region wedge = Outline.Of(new(0, 0), new(length, 0), new(length, height), new(length - 12, height), new(0, 5))
            .Rounded(2);
        Region[] grooves = [.. Enumerable.Range(1, 8).Select(i => Outline.Circle(1.6, length * i / 9))];
        return Prism.Of(wedge.Minus(grooves), 0, width, 0.5, 0.5).Moved(Turns.YUp);
    }

    /// <summary>A sheet folded into steps, open below.</summary>
    private static Solid Steps(int count, double rise, double run, double width)
    {
        List<Vec2> fold = [new(0, 0)];
        for (int i = 0; i < count; i++)
            fold.AddRange([new(run * i, rise * (i + 1)), new(run * (i + 1), rise * (i + 1))]);
        fold.Add(new(run * count, 0));
        return Prism.Of(Outline.Stroke(2.4, [.. fold]), 0, width, 0.4, 0.4).Moved(Turns.YUp);
    }
}
