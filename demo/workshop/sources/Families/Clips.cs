using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>
/// Snap clips for tubes, cables and bags; mm. Drawn as profiles and carried straight up, so they print flat.
/// </summary>
internal static class Clips
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("shed-sensor/mast-clip.stl", Tube(tube: 32, width: 24, wall: 3.6)),
        () => new("odds-and-ends/cable-clip.obj", FileKind.Obj, Tube(tube: 8, width: 10, wall: 1.8)),
        () => new("odds-and-ends/bag-clip.ply", FileKind.PlyText, Bag(length: 96, width: 14)),
        () => Model.Stl("garden-gate/tube clip (2).stl", Tube(tube: 32, width: 24, wall: 3.6)),
    ];

    /// <summary>A ring open at the top that snaps over a tube, on a foot with two screw holes.</summary>
    public static Solid Tube(double tube, double width, double wall)
    {
        double r = tube / 2, outer = r + wall, lip = wall * 0.75, ear = outer + 4 + wall * 3;
        Vec2 centre = new(0, outer + 0.5);
        Region jaw = Outline.Of([.. Outline.Arc(centre, outer, -230, 50), .. Outline.Arc(centre, r, 50, -230)]);
        foreach (double degrees in (ReadOnlySpan<double>)[50, 130])
        {
            Vec2 tip = centre + Outline.Polar(r + wall / 2 + 0.4, double.DegreesToRadians(degrees));
            jaw = jaw.Plus(Outline.Circle(lip, tip.X, tip.Y));
        }
        Region foot = Outline.Rectangle(-ear, 0, ear, wall + 0.6);
        Region fill = Outline.Rectangle(-r * 0.7, 0.8, r * 0.7, outer * 0.5)
            .Minus(Outline.Circle(r, centre.X, centre.Y));
        Region profile = jaw.Plus(foot, fill).Rounded(0.7, wall * 0.6);
        Solid clip = Prism.Of(profile, 0, width, 0.5, 0.5);
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
            clip.Drilled(wall * 0.42, new Vec3(side * (ear - wall * 1.6), 99, width / 2), -Vec3.UnitY,
                head: wall * 0.8);
        return clip;
    }

    /// <summary>Two arms that a living hinge joins; a hook at the free end holds them shut.</summary>
    private static Solid Bag(double length, double width)
    {
        double arm = 4.4, gap = 7;
        Region upper = Outline.Rectangle(0, gap / 2, length, gap / 2 + arm, 1.5);
        Region lower = Outline.Rectangle(0, -gap / 2 - arm, length - 7, -gap / 2, 1.5);
        Vec2 middle = new(2, 0);
        Region hinge = Outline.Of([
            .. Outline.Arc(middle, gap / 2 + arm, 90, 270, 20),
                .. Outline.Arc(middle, gap / 2 + arm - 1.4, 270, 90, 20)]);
        Region hook = Outline.Stroke(2.6, new(length - 1.6, gap / 2 + 2), new(length - 1.6, -gap / 2 - arm - 1),
            new(length - 5.5, -gap / 2 - arm - 2));
        Region teeth = Outline.Circle(1.1, 0, -gap / 2).Row(9, 8).Moved(length / 2 - 4, 0);
        Region profile = upper.Plus(lower.Plus(teeth.Buffer(0)), hinge, hook).Rounded(0.6, 0.8);
        return Prism.Of(profile, 0, width, 0.4, 0.4);
    }
}
