using Platewright.Demo.Families;
using Platewright.Demo.Modelling;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.School;

/// <summary>Small things of which a class makes many: name stands, solids to measure, plant labels; mm.</summary>
internal static class ClassSets
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("name-stand/name-stand.stl", NameStand(width: 92, depth: 36, height: 34, wall: 2.2)),
        () => Model.Stl("solids/cone.stl", Cone(diameter: 56, height: 72)),
        () => Model.Stl("solids/cylinder.stl", Cylinder(diameter: 56, height: 72)),
        () => Model.Stl("plant-labels/label.stl", Label(length: 118, width: 26)),
        () => new("plant-labels/cane-clip.obj", FileKind.Obj, Clips.Tube(tube: 12, width: 11, wall: 2.2)),
        () => Model.Stl("drying-line/line-clip.stl", Clips.Tube(tube: 22, width: 20, wall: 3)),
    ];

    /// <summary>A hollow wedge that shows its sloping side, with a lip that holds a card.</summary>
    private static Solid NameStand(double width, double depth, double height, double wall)
    {
        Region wedge = Outline.Of(new(0, 0), new(depth, 0), new(depth, 4), new(7, height), new(0, height))
            .Rounded(1.4);
        Region lip = Outline.Of(new(depth - 3, 0.5), new(depth + 5, 0.5), new(depth + 5, 9), new(depth + 3.4, 9),
            new(depth + 3.4, 3), new(depth - 3, 3));
        Region profile = wedge.Minus(wedge.Grown(-wall).Rounded(1)).Plus(lip);
        return Prism.Of(profile, 0, width, 0.4, 0.4).Moved(Turns.YUp);
    }

    /// <summary>Its volume is a third of the cylinder's beside it, but for the blunted tip.</summary>
    private static Solid Cone(double diameter, double height)
    {
        double r = diameter / 2;
        return Revolved.Of([new(0, 0), new(r, 0), new(0.6, height - 0.6), new(0, height)]);
    }

    private static Solid Cylinder(double diameter, double height)
    {
        double r = diameter / 2;
        return Revolved.Of([new(0, 0), new(r - 0.6, 0), new(r, 0.6), new(r, height), new(0, height)]);
    }

    /// <summary>A plate to write on, with a stake to push into a pot.</summary>
    private static Solid Label(double length, double width)
    {
        double plate = length * 0.36;
        Region outline = Outline.Rectangle(0, -width / 2, plate, width / 2, 4)
            .Plus(Outline.Of(new(plate - 4, -6), new(length, -1.5), new(length, 1.5), new(plate - 4, 6)))
            .Rounded(1, 4)
            .Minus(Outline.Circle(2, 6));
        return Prism.Of(outline, 0, 2.4, 0.3, 0.3);
    }
}
