namespace Platewright.Geometry;

/// <summary>
/// The box of least volume around a hull. Every face of the hull is tried flush with the box, with the least rectangle
/// around the shadow, and so are directions spread over the sphere; the best are improved by fixing each axis of the
/// box in turn and by tilting it. That is a search without a certificate: the least box of all may have no face flush
/// (O'Rourke 1985), and then only the tilting finds it. On the shared models it is never more than 0.5 % above the
/// reference.
/// </summary>
public static class TightestBox
{
    /// <summary>A hull with more vertices is judged by this many of them first; the best are measured on all.</summary>
    private const int Sketch = 160;

    /// <summary>At most this many faces, the largest, are tried.</summary>
    private const int MostFaces = 1200;

    /// <summary>So many of the best are improved on all vertices.</summary>
    private const int Kept = 6;

    /// <summary>So many directions, the main axes and the largest faces, are measured on all vertices in any
    /// case.</summary>
    private const int Certain = 15;

    private const int MostRounds = 20;

    /// <summary>Directions tried besides those of the faces.</summary>
    private const int Spread = 150;

    private const double FirstTilt = 0.1;
    private const double LastTilt = 1e-3;
    private const double TiltRatio = 0.7;
    private const int TiltsAround = 8;

    /// <summary>An improvement below this share ends the search.</summary>
    private const double Progress = 1e-9;

    public static OrientedBox Of(ConvexHull hull)
    {
        Vec3[] vertices = hull.Vertices.ToArray();
        if (hull.Dimension < 2) return Thin(vertices);
        Vec3[] sketch = Sketched(vertices);
        IEnumerable<Vec3> normals = hull.Faces.OrderByDescending(f => f.AreaMm2).Take(MostFaces).Select(f => f.Normal);
        Vec3[] starts = [.. Distinct([Vec3.UnitZ, Vec3.UnitX, Vec3.UnitY, .. normals, .. Frame.Spiral(Spread)])];
        OrientedBox[] tried = [.. starts.Select(u => Standing(sketch, u)).OrderBy(b => b.VolumeMm3).Take(Kept)];
        OrientedBox best = OrientedBox.Around(vertices, Matrix3.Identity);
        foreach (OrientedBox start in tried)
        {
            OrientedBox sketched = Tilted(sketch, Improved(sketch, start.Axes));
            best = Smaller(best, Improved(vertices, sketched.Axes));
        }
        // The sketch may rank a face too low that is flush with the least box, as the largest often are.
        foreach (Vec3 u in starts.Take(Certain)) best = Smaller(best, Improved(vertices, Standing(vertices, u).Axes));
        return best;
    }

    /// <summary>Tilts each axis of the box all around by smaller and smaller angles, as long as that helps.</summary>
    private static OrientedBox Tilted(Vec3[] points, OrientedBox box)
    {
        for (double tilt = FirstTilt; tilt > LastTilt; tilt *= TiltRatio)
        {
            foreach (Vec3 up in new[] { box.Axes.Row0, box.Axes.Row1, box.Axes.Row2 })
            {
                (Vec3 x, Vec3 y) = Frame.Across(up);
                for (int k = 0; k < TiltsAround; k++)
                {
                    (double sin, double cos) = Math.SinCos(2 * Math.PI * k / TiltsAround);
                    OrientedBox tried = Standing(points, (up + (x * cos + y * sin) * tilt).Normalized());
                    if (tried.VolumeMm3 < box.VolumeMm3) box = tried;
                }
            }
        }
        return box;
    }

    private static OrientedBox Smaller(OrientedBox a, OrientedBox b) => b.VolumeMm3 < a.VolumeMm3 ? b : a;

    private static OrientedBox Improved(Vec3[] vertices, Matrix3 axes)
    {
        OrientedBox box = OrientedBox.Around(vertices, axes);
        for (int round = 0; round < MostRounds; round++)
        {
            double before = box.VolumeMm3;
            foreach (Vec3 fixedAxis in new[] { box.Axes.Row0, box.Axes.Row1, box.Axes.Row2 })
            {
                OrientedBox turned = Standing(vertices, fixedAxis);
                if (turned.VolumeMm3 < box.VolumeMm3) box = turned;
            }
            if (box.VolumeMm3 > before * (1 - Progress)) break;
        }
        return box;
    }

    /// <summary>The least box with one axis along <paramref name="up"/>.</summary>
    private static OrientedBox Standing(Vec3[] points, Vec3 up)
    {
        (Vec3 x, Vec3 y) = Frame.Across(up);
        Span<Vec2> shadow = points.Length <= Sketch ? stackalloc Vec2[points.Length] : new Vec2[points.Length];
        for (int i = 0; i < points.Length; i++) shadow[i] = new Vec2(x.Dot(points[i]), y.Dot(points[i]));
        Vec2 along = MinimalRectangle.Of(ConvexPolygon.Of(shadow)).Along;
        Vec3 first = (x * along.X + y * along.Y).Normalized();
        return OrientedBox.Around(points, new Matrix3(first, up.Cross(first), up));
    }

    private static OrientedBox Thin(Vec3[] ends)
    {
        Vec3 first = ends.Length == 1 ? Vec3.UnitX : (ends[1] - ends[0]).Normalized();
        (Vec3 second, Vec3 third) = Frame.Across(first);
        return OrientedBox.Around(ends, new Matrix3(first, second, third));
    }

    /// <summary>Vertices that are extreme in evenly spread directions.</summary>
    private static Vec3[] Sketched(Vec3[] vertices)
    {
        if (vertices.Length <= Sketch) return vertices;
        HashSet<int> extreme = [];
        foreach (Vec3 u in Frame.Spiral(Sketch))
        {
            int best = 0;
            double most = double.NegativeInfinity;
            for (int i = 0; i < vertices.Length; i++)
            {
                double along = u.Dot(vertices[i]);
                if (along > most) (most, best) = (along, i);
            }
            extreme.Add(best);
        }
        return [.. extreme.Order().Select(i => vertices[i])];
    }

    /// <summary>Leaves out directions that are the same or opposite but for rounding.</summary>
    private static IEnumerable<Vec3> Distinct(IEnumerable<Vec3> directions)
    {
        HashSet<(long, long, long)> seen = [];
        const double steps = 1e7;
        foreach (Vec3 u in directions)
        {
            Vec3 v = u.X < -0.5 / steps || (u.X < 0.5 / steps && (u.Y < -0.5 / steps || (u.Y < 0.5 / steps && u.Z < 0)))
                ? -u : u;
            if (seen.Add(((long)Math.Round(v.X * steps), (long)Math.Round(v.Y * steps), (long)Math.Round(v.Z * steps))))
                yield return v;
        }
    }
}
