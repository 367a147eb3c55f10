using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>A convex outline on the build surface, known by its farthest corners.</summary>
internal interface IOutline
{
    /// <summary>The corner farthest along <paramref name="direction"/>, mm.</summary>
    Vec2 Farthest(Vec2 direction);
}

/// <summary>An outline by its corners, times a factor.</summary>
internal sealed class CornerOutline(Vec2[] corners, double factor) : IOutline
{
    public Vec2 Farthest(Vec2 direction)
    {
        int best = 0;
        double most = double.NegativeInfinity;
        for (int k = 0; k < corners.Length; k++)
        {
            double reach = corners[k].X * direction.X + corners[k].Y * direction.Y;
            if (reach <= most) continue;
            most = reach;
            best = k;
        }
        return corners[best] * factor;
    }
}
