using Platewright.Demo.Families;
using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.School;

/// <summary>For lessons on forces and motion: a pair of gears, a kit of truss parts, a buggy; mm.</summary>
internal static class Mechanics
{
    /// <summary>A loose fit for pegs of 6 mm.</summary>
    private const double PegHoleMm = 3.15;

    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("gear-pair/pinion-14.stl",
            Gears.Spur(module: 3, teeth: 14, width: 9, Outline.Circle(PegHoleMm), hub: 0, windows: 0)),
        () => new("gear-pair/wheel-42.3mf", FileKind.ThreeMf,
            Gears.Spur(module: 3, teeth: 42, width: 9, Outline.Circle(PegHoleMm), hub: 10, windows: 5), "PLA",
                "#3D7EA6"),
        () => Model.Stl("truss-bridge/strut.stl", Strut(pitch: 96)),
        () => Model.Stl("truss-bridge/node.stl", Node(reach: 22)),
        () => Model.Stl("truss-bridge/deck.stl", Deck(length: 288, width: 70)),
        () => Model.Stl("buggy/chassis.stl", Chassis(length: 178, width: 84)),
        () => Model.Stl("buggy/wheel.stl", Wheel(diameter: 64, width: 12)),
        () => Model.Stl("bench-two/bracket.stl", Brackets.Angle(foot: 48, back: 48, width: 26, thickness: 4.5)),
    ];

    private static Solid Strut(double pitch) => Prism.Of(
        Outline.Slot(default, new(pitch, 0), 13).Minus(Outline.Circle(PegHoleMm), Outline.Circle(PegHoleMm, pitch)),
        0, 4, 0.4, 0.4);

    /// <summary>A six-armed joint for struts.</summary>
    private static Solid Node(double reach)
    {
        Region hole = Outline.Circle(PegHoleMm, reach);
        Region star = Outline.Slot(default, new(reach, 0), 13).Around(6).Rounded(0, 4);
        return Prism.Of(star.Minus(hole.Around(6), Outline.Circle(PegHoleMm)), 0, 4, 0.4, 0.4);
    }

    /// <summary>A road with a row of peg holes along both kerbs.</summary>
    private static Solid Deck(double length, double width)
    {
        Solid deck = Prism.Of(Outline.Centred(length, width, 4), 0, 5, 0.5, 0.5);
        deck.Pocketed(Outline.Centred(length - 3, width - 26, 2), new Vec3(0, 0, 99), Turns.Down, new Level(0),
            new Level(2.4));
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
            deck.Pierced(Outline.Circle(PegHoleMm).Row(7, length / 7.5),
                new Vec3(0, side * (width / 2 - 6.5), 99), Turns.Down);
        return deck;
    }

    /// <summary>A waisted plate with openings for a motor and a battery, and four bearings for the axles.</summary>
    private static Solid Chassis(double length, double width)
    {
        Region plate = Outline.Centred(length, width, 10)
            .Minus(Outline.Centred(length * 0.4, 20, 0, 0, width / 2), Outline.Centred(length * 0.4, 20, 0, 0,
                -width / 2))
            .Rounded(3, 6);
        Region openings = Outline.Centred(44, 34, 4, -length * 0.26).Plus(Outline.Centred(62, 40, 4, length * 0.16));
        Solid chassis = Prism.Of(plate.Minus(openings), 0, 4, 0.5, 0.5);
        foreach (int end in (ReadOnlySpan<int>)[-1, 1])
            foreach (int side in (ReadOnlySpan<int>)[-1, 1])
            {
                Vec3 at = new(end * (length / 2 - 12), side * (width / 2 - 10), 0);
                chassis.Raised(Outline.Centred(14, 8), at + new Vec3(0, 0, 99), Turns.Down, new Level(0),
                    new Level(14), new Level(15, 1));
                chassis.Drilled(2.2, at + new Vec3(0, -8, 12), Vec3.UnitY);
            }
        return chassis;
    }

    /// <summary>A rim and a hub with a thin web between, five holes in it.</summary>
    private static Solid Wheel(double diameter, double width)
    {
        double r = diameter / 2, hub = 7, rim = r - 4, bore = 2.1, web = 3;
        Solid wheel = Revolved.Of([
            new(bore, 0), new(hub, 0), new(hub, width - web), new(rim, width - web), new(rim, 0), new(r - 1, 0),
                new(r, 1), new(r, width - 1), new(r - 1, width), new(bore, width)]);
        Region hole = Outline.Circle(5.5, (hub + rim) / 2);
        return wheel.Pierced(hole.Around(5), new Vec3(0, 0, 99), Turns.Down);
    }
}
