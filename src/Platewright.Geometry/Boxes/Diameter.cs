namespace Platewright.Geometry;

/// <summary>The greatest distance between two points of a hull.</summary>
/// <param name="LengthMm">That distance, mm.</param>
/// <param name="From">Index of the vertex at one end.</param>
/// <param name="To">Index of the vertex at the other end.</param>
public readonly record struct Diameter(double LengthMm, int From, int To)
{
    /// <summary>Tries pairs of vertices from the furthest out inwards, until no pair can be longer.</summary>
    public static Diameter Of(ConvexHull hull)
    {
        ReadOnlySpan<Vec3> vertices = hull.Vertices;
        Vec3 centre = Bounds3.Of(vertices).Center;
        double[] radius = new double[vertices.Length];
        int[] order = new int[vertices.Length];
        for (int i = 0; i < order.Length; i++) (radius[i], order[i]) = (-(vertices[i] - centre).Length, i);
        Array.Sort(radius, order);
        Diameter best = new(0, order[0], order[0]);
        for (int i = 1; i < order.Length && 2 * -radius[0] > best.LengthMm; i++)
        {
            if (-radius[i] - radius[0] <= best.LengthMm) break;
            for (int j = 0; j < i && -radius[i] - radius[j] > best.LengthMm; j++)
            {
                double length = (vertices[order[i]] - vertices[order[j]]).Length;
                if (length > best.LengthMm) best = new Diameter(length, order[j], order[i]);
            }
        }
        return best;
    }
}
