using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>What the hand takes hold of: bow handles, a crank, knobs; mm.</summary>
internal static class Handles
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("bench-supply/handle.stl", Bow(span: 128, height: 42, width: 20)),
        () => Model.Stl("barrow-winch/crank.stl", Crank(throwLength: 150, hub: 17, wrist: 11)),
        () => Model.Stl("barrow-winch/grip.stl", Grip(length: 84, diameter: 30)),
        () => Model.Stl("odds-and-ends/oven-knob.stl", Knob(diameter: 42, height: 22, lobes: 9)),
    ];

    /// <summary>A bow with flared feet; a blind hole for a screw in each.</summary>
    private static Solid Bow(double span, double height, double width)
    {
        double half = span / 2;
        List<Vec3> path = Loft.Path(height * 0.55,
            new(-half, 0, 0), new(-half, 0, 6), new(-half + 4, 0, height), new(half - 4, 0, height), new(half, 0, 6),
                new(half, 0, 0));
        Region section = Outline.Centred(width, 11, 4.5);
        Solid bow = Loft.Along(section, path, Vec3.UnitY, share => 1 + 0.35 * Math.Pow(Math.Abs(2 * share - 1), 14));
        foreach (int side in (ReadOnlySpan<int>)[-1, 1]) bow.Bored(2.1, 14, new Vec3(side * half, 0, -9), Turns.Up);
        return bow;
    }

    /// <summary>
    /// An arm between a hub with a flatted bore and the bore of the grip's bolt, lightened in between.
    /// </summary>
    private static Solid Crank(double throwLength, double hub, double wrist)
    {
        Region arm = Outline.Circle(hub).Plus(Outline.Circle(wrist, throwLength), Outline.Of(
            new(0, -hub * 0.8), new(throwLength, -wrist * 0.8), new(throwLength, wrist * 0.8), new(0, hub * 0.8)))
                .Rounded(0, 20);
        Solid crank = Prism.Of(arm, Frame.Level(0), Prism.Filleted(11, 1.5, 1.5, 3));
        Region recess = Outline.Of(new(hub + 4, -hub * 0.42), new(throwLength - wrist - 3, -wrist * 0.42),
            new(throwLength - wrist - 3, wrist * 0.42), new(hub + 4, hub * 0.42)).Rounded(3);
        crank.Pocketed(recess, new Vec3(0, 0, 99), Turns.Down, new Level(0, -0.6), new Level(0.6), new Level(3.4),
            new Level(4, 0.6));
        crank.Raised(Outline.Circle(hub - 3), new Vec3(0, 0, 99), Turns.Down, new Level(0, -1), new Level(1),
            new Level(9), new Level(10, 1));
        crank.Pierced(Gears.FlattedBore(6), new Vec3(0, 0, 99), Turns.Down);
        return crank.Drilled(4.1, new Vec3(throwLength, 0, 99), Turns.Down, 0.5);
    }

    private static Solid Grip(double length, double diameter)
    {
        double r = diameter / 2;
        List<Vec2> line = [new(4.3, 0), new(r * 0.8, 0)];
        for (int i = 0; i <= 20; i++)
        {
            double share = i / 20.0;
            line.Add(new(r * (0.86 + 0.14 * Math.Sin(Math.PI * share) - 0.04 * Math.Cos(4 * Math.PI * share)),
                1 + (length - 2) * share));
        }
        line.AddRange([new(r * 0.8 - 0.6, length), new(8, length), new(8, length - 8), new(4.3, length - 8)]);
        return Revolved.Of(line, 48);
    }

    /// <summary>A knob with finger lobes, a pointer and the flatted bore of its spindle underneath.</summary>
    private static Solid Knob(double diameter, double height, int lobes)
    {
        double r = diameter / 2;
        Vec2[] outline = [.. Enumerable.Range(0, lobes * 8).Select(i =>
        {
            double angle = Math.Tau * i / (lobes * 8);
            return Outline.Polar(r - 1.6 + 1.6 * Math.Cos(lobes * angle), angle);
        })];
        Solid knob = Prism.Of(Outline.Of(outline), Frame.Level(0), Prism.Filleted(height, 0.8, 3, 5));
        knob.Raised(Outline.Slot(new(r * 0.15, 0), new(r * 0.7, 0), 3), new Vec3(0, 0, 99), Turns.Down, new Level(0),
            new Level(1), new Level(1.4, 0.4));
        knob.Pocketed(Outline.Circle(r - 5).Minus(Outline.Circle(6.5)), new Vec3(0, 0, -9), Turns.Up, new Level(0),
            new Level(height - 7), new Level(height - 6, 1));
        return knob.Pocketed(Gears.FlattedBore(3.1), new Vec3(0, 0, -9), Turns.Up, new Level(0, -0.4), new Level(0.4),
            new Level(14));
    }
}
