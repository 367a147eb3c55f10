using Platewright.Demo.Modelling;

namespace Platewright.Demo.Families;

/// <summary>Small turned parts that stand between others: feet, spacers, bushes; mm.</summary>
internal static class Spacers
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("bench-supply/foot.stl", Foot(diameter: 22, height: 12)),
        () => Model.Stl("kitchen-scale/foot.stl", Foot(diameter: 16.5, height: 9)),
        () => Model.Stl("kayak-trolley/axle-spacer.stl", Spacer(outer: 26, bore: 12.4, length: 42)),
        () => new("odds-and-ends/stool-cap.ply", FileKind.PlyBinary, Cap(tube: 25, depth: 32)),
    ];

    /// <summary>A soft foot with a sunk washer seat.</summary>
    private static Solid Foot(double diameter, double height)
    {
        double r = diameter / 2;
        return Revolved.Of([
            new(1.8, 2.6), new(4, 2.6), new(4, 0), new(r - 1.4, 0), new(r - 0.4, 0.4), new(r, 1.4),
                new(r - 1, height - 1), new(r - 2, height),
            new(1.8, height)], 40);
    }

    private static Solid Spacer(double outer, double bore, double length)
    {
        double r = outer / 2, b = bore / 2;
        return Revolved.Of([
            new(b + 0.6, 0), new(r - 0.8, 0), new(r, 0.8), new(r, 5), new(r - 2.5, 8), new(r - 2.5, length - 8),
                new(r, length - 5), new(r, length - 0.8),
            new(r - 0.8, length), new(b + 0.6, length), new(b, length - 0.6), new(b, 0.6)], 56);
    }

    /// <summary>A cap for a tube leg: barbs inside, a domed sole.</summary>
    private static Solid Cap(double tube, double depth)
    {
        double t = tube / 2, r = t + 2.6;
        return Revolved.Of([
            new(0, 0), new(r * 0.5, 0.3), new(r * 0.8, 1.2), new(r, 3.4), new(r, 6), new(r - 0.8, depth),
                new(t + 0.2, depth), new(t - 0.4, depth - 3),
            new(t + 0.2, depth - 6), new(t - 0.4, depth - 9), new(t + 0.2, depth - 12), new(t, 6), new(t - 1, 5),
                new(0, 5)], 48);
    }
}
