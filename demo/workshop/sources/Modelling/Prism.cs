using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>How far the outline draws in at a height above the start, both mm.</summary>
public readonly record struct Level(double Height, double Inset = 0);

/// <summary>Straight bodies: a region carried along a line, its edges broken where one would break them.</summary>
public static class Prism
{
    /// <summary>A region from z0 up to z1, mm, with chamfers (45°) at the bottom and the top edge.</summary>
    public static Solid Of(Region region, double z0, double z1, double bottom = 0, double top = 0) =>
        Of(region, Frame.Level(z0), Chamfered(z1 - z0, bottom, top));

    /// <summary>A region carried along a frame's normal through these levels.</summary>
    public static Solid Of(Region region, Frame frame, IReadOnlyList<Level> levels)
    {
        Solid solid = new();
        List<Vec2[]> rings = Rings.Of(region);
        List<int[]> below = Raise(solid, frame, rings, levels[0]);
        Planar.Fill(solid, Underneath(frame), [.. below.Select(Reversed)]);
        foreach (Level level in levels.Skip(1)) below = Rise(solid, frame, rings, below, level);
        Planar.Fill(solid, frame, below);
        return solid;
    }

    /// <summary>Levels of a body of this height, mm, with broken edges.</summary>
    public static IReadOnlyList<Level> Chamfered(double height, double bottom, double top)
    {
        List<Level> levels = [];
        if (bottom > 0) levels.Add(new Level(0, bottom));
        levels.Add(new Level(bottom));
        levels.Add(new Level(height - top));
        if (top > 0) levels.Add(new Level(height, top));
        return levels;
    }

    /// <summary>Levels of a body of this height, mm, whose edges are rounded; 0 leaves an edge sharp.</summary>
    public static IReadOnlyList<Level> Filleted(double height, double bottom, double top, int steps = 4)
    {
        List<Level> levels = [];
        for (int i = 0; i < steps && bottom > 0; i++)
        {
            (double sin, double cos) = Math.SinCos(Math.PI / 2 * i / steps);
            levels.Add(new Level(bottom * (1 - cos), bottom * (1 - sin)));
        }
        levels.Add(new Level(bottom));
        levels.Add(new Level(height - top));
        for (int i = 1; i <= steps && top > 0; i++)
        {
            (double sin, double cos) = Math.SinCos(Math.PI / 2 * i / steps);
            levels.Add(new Level(height - top * (1 - sin), top * (1 - cos)));
        }
        return levels;
    }

    internal static List<int[]> Raise(Solid solid, Frame frame, IEnumerable<Vec2[]> rings, Level level) =>
        [.. rings.Select(ring =>
            Rings.Inset(ring, level.Inset).Select(p => solid.Vertex(frame.At(p, level.Height))).ToArray())];

    internal static List<int[]> Rise(Solid solid, Frame frame, List<Vec2[]> rings, List<int[]> below, Level level)
    {
        List<int[]> above = Raise(solid, frame, rings, level);
        for (int i = 0; i < above.Count; i++) solid.AddWall(below[i], above[i]);
        return above;
    }

    internal static Frame Underneath(Frame frame) => frame with { X = frame.Y, Y = frame.X, Normal = -frame.Normal };

    internal static int[] Reversed(int[] ring) => [.. ring.Reverse()];
}
