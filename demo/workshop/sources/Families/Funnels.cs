using Platewright.Demo.Modelling;
using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Families;

/// <summary>
/// Turned parts of the rain barrel and the dust hose: funnel, strainer, barbed and stepped adapters; mm.
/// </summary>
internal static class Funnels
{
    public static IReadOnlyList<Func<Model>> Models { get; } =
    [
        () => Model.Stl("rain-barrel/funnel.stl", Funnel(mouth: 152, spout: 28, height: 150)),
        () => Model.Stl("rain-barrel/strainer.stl", Strainer(diameter: 118, height: 40)),
        () => Model.Stl("rain-barrel/hose-tail.stl", HoseTail(hose: 25, length: 60, flange: 62)),
        () => Model.Stl("dust-hose/reducer-100-63.stl", Reducer(large: 100, small: 63, length: 120)),
    ];

    public static Solid Funnel(double mouth, double spout, double height)
    {
        double r = mouth / 2, s = spout / 2, neck = height * 0.42, wall = 2;
        return Revolved.Of(Revolved.Wall(wall,
            new(s * 0.82, 0), new(s, neck * 0.9), new(s + 1.5, neck), new(r - 6, height - 14),
                new(r - 1.5, height - 8), new(r - 1, height - 3), new(r + 3, height - 3), new(r + 3, height)));
    }

    /// <summary>A basket with a pierced floor that hangs in the funnel by its rim.</summary>
    public static Solid Strainer(double diameter, double height)
    {
        double r = diameter / 2, wall = 1.8;
        Solid basket = Revolved.Of([
            new(0, 0), new(r * 0.8, 0), new(r, height - 3), new(r + 5, height - 3), new(r + 5, height),
                new(r - wall, height),
            new(r * 0.8 - wall, 2.2), new(0, 2.2)]);
        Region hole = Outline.Circle(2.2, sides: 12);
        Region holes = hole.Plus(
            hole.Moved(r * 0.21, 0).Around(6), hole.Moved(r * 0.42, 0, 0).Around(12),
                hole.Moved(r * 0.63, 0).Around(18));
        return basket.Pierced(holes, new Vec3(0, 0, -9), Turns.Up);
    }

    /// <summary>A hose tail with barbs on a flanged foot that is screwed to a wall.</summary>
    public static Solid HoseTail(double hose, double length, double flange)
    {
        double r = hose / 2, bore = r - 3.2, foot = 5;
        List<Vec2> line = [new(bore, 0), new(flange / 2 - 0.8, 0), new(flange / 2, 0.8), new(flange / 2, foot - 0.8),
            new(flange / 2 - 0.8, foot), new(r + 2, foot), new(r, foot + 2)];
        for (double z = foot + 6; z + 7 < length; z += 7)
        {
            line.Add(new(r, z));
            line.Add(new(r + 1.3, z));
            line.Add(new(r - 0.2, z + 5.5));
        }
        line.AddRange([new(r - 0.2, length - 1), new(r - 1, length), new(bore, length)]);
        Solid tail = Revolved.Of(line);
        for (int i = 0; i < 4; i++)
        {
            Vec2 p = Outline.Polar((flange / 2 + r + 2) / 2, Math.Tau * (i + 0.5) / 4);
            tail.Drilled(2.2, new Vec3(p.X, p.Y, 99), Turns.Down, head: 4);
        }
        return tail;
    }

    /// <summary>A step between two hoses: a long cone with a ring to push against.</summary>
    public static Solid Reducer(double large, double small, double length)
    {
        double r = large / 2, s = small / 2;
        return Revolved.Of(Revolved.Wall(2.4,
            new(r, 0), new(r - 0.6, length * 0.3), new(r + 2.5, length * 0.33), new(r + 2.5, length * 0.37),
                new(r - 0.6, length * 0.41),
            new(s + 0.6, length * 0.66), new(s + 0.6, length * 0.7), new(s, length)));
    }
}
