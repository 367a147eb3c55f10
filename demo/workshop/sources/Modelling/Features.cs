using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>
/// Work on the flat faces of a body, as one would at the bench: holes, pockets, bosses. The outline of a feature must
/// lie inside its face and clear of the face's edges. A tool is given by a point before the face and the direction it
/// goes.
/// </summary>
public static class Features
{
    /// <summary>A through hole of any outline, from the first face that is met to the next one behind it.</summary>
    /// <param name="mouths">Chamfer of the edges at entry and exit, mm.</param>
    public static Solid Pierced(this Solid solid, Region outline, Vec3 from, Vec3 direction, double mouths = 0)
    {
        (Frame frame, List<Vec2[]> rings) = Aim(outline, from, direction);
        FlatFace entry = FlatFace.Along(solid, frame.At(rings[0][0]), direction, facing: true, 0);
        Frame plane = frame with { Origin = frame.Origin - frame.Normal * Depth(frame, entry) };
        FlatFace exit = FlatFace.Along(solid, frame.At(rings[0][0]), direction, facing: false, Depth(frame, entry));
        double length = Depth(frame, exit) - Depth(frame, entry);
        List<int[]> at = Open(solid, entry, plane, rings, new Level(0, -mouths));
        if (mouths > 0) at = Prism.Rise(solid, plane, rings, at, new Level(-mouths));
        if (mouths > 0) at = Prism.Rise(solid, plane, rings, at, new Level(mouths - length));
        at = Prism.Rise(solid, plane, rings, at, new Level(-length, -mouths));
        List<int[]> face = exit.Remove();
        Planar.Fill(solid, exit.Frame, [.. face, .. at]);
        return solid;
    }

    /// <summary>
    /// A round through hole; <paramref name="head"/> &gt; 0 sinks a 90° screw head of that radius at the entry.
    /// </summary>
    public static Solid Drilled(
        this Solid solid, double radius, Vec3 from, Vec3 direction, double mouths = 0, double head = 0) =>
        head > 0 ? Countersunk(solid, radius, head, from, direction) : Pierced(solid, Outline.Circle(radius), from,
            direction, mouths);

    /// <summary>A pocket that ends inside; the levels' heights are depths, mm, and their insets narrow it.</summary>
    public static Solid Pocketed(this Solid solid, Region outline, Vec3 from, Vec3 direction, params Level[] levels) =>
        Shaped(solid, outline, from, direction, [.. levels.Select(l => new Level(-l.Height, l.Inset))]);

    /// <summary>A blind hole of this radius and depth, mm.</summary>
    public static Solid Bored(this Solid solid, double radius, double depth, Vec3 from, Vec3 direction) =>
        Pocketed(solid, Outline.Circle(radius), from, direction, new Level(0), new Level(depth));

    /// <summary>A boss that stands on a face; heights above the face, mm. The direction points at the face.</summary>
    public static Solid Raised(this Solid solid, Region outline, Vec3 from, Vec3 direction, params Level[] levels) =>
        Shaped(solid, outline, from, direction, levels);

    private static Solid Shaped(Solid solid, Region outline, Vec3 from, Vec3 direction, Level[] levels)
    {
        (Frame frame, List<Vec2[]> rings) = Aim(outline, from, direction);
        FlatFace entry = FlatFace.Along(solid, frame.At(rings[0][0]), direction, facing: true, 0);
        Frame plane = frame with { Origin = frame.Origin - frame.Normal * Depth(frame, entry) };
        List<int[]> at = Open(solid, entry, plane, rings, levels[0]);
        foreach (Level level in levels.Skip(1)) at = Prism.Rise(solid, plane, rings, at, level);
        Planar.Fill(solid, plane, at);
        return solid;
    }

    private static Solid Countersunk(Solid solid, double radius, double head, Vec3 from, Vec3 direction)
    {
        (Frame frame, List<Vec2[]> rings) = Aim(Outline.Circle(radius, sides: Outline.Sides(head)), from, direction);
        FlatFace entry = FlatFace.Along(solid, frame.At(rings[0][0]), direction, facing: true, 0);
        Frame plane = frame with { Origin = frame.Origin - frame.Normal * Depth(frame, entry) };
        FlatFace exit = FlatFace.Along(solid, frame.At(rings[0][0]), direction, facing: false, Depth(frame, entry));
        List<int[]> at = Open(solid, entry, plane, rings, new Level(0, radius - head));
        at = Prism.Rise(solid, plane, rings, at, new Level(radius - head));
        at = Prism.Rise(solid, plane, rings, at, new Level(Depth(frame, entry) - Depth(frame, exit)));
        List<int[]> face = exit.Remove();
        Planar.Fill(solid, exit.Frame, [.. face, .. at]);
        return solid;
    }

    /// <summary>
    /// Cuts the outline out of its face: rings of the feature leave a hole, and where the feature itself has holes,
    /// islands of the face stay.
    /// </summary>
    private static List<int[]> Open(Solid solid, FlatFace face, Frame plane, List<Vec2[]> rings, Level level)
    {
        List<int[]> rest = face.Remove();
        List<int[]> mouth = Prism.Raise(solid, plane, rings, level);
        Planar.Fill(solid, plane, [.. rest, .. mouth.Select(Prism.Reversed)]);
        return mouth;
    }

    private static (Frame Frame, List<Vec2[]> Rings) Aim(Region outline, Vec3 from, Vec3 direction) =>
        (Frame.Facing(from, -direction), Rings.Of(outline));

    private static double Depth(Frame frame, FlatFace face) => -frame.HeightOf(face.Frame.Origin);
}
