using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>
/// The garden gate: hinge leaves with knuckles, their pin, and a latch; mm unless a file says otherwise.
/// </summary>
internal static class Hinges
{
    private const double MmPerInch = 25.4;

    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("garden-gate/leaf-post.stl", Leaf(height: 90, reach: 46, knuckles: 5, first: true)),
        () => Model.Stl("garden-gate/leaf-gate.stl", Leaf(height: 90, reach: 74, knuckles: 5, first: false)),
        () => Model.Stl("garden-gate/pin.stl", Pin(length: 96, radius: 3.8)),
        () => Model.Stl("garden-gate/latch.stl", Latch(length: 140, width: 32, height: 16)),
        () => Model.Stl("garden-gate/stop.stl", Stop(length: 2.7, width: 1.4, height: 1.1)) with { Unit = MmPerInch },
        () => new Model("garden-gate/keeper.3mf", FileKind.ThreeMf, Keeper(), "PETG",
            "#3F5B4A") with { Unit = MmPerInch },
    ];

    /// <summary>A leaf whose knuckles take every other place along the pin.</summary>
    private static Solid Leaf(double height, double reach, int knuckles, bool first)
    {
        double bore = 4, ring = 8.5, thick = 5, gap = 0.3;
        Region plate = Outline.Rectangle(ring + 1, -ring, reach, -ring + thick, 1.5);
        Region neck = Outline.Of(new(0, -ring), new(ring + 6, -ring), new(ring + 6, -ring + thick),
            new(4, -ring + thick), new(0, 0));
        Region knuckle = plate.Plus(neck, Outline.Circle(ring)).Minus(Outline.Circle(bore));
        List<Slab> slabs = [];
        for (int i = 0; i < knuckles; i++)
        {
            bool has = i % 2 == 0 == first;
            double top = height * (i + 1) / knuckles;
            if (has) top -= gap;
            else if (i < knuckles - 1) top += gap;
            slabs.Add(new Slab(has ? knuckle : plate, i == knuckles - 1 ? height : top));
        }
        Solid leaf = Layers.Of(0, [.. slabs], 0.6, 0.6);
        foreach (double z in (ReadOnlySpan<double>)[0.14, 0.5, 0.86])
            leaf.Drilled(2.4, new Vec3(reach - (z.Equals(0.5) ? 18 : 9), 99, height * z), -Vec3.UnitY, head: 4.6);
        return leaf.Moved(Turns.YUp);
    }

    private static Solid Pin(double length, double radius) => Revolved.Of([
        new(0, 0), new(6.2, 0), new(7, 0.8), new(7, 3), new(6, 4), new(radius + 0.4, 4), new(radius, 4.6),
            new(radius, length - 2),
        new(radius - 1.5, length), new(0, length)], 32);

    /// <summary>Drawn in inches by its first owner: a wedge that stops the gate, with a hole for one bolt.</summary>
    private static Solid Stop(double length, double width, double height)
    {
        double l = length * MmPerInch, w = width * MmPerInch, h = height * MmPerInch, bolt = 3.6, head = 7.5;
        Region side = Outline.Of(new(0, 0), new(l, 0), new(l, h * 0.3), new(l * 0.6, h * 0.42), new(l * 0.34, h),
            new(0, h));
        Solid stop = Prism.Of(side.Rounded(2.5, 12), 0, w, 1.2, 1.2).Moved(Turns.YUp);
        return stop.Pierced(Outline.Circle(bolt), new Vec3(l * 0.16, -w / 2, 99), Turns.Down, head - bolt);
    }

    /// <summary>A bar with a thumb rest and a slot.</summary>
    private static Solid Latch(double length, double width, double height)
    {
        Region bar = Outline.Rectangle(0, 0, length, width, width * 0.28)
            .Plus(Outline.Circle(width * 0.62, width * 0.4, width / 2))
            .Rounded(3, 6);
        Solid latch = Prism.Of(bar, Frame.Level(0), Prism.Filleted(height * 0.5, 1, 1.2));
        latch.Raised(Outline.Centred(width * 0.5, width * 0.62, 3), new Vec3(length - width * 0.6, width / 2, 99),
            Turns.Down,
            new Level(0, -2), new Level(1.2, -0.6), new Level(height * 0.5 - 1), new Level(height * 0.5, 1.2));
        latch.Pierced(Outline.Circle(4.1), new Vec3(width * 0.4, width / 2, 99), Turns.Down, 0.6);
        return latch.Pierced(Outline.Slot(new(-16, 0), new(16, 0), 6.4), new Vec3(length * 0.48, width / 2, 99),
            Turns.Down,
            0.6);
    }

    private static Solid Keeper()
    {
        Region foot = Outline.Rectangle(0, 0, 76, 6, 1.5);
        Region bridge = foot.Plus(Outline.Rectangle(18, 1, 58, 26, 6)).Minus(Outline.Rectangle(24, 6, 52, 20, 3))
            .Rounded(0, 2);
        Solid keeper = Layers.Of(0, [new(foot, 5), new(bridge, 27), new(foot, 32)], 0.8, 0.8);
        foreach (double x in (ReadOnlySpan<double>)[9, 67]) keeper.Drilled(2.4, new Vec3(x, 99, 16), -Vec3.UnitY,
            head: 4.6);
        return keeper.Moved(Turns.YUp);
    }
}
