using Platewright.Demo.Modelling;
using Platewright.Geometry;

namespace Platewright.Demo.Families;

/// <summary>Plant pots that widen upwards with a banded rim, and their saucers; mm.</summary>
internal static class Pots
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("balcony/pot-small.stl", Pot(diameter: 98, height: 92)),
        () => Model.Stl("balcony/pot-medium.stl", Pot(diameter: 160, height: 150)),
        () => Model.Stl("balcony/pot-large.stl", Pot(diameter: 256, height: 230, wall: 3)),
        () => Model.Stl("balcony/saucer.stl", Saucer(diameter: 150)),
    ];

    public static Solid Pot(double diameter, double height, double wall = 2.4)
    {
        double r = diameter / 2, foot = r * 0.72;
        double band = height * 0.8;
        double At(double z) => foot + (r - 3 - foot) * z / height;
        Solid pot = Revolved.Of([
            new(0, 1.5), new(foot * 0.55, 1.5), new(foot * 0.6, 0), new(foot - 1, 0), new(foot, 1),
                new(At(band), band), new(At(band) + 3, band + 3),
            new(r, height - 1), new(r - 1, height), new(r - wall - 0.5, height), new(At(band) - wall, band),
                new(foot - wall - 2, wall + 3.5), new(foot - wall - 4, wall + 1.5),
            new(0, wall + 1.5)]);
        var drains = Outline.Circle(3.2).Plus(Outline.Circle(3.2, foot * 0.38).Around(6));
        return pot.Pierced(drains, new Vec3(0, 0, -9), Turns.Up);
    }

    public static Solid Saucer(double diameter)
    {
        double r = diameter / 2;
        Solid saucer = Revolved.Of([
            new(0, 0), new(r - 7, 0), new(r - 5.5, 0.8), new(r, 15), new(r, 17), new(r - 2, 17), new(r - 2.2, 15.4),
                new(r - 7, 2.6), new(0, 2.6)]);
        var ribs = Outline.Slot(new(r * 0.25, 0), new(r * 0.8, 0), 3).Around(6);
        return saucer.Raised(ribs, new Vec3(0, 0, 99), Turns.Down, new Level(0, -0.5), new Level(0.5),
            new Level(2.5, 0.3));
    }
}
