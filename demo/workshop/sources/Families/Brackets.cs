using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Angles, shelf brackets and mounting plates; sizes in mm.</summary>
internal static class Brackets
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("tool-wall/angle.stl", Angle(foot: 60, back: 80, width: 30, thickness: 5)),
        () => new("tool-wall/shelf-bracket.amf", FileKind.Amf, Shelf(foot: 180, back: 140, width: 32), "PETG")
            { Origin = ("Ottoline Varga", "free for any use, no warranty") },
        () => Model.Stl("sewing-table/motor-plate.stl", MotorPlate(width: 130, depth: 80)),
    ];

    /// <summary>An angle with a gusset at each side and two countersunk holes in each leg.</summary>
    public static Solid Angle(double foot, double back, double width, double thickness)
    {
        Region angle = Ell(foot, back, thickness, thickness);
        Region gusset = angle.Plus(Outline.Of(
            new(thickness / 2, thickness / 2), new(foot * 0.6, thickness / 2), new(foot * 0.6, thickness),
                new(thickness, back * 0.6), new(thickness / 2, back * 0.6)));
        double rib = 3.2;
        Solid solid = Layers.Of(0, [new(gusset, rib), new(angle, width - rib), new(gusset, width)], 0.8, 0.8);
        foreach (double share in (ReadOnlySpan<double>)[0.42, 0.8])
        {
            solid.Drilled(2.3, new Vec3(foot * share, back * 2, width / 2), -Vec3.UnitY, head: 4.6);
            solid.Drilled(2.3, new Vec3(foot * 2, back * share, width / 2), -Vec3.UnitX, head: 4.6);
        }
        return solid.Moved(Turns.YUp);
    }

    /// <summary>
    /// A shelf bracket: an angle with a braced web in its middle and screw holes to both sides of it.
    /// </summary>
    public static Solid Shelf(double foot, double back, double width)
    {
        double flange = 4.5, web = 5;
        Region angle = Ell(foot, back, flange, 2);
        Region outside = Outline.Of(new(1, 1), new(foot - 6, 1), new(foot - 6, flange + 6), new(flange + 6, back - 6),
            new(1, back - 6));
        Region inside = Outline.Of(new(flange, flange), new(foot, flange), new(flange, back));
        Region brace = outside.Grown(-7).And(inside.Grown(-1));
        double cut = 8;
        Vec2 elbow = new(flange, flange);
        Vec2 far = elbow + new Vec2(foot, back) * 0.6;
        Region windows = brace.Minus(Outline.Stroke(cut, elbow, far)).Rounded(4);
        Region truss = angle.Plus(outside).Minus(windows);
        double low = (width - web) / 2;
        Solid solid = Layers.Of(0, [new(angle, low), new(truss, low + web), new(angle, width)], 0.8, 0.8);
        foreach (double z in (ReadOnlySpan<double>)[low / 2, width - low / 2])
            foreach (double share in (ReadOnlySpan<double>)[0.3, 0.85])
            {
                solid.Drilled(2.2, new Vec3(foot * share, back * 2, z), -Vec3.UnitY, head: 4.2);
                solid.Drilled(2.2, new Vec3(foot * 2, back * share, z), -Vec3.UnitX, head: 4.2);
            }
        return solid;
    }

    /// <summary>
    /// A plate for a small flange motor: slotted holes to tension a belt, a stiff rim, a round opening.
    /// </summary>
    public static Solid MotorPlate(double width, double depth)
    {
        Solid plate = Prism.Of(Outline.Centred(width, depth, 8), 0, 12, 0.8, 0.8);
        plate.Pocketed(Outline.Centred(width - 8, depth - 8, 5), new Vec3(0, 0, 99), Turns.Down, new Level(0),
            new Level(6), new Level(7, 1));
        plate.Pierced(Outline.Circle(11.5).Plus(Outline.Centred(30, 23)).Rounded(6), new Vec3(-width * 0.16, 0, 99),
            Turns.Down, 0.5);
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
            foreach (double x in (ReadOnlySpan<double>)[-width * 0.16 - 23, -width * 0.16 + 23])
                plate.Pierced(Outline.Slot(new(-4, 0), new(4, 0), 3.4), new Vec3(x, side * 16, 99), Turns.Down);
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
        {
            Vec3 at = new(width / 2 - 15, side * (depth / 2 - 15), 99);
            plate.Raised(Outline.Circle(7), at, Turns.Down, new Level(0, -1), new Level(1), new Level(7, 0.5));
            plate.Drilled(2.6, at, Turns.Down, 0.4);
        }
        return plate;
    }

    private static Region Ell(double foot, double back, double thickness, double fillet) =>
        Outline.Of(new(0, 0), new(foot, 0), new(foot, thickness), new(thickness, thickness), new(thickness, back),
            new(0, back))
            .Rounded(1.2, fillet);
}
