using Platewright.Demo.Modelling;
using Platewright.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Lamp shades with a pierced top ring, and the rose that covers the ceiling hook; mm.</summary>
internal static class Shades
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("reading-lamp/shade-large.3mf", FileKind.ThreeMf,
            Fluted(bottom: 290, top: 100, height: 236, flutes: 12, windDegrees: 60), "PLA", "#F2E6C9"),
        () => new("reading-lamp/shade-medium.3mf", FileKind.ThreeMf,
            Fluted(bottom: 196, top: 90, height: 176, flutes: 12, windDegrees: 60), "PLA", "#F2E6C9")
            { Origin = ("Tamsin Okuyo, Fennside Lamp Club", "CC BY 4.0") },
        () => new("hall-lantern/shade.obj", FileKind.Obj,
            Faceted(bottom: 150, middle: 218, top: 100, height: 208, sides: 12)),
        () => Model.Stl("reading-lamp/rose.stl", Rose(diameter: 100, height: 46)),
    ];

    private const double WallMm = 2;

    /// <summary>A bell whose flutes wind round it.</summary>
    public static Solid Fluted(double bottom, double top, double height, int flutes, double windDegrees)
    {
        double b = bottom / 2, t = top / 2;
        Vec2[] line = [.. Enumerable.Range(0, 13).Select(i =>
        {
            double share = i / 12.0;
            double bell = Math.Pow(1 - share, 1.7);
            return new Vec2(t + (b - t) * bell, height * share);
        })];
        Vec2[] outline = [.. Revolved.Wall(WallMm, line)[..26]];
        // The inner end of the wall is drawn in to the hole of the lamp holder: a flat ring at the top.
        List<Vec2> ringed = [.. outline[..13], new(20, height), new(20, height - 2.4),
            new(outline[14].X, height - 2.4), .. outline[15..]];
        double wind = double.DegreesToRadians(windDegrees);
        Solid shade = Revolved.Of(ringed, 96, (angle, z) =>
        {
            double share = z / height;
            double depth = 0.06 * Math.Clamp((0.9 - share) / 0.3, 0, 1);
            return (1 + depth * Math.Cos(flutes * angle), -wind * share);
        });
        return AddAir(shade, t, height);
    }

    /// <summary>A faceted drum: few sides, so that its faces catch the light.</summary>
    public static Solid Faceted(double bottom, double middle, double top, double height, int sides)
    {
        double b = bottom / 2, m = middle / 2, t = top / 2;
        double at = height * 0.36;
        Vec2[] outline = [
            new(b, 0), new(m, at), new(t, height), new(20, height), new(20, height - 2.4),
                new(t - WallMm - 1, height - 2.4),
            new(m - WallMm, at), new(b - WallMm, 0)];
        return AddAir(Revolved.Of(outline, sides), t * Math.Cos(Math.PI / sides), height);
    }

    public static Solid Rose(double diameter, double height)
    {
        double r = diameter / 2;
        double neck = 8, dome = height - 10;
        Vec2[] line = [
            new(r, 0), new(r, 3),
            .. Enumerable.Range(1, 9).Select(i => new Vec2(
                neck + (r - neck) * Math.Cos(Math.PI / 2 * i / 10), 3 + (dome - 3) * Math.Sin(Math.PI / 2 * i / 10))),
            new(neck, dome + 1), new(neck, height)];
        return Revolved.Of(Revolved.Wall(1.8, line));
    }

    private static Solid AddAir(Solid shade, double top, double height)
    {
        int count = 8;
        double low = 25, high = top - 6;
        if (high - low < 5) return shade;
        double share = 360.0 / count;
        var slot = Outline.Of([.. Outline.Arc(default, low, -share * 0.32, share * 0.32),
            .. Outline.Arc(default, high, share * 0.38, -share * 0.38)])
            .Rounded(2);
        return shade.Pierced(slot.Around(count), new Vec3(0, 0, height + 9), Turns.Down);
    }
}
