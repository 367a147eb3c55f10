using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Keeping cables in order: links of a drag chain, desk grommets, a comb; mm.</summary>
internal static class CableGuides
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("cable-run/chain-link.stl", Link(inner: 22, height: 17, pitch: 26)),
        () => Model.Stl("cable-run/grommet-60.stl", Grommet(hole: 60)),
        () => Model.Stl("cable-run/grommet-80.stl", Grommet(hole: 60).Moved(Matrix3.Identity * (80.0 / 60))),
        () => new("cable-run/comb.obj", FileKind.Obj, Comb(slots: 9, pitch: 11)),
    ];

    /// <summary>
    /// A link: two cheeks stepped inwards at one end, a floor and a bridge; a peg takes the next link's eye.
    /// </summary>
    private static Solid Link(double inner, double height, double pitch)
    {
        double cheek = 2.4, r = height / 2;
        Region Ear(double x) => Outline.Circle(r, x, r);
        Region rear = Ear(0).Plus(Outline.Rectangle(0, 0, pitch * 0.52, height)).Rounded(0.8);
        Region front = Ear(pitch).Plus(Outline.Rectangle(pitch * 0.48, 0, pitch, height)).Rounded(0.8);
        Region whole = Outline.Rectangle(pitch * 0.28, 0, pitch * 0.72, height, 0.8);
        Region eye = Outline.Circle(3.2, pitch, r);
        Region bars = Outline.Rectangle(pitch * 0.28, 0, pitch * 0.72, 2.2, 0.6)
            .Plus(Outline.Rectangle(pitch * 0.28, height - 2.2, pitch * 0.72, height, 0.6));
        Region outerCheek = front.Plus(whole).Minus(eye);
        Region innerCheek = rear.Plus(whole);
        double a = cheek, b = 2 * cheek, c = b + inner, d = c + cheek, e = d + cheek;
        Solid link = Layers.Of(0,
            [new(outerCheek, a), new(innerCheek, b), new(bars, c), new(innerCheek, d), new(outerCheek, e)], 0.4, 0.4);
        Region peg = Outline.Circle(2.9);
        link.Raised(peg, new Vec3(0, r, -9), Turns.Up, new Level(0), new Level(1.6), new Level(2.2, 0.6));
        link.Raised(peg, new Vec3(0, r, 99), Turns.Down, new Level(0), new Level(1.6), new Level(2.2, 0.6));
        return link.Moved(Turns.YUp);
    }

    /// <summary>A lining for a hole in a desk, with a lip and a gap for cables in its cover.</summary>
    private static Solid Grommet(double hole)
    {
        double r = hole / 2;
        Solid grommet = Revolved.Of([
            new(0, 0), new(r + 5.4, 0), new(r + 6, 0.6), new(r + 5, 2.6), new(r - 0.2, 3.2), new(r - 0.6, 20),
                new(r - 2.2, 20), new(r - 1.9, 3.2),
            new(0, 3.2)]);
        Region gap = Outline.Centred(hole * 0.5, hole * 0.2, hole * 0.09);
        return grommet.Pierced(gap, new Vec3(0, r * 0.42, -9), Turns.Up, 0.4);
    }

    private static Solid Comb(int slots, double pitch)
    {
        double length = slots * pitch + 14;
        Region back = Outline.Rectangle(0, 0, length, 12, 3);
        Region profile = back;
        for (int i = 0; i <= slots; i++)
            profile = profile.Plus(Outline.Slot(new(7 + i * pitch, 6), new(7 + i * pitch, 27), 5),
                Outline.Circle(3.6, 7 + i * pitch, 28));
        Solid comb = Prism.Of(profile.Rounded(0, 1.6), 0, 6, 0.6, 0.6);
        foreach (double x in (ReadOnlySpan<double>)[7 + pitch / 2, length - 7 - pitch / 2])
            comb.Drilled(1.8, new Vec3(x, 5.5, 99), Turns.Down, head: 3.4);
        return comb;
    }
}
