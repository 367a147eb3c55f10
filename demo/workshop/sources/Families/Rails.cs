using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Long straight parts: dovetail rails for the tool wall, cable ducts, edge strips; mm.</summary>
internal static class Rails
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("tool-wall/rail.stl", Dovetail(length: 252, holes: 4)),
        () => new("cable-run/duct.ply", FileKind.PlyBinary, Duct(length: 445, width: 40, height: 34)),
        () => Model.Stl("sewing-table/edge-strip.stl", EdgeStrip(length: 310)),
    ];

    /// <summary>A dovetail rail with countersunk holes along its groove.</summary>
    public static Solid Dovetail(double length, int holes)
    {
        Region profile = Outline.Of(
            new(-11, 0), new(11, 0), new(11, 3), new(8.5, 5), new(12, 12), new(4.5, 12), new(4.5, 5), new(-4.5, 5),
                new(-4.5, 12), new(-12, 12), new(-8.5, 5), new(-11, 3))
            .Rounded(1, 0.6);
        return Lying(profile, length, 0.8, (rail, x) =>
            rail.Drilled(1.8, new Vec3(x, 0, 99), Turns.Down, head: 3.4), holes);
    }

    /// <summary>A duct with finger slots in both walls, open at the top.</summary>
    public static Solid Duct(double length, double width, double height)
    {
        double wall = 2, w = width / 2;
        Region profile = Outline.Of(
            new(-w, 0), new(w, 0), new(w, height), new(w - 3.4, height), new(w - 3.4, height - 1.6),
                new(w - wall, height - 3), new(w - wall, wall),
            new(-w + wall, wall), new(-w + wall, height - 3), new(-w + 3.4, height - 1.6), new(-w + 3.4, height),
                new(-w, height)).Rounded(0.5);
        Solid duct = Lying(profile, length, 0, (rail, x) =>
            rail.Pierced(Outline.Slot(new(-3, 0), new(3, 0), 4.4), new Vec3(x, 0, 99), Turns.Down), 3);
        int fingers = (int)(length / 12);
        Region slots = Outline.Slot(new(0, 6), new(0, height - 7), 4.5).Row(fingers, length / fingers);
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
            duct.Pierced(slots, new Vec3(length / 2, side * width, 0), new Vec3(0, -side, 0));
        return duct;
    }

    /// <summary>A nosing for a worn table edge: an angle with a round front.</summary>
    public static Solid EdgeStrip(double length)
    {
        Region profile = Outline.Of([
            new(0, 0), new(3, 0), new(3, 19), new(30, 19), new(30, 22), .. Outline.Arc(new(4, 18), 4, 90, 180)])
                .Rounded(0.4, 2);
        return Lying(profile, length, 0.3, (strip, x) =>
            strip.Drilled(1.8, new Vec3(x, 18, 99), Turns.Down, head: 3.4), 4);
    }

    /// <summary>A profile drawn in (across, up) carried along x, with something done at evenly spread places.</summary>
    private static Solid Lying(Region profile, double length, double chamfer, Action<Solid, double> at, int places)
    {
        Solid rail = Prism.Of(profile, 0, length, chamfer, chamfer)
            .Moved(new Matrix3(Vec3.UnitZ, Vec3.UnitX, Vec3.UnitY));
        for (int i = 0; i < places; i++) at(rail, length * (i + 0.5) / places);
        return rail;
    }
}
