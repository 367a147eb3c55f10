using Platewright.Geometry;
using Region = NetTopologySuite.Geometries.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>Bodies whose section changes on the way: twisted, tapered, bent.</summary>
public static class Loft
{
    /// <summary>
    /// A region carried from z0 to z1, mm, each of its points moved by a function of (point, share of the way).
    /// </summary>
    public static Solid Of(Region region, double z0, double z1, int steps, Func<Vec2, double, Vec2> shape)
    {
        Solid solid = new();
        List<Vec2[]> rings = Rings.Of(region);
        List<int[]> Section(double share) =>
            [.. rings.Select(r => r.Select(p =>
            {
                Vec2 q = shape(p, share);
                return solid.Vertex(new Vec3(q.X, q.Y, z0 + (z1 - z0) * share));
            }).ToArray())];
        List<int[]> below = Section(0);
        Planar.Fill(solid, Prism.Underneath(Frame.Level(z0)), [.. below.Select(Prism.Reversed)]);
        for (int step = 1; step <= steps; step++)
        {
            List<int[]> above = Section((double)step / steps);
            for (int i = 0; i < above.Count; i++) solid.AddWall(below[i], above[i]);
            below = above;
        }
        Planar.Fill(solid, Frame.Level(z1), below);
        return solid;
    }

    /// <summary>
    /// A section swept along a line of points with the least twist. The section's x starts along
    /// <paramref name="side"/>; both ends are cut square.
    /// </summary>
    /// <param name="size">Factor on the section against the share of the way; 1 where absent.</param>
    public static Solid Along(Region section, IReadOnlyList<Vec3> path, Vec3 side, Func<double, double>? size = null)
    {
        Solid solid = new();
        List<Vec2[]> rings = Rings.Of(section);
        List<int[]>? below = null;
        Frame frame = default;
        for (int i = 0; i < path.Count; i++)
        {
            Vec3 into = (path[i] - path[Math.Max(i - 1, 0)]).Normalized();
            Vec3 onward = (path[Math.Min(i + 1, path.Count - 1)] - path[i]).Normalized();
            Vec3 tangent = i == 0 ? onward : i == path.Count - 1 ? into : (into + onward).Normalized();
            side = (side - tangent * side.Dot(tangent)).Normalized();
            frame = new Frame(path[i], side, tangent.Cross(side), tangent);
            double factor = size?.Invoke((double)i / (path.Count - 1)) ?? 1;
            Frame here = frame;
            List<int[]> above = [.. rings.Select(r => r.Select(p => solid.Vertex(here.At(p * factor))).ToArray())];
            if (below is null) Planar.Fill(solid, Prism.Underneath(frame), [.. above.Select(Prism.Reversed)]);
            for (int k = 0; below is not null && k < above.Count; k++) solid.AddWall(below[k], above[k]);
            below = above;
        }
        Planar.Fill(solid, frame, below!);
        return solid;
    }

    /// <summary>A path through corner points, each corner an arc of this radius, mm.</summary>
    public static List<Vec3> Path(double radius, params Vec3[] corners)
    {
        List<Vec3> path = [corners[0]];
        for (int i = 1; i < corners.Length - 1; i++)
        {
            Vec3 a = (corners[i - 1] - corners[i]).Normalized(), b = (corners[i + 1] - corners[i]).Normalized();
            double half = Math.Acos(Math.Clamp(a.Dot(b), -1, 1)) / 2;
            Vec3 center = corners[i] + (a + b).Normalized() * (radius / Math.Sin(half));
            double sweep = Math.PI - 2 * half;
            Vec3 first = (corners[i] + a * (radius / Math.Tan(half)) - center) / radius;
            Vec3 turn = (-a - first * (-a).Dot(first)).Normalized();
            int steps = Math.Max(3, (int)Math.Ceiling(Outline.Sides(radius) * sweep / Math.Tau));
            for (int k = 0; k <= steps; k++)
            {
                (double sin, double cos) = Math.SinCos(sweep * k / steps);
                path.Add(center + first * (radius * cos) + turn * (radius * sin));
            }
        }
        path.Add(corners[^1]);
        return path;
    }
}
