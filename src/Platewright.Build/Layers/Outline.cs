using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>Measures of closed polygons, mm. The last point joins the first.</summary>
public static class Outline
{
    /// <summary>Shoelace formula: positive for counter-clockwise, mm².</summary>
    public static double SignedArea(ReadOnlySpan<Vec2> loop)
    {
        if (loop.Length < 3) return 0;
        double twice = 0;
        Vec2 origin = loop[0];
        for (int i = 1; i < loop.Length - 1; i++) twice += (loop[i] - origin).Cross(loop[i + 1] - origin);
        return twice / 2;
    }

    /// <summary>Length all round, mm.</summary>
    public static double Perimeter(ReadOnlySpan<Vec2> loop)
    {
        double length = 0;
        for (int i = 0; i < loop.Length; i++) length += (loop[i] - loop[i == 0 ? ^1 : i - 1]).Length;
        return length;
    }

    /// <summary>Whether a point is inside, by the number of edges a ray to the right crosses.</summary>
    public static bool Contains(ReadOnlySpan<Vec2> loop, Vec2 point)
    {
        bool inside = false;
        Vec2 a = loop[^1];
        foreach (Vec2 b in loop)
        {
            if (a.Y > point.Y != b.Y > point.Y && point.X < a.X + (point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X))
                inside = !inside;
            a = b;
        }
        return inside;
    }
}
