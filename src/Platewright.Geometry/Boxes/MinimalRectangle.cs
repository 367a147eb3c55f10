namespace Platewright.Geometry;

/// <summary>The rectangle of least area around a convex polygon.</summary>
/// <param name="Along">Unit direction of <paramref name="LengthMm"/>.</param>
/// <param name="LengthMm">Extent along that direction, mm.</param>
/// <param name="WidthMm">Extent across it, mm.</param>
public readonly record struct MinimalRectangle(Vec2 Along, double LengthMm, double WidthMm)
{
    public double AreaMm2 => LengthMm * WidthMm;

    /// <summary>
    /// One side of the least rectangle lies along an edge of the polygon (Freeman and Shapira 1975), so every edge is
    /// tried, with calipers that turn once around (Toussaint 1983).
    /// </summary>
    /// <param name="polygon">Corners of a convex polygon, counter-clockwise, at least one.</param>
    public static MinimalRectangle Of(ReadOnlySpan<Vec2> polygon)
    {
        if (polygon.Length == 1) return new MinimalRectangle(new Vec2(1, 0), 0, 0);
        if (polygon.Length == 2)
        {
            Vec2 line = polygon[1] - polygon[0];
            return new MinimalRectangle(line.Normalized(), line.Length, 0);
        }
        MinimalRectangle best = new(default, double.PositiveInfinity, 1);
        int front = 1, far = 1, back = 1;
        for (int i = 0; i < polygon.Length; i++)
        {
            Vec2 along = (polygon[(i + 1) % polygon.Length] - polygon[i]).Normalized();
            Vec2 across = new(-along.Y, along.X);
            front = Climb(polygon, along, i == 0 ? 1 : front);
            far = Climb(polygon, across, i == 0 ? front : far);
            back = Climb(polygon, -along, i == 0 ? far : back);
            MinimalRectangle tried = new(
                along, along.Dot(polygon[front] - polygon[back]), across.Dot(polygon[far] - polygon[i]));
            if (tried.AreaMm2 < best.AreaMm2) best = tried;
        }
        return best;
    }

    private static int Climb(ReadOnlySpan<Vec2> polygon, Vec2 direction, int from)
    {
        for (int step = 0; step < polygon.Length; step++)
        {
            int next = from + 1 == polygon.Length ? 0 : from + 1;
            if (direction.Dot(polygon[next] - polygon[from]) < 0) break;
            from = next;
        }
        return from;
    }
}
