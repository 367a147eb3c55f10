using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>
/// Spur and herringbone gears with involute teeth (pressure angle 20°, tooth height 2.25 modules), for the winch
/// and the workshop clock.
/// </summary>
internal static class Gears
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => new("barrow-winch/wheel-52.3mf", FileKind.ThreeMf,
            Spur(module: 2, teeth: 52, width: 14, FlattedBore(6), hub: 13, windows: 6), "PA", "#E8E4D8"),
        () => Model.Stl("barrow-winch/pinion-14.stl",
            Spur(module: 2, teeth: 14, width: 16, FlattedBore(5), hub: 0, windows: 0)),
        () => new("barrow-winch/pinion-herringbone.3mf", FileKind.ThreeMf,
            Herringbone(module: 2, teeth: 16, width: 20, FlattedBore(5), helixDegrees: 28, boreReach: 6), "PA",
                "#E8E4D8"),
        () => new("workshop-clock/great-wheel.3mf", FileKind.ThreeMf,
            Spur(module: 1.25, teeth: 72, width: 5, Outline.Circle(3.1), hub: 9, windows: 5), "PLA", "#C9A227"),
    ];

    private const double PressureAngle = 20 * Math.PI / 180;
    private const double BacklashMm = 0.15;
    private const int PointsPerFlank = 3;

    /// <summary>Below it the fillet at the tooth's root is smaller than a bead, mm.</summary>
    private const double FineModule = 1.5;

    /// <summary>The outline of the toothed wheel without a bore.</summary>
    /// <param name="module">Pitch diameter over teeth, mm.</param>
    public static Region Wheel(double module, int teeth)
    {
        double pitch = module * teeth / 2, root = pitch - 1.25 * module, tip = pitch + module,
            start = pitch * Math.Cos(PressureAngle);
        double half = Math.PI / (2 * teeth) - BacklashMm / (2 * pitch);
        double low = Math.Max(start, root);
        List<Vec2> points = [];
        for (int tooth = 0; tooth < teeth; tooth++)
        {
            double middle = Math.Tau * tooth / teeth;
            Vec2 Flank(double radius, int side) =>
                Outline.Polar(radius,
                    middle + side * (half + Involute(PressureAngle) - Involute(Math.Acos(Math.Min(1,
                        start / radius)))));
            if (root < start) points.Add(Flank(start, -1) * (root / start));
            for (int i = 0; i <= PointsPerFlank; i++) points.Add(Flank(low + (tip - low) * i / PointsPerFlank, -1));
            for (int i = PointsPerFlank; i >= 0; i--) points.Add(Flank(low + (tip - low) * i / PointsPerFlank, 1));
            if (root < start) points.Add(Flank(start, 1) * (root / start));
        }
        return module < FineModule ? Outline.Of([.. points]) : Outline.Of([.. points]).Rounded(0, 0.3 * module);
    }

    /// <summary>A spur gear whose web is thinned and pierced between hub and rim.</summary>
    public static Solid Spur(double module, int teeth, double width, Region bore, double hub, int windows)
    {
        double rim = module * (teeth / 2.0 - 1.25) - 2.2 * module;
        Solid gear = Prism.Of(Wheel(module, teeth).Minus(bore), 0, width, 0.4, 0.4);
        if (windows == 0) return gear;
        Region web = Outline.Circle(rim).Minus(Outline.Circle(hub));
        Level[] recess = [new Level(0), new Level(width * 0.3 - 0.8), new Level(width * 0.3, 0.8)];
        gear.Pocketed(web, new Vec3(0, 0, width + 9), Turns.Down, recess);
        gear.Pocketed(web, new Vec3(0, 0, -9), Turns.Up, recess);
        double share = 360.0 / windows;
        Region window = Outline.Of([
            .. Outline.Arc(default, hub + 3, -share / 2, share / 2, 8),
                .. Outline.Arc(default, rim - 3, share / 2, -share / 2, 16)])
            .Grown(-2.5).Rounded(2.5);
        gear.Pierced(window.Around(windows), new Vec3(0, 0, width + 9), Turns.Down);
        return gear;
    }

    /// <summary>
    /// A gear whose teeth run to one hand up to the middle and back, so that it pulls to neither side.
    /// </summary>
    public static Solid Herringbone(double module, int teeth, double width, Region bore, double helixDegrees,
        double boreReach)
    {
        double twist = width / 2 * Math.Tan(double.DegreesToRadians(helixDegrees)) / (module * teeth / 2);
        return Loft.Of(Wheel(module, teeth).Minus(bore), 0, width, 6, (p, share) =>
        {
            if (p.Length < boreReach) return p;
            (double sin, double cos) = Math.SinCos(twist * (1 - Math.Abs(2 * share - 1)));
            return new Vec2(p.X * cos - p.Y * sin, p.X * sin + p.Y * cos);
        });
    }

    /// <summary>A bore with a flat, for a shaft of this radius, mm.</summary>
    public static Region FlattedBore(double radius) =>
        Outline.Circle(radius).And(Outline.Rectangle(-radius, -radius, radius * 0.72, radius));

    private static double Involute(double angle) => Math.Tan(angle) - angle;
}
