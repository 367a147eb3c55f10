using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Hooks: to screw to a wall, and bent ones that hang over an edge; mm.</summary>
internal static class Hooks
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("tool-wall/hook.stl", Wall(reach: 44, height: 82, width: 34)),
        () => new("balcony/rail-hook.obj", FileKind.Obj, Bent(radius: 22, drop: 120, wire: 11)),
    ];

    /// <summary>A back plate and a hook in its middle, drawn from the side.</summary>
    private static Solid Wall(double reach, double height, double width)
    {
        Region plate = Outline.Rectangle(0, 0, 5, height).Rounded(1.2);
        Vec2 bend = new(reach - 14, 20);
        Region hook = Outline.Stroke(9, [
            new(2, height * 0.52), new(8, height * 0.5), .. Outline.Arc(bend, 14, 200, 350, 18), new(reach + 1, 34),
                new(reach + 3, 38)]);
        Region buttress = Outline.Of(new(2, height * 0.2), new(14, height * 0.42), new(14, height * 0.5),
            new(2, height * 0.66));
        Region profile = plate.Plus(hook.Plus(buttress).Rounded(1.2, 6).Minus(Outline.Rectangle(-20, -99, 2, 199)));
        double low = width / 2 - 6;
        Solid solid = Layers.Of(0, [new(plate, low), new(profile, width - low), new(plate, width)], 0.8, 0.8);
        foreach (double share in (ReadOnlySpan<double>)[0.1, 0.86])
            foreach (double z in (ReadOnlySpan<double>)[width * 0.16, width * 0.84])
                solid.Drilled(1.8, new Vec3(99, height * share, z), -Vec3.UnitX, head: 3.4);
        return solid.Moved(Turns.YUp);
    }

    /// <summary>A round bar bent like an S: over the rail, down, and up again for the pot.</summary>
    private static Solid Bent(double radius, double drop, double wire)
    {
        List<Vec3> path = [
            .. Outline.Arc(new(-radius, 0), radius, 190, 0).Select(p => new Vec3(p.X, p.Y, 0)),
            .. Outline.Arc(new(radius, -drop), radius, 180, 385).Select(p => new Vec3(p.X, p.Y, 0))];
        Region section = Outline.Centred(wire, wire, wire * 0.3);
        return Loft.Along(section, path, Vec3.UnitZ);
    }
}
