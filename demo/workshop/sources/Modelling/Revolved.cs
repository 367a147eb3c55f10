using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>Turned bodies: a closed outline in the half plane (radius, height) carried round the z axis.</summary>
public static class Revolved
{
    /// <summary>
    /// Revolves an outline that runs counter-clockwise with x as the radius, 0 or more, and y as the height, mm. A
    /// point on the axis stays one point.
    /// </summary>
    /// <param name="bend">
    /// For flutes and waves: a factor on the radius and an angle to turn by, against (angle, height); (1, 0) where
    /// absent.
    /// </param>
    public static Solid Of(
        IReadOnlyList<Vec2> outline, int sides = 0, Func<double, double, (double Factor, double Turn)>? bend = null)
    {
        Solid solid = new();
        int n = sides > 0 ? sides : Outline.Sides(outline.Max(p => p.X));
        int[] Around(Vec2 p) =>
            [.. Enumerable.Range(0, n).Select(i =>
            {
                double angle = Math.Tau * i / n;
                (double factor, double turn) = bend?.Invoke(angle, p.Y) ?? (1, 0);
                Vec2 q = Outline.Polar(p.X * factor, angle + turn);
                return solid.Vertex(new Vec3(q.X, q.Y, p.Y));
            })];
        for (int i = 0; i < outline.Count; i++)
        {
            Vec2 from = outline[i], to = outline[(i + 1) % outline.Count];
            // Both sides of a wall are split alike, so that a wound wall keeps its thickness.
            solid.AddWall(Around(from), Around(to), rising: from.Y <= to.Y);
        }
        return solid;
    }

    /// <summary>The outline of a wall of this thickness, mm, on the axis side of a line that runs upwards.</summary>
    public static Vec2[] Wall(double thickness, params Vec2[] line)
    {
        var inner = new Vec2[line.Length];
        for (int i = 0; i < line.Length; i++)
        {
            Vec2 before = (line[i] - line[Math.Max(i - 1, 0)]).Normalized();
            Vec2 after = (line[Math.Min(i + 1, line.Length - 1)] - line[i]).Normalized();
            if (i == 0) before = after;
            if (i == line.Length - 1) after = before;
            Vec2 left = new(-before.Y - after.Y, before.X + after.X);
            inner[i] = line[i] + left * (thickness / (1 + before.Dot(after)));
        }
        // The ends are cut level, so that the part stands and its rim is flat.
        inner[0] = new Vec2(inner[0].X, line[0].Y);
        inner[^1] = new Vec2(inner[^1].X, line[^1].Y);
        return [.. line, .. inner.Reverse()];
    }
}
