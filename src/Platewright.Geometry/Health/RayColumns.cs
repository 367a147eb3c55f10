namespace Platewright.Geometry;

/// <summary>
/// Rays along one axis, sorted into a grid of columns, so that a triangle finds the few rays it may stop in one pass
/// over the mesh: with few rays and many triangles that is faster than a tree.
/// </summary>
internal sealed class RayColumns
{
    private const int Cells = 64;

    private readonly SurfacePoint[] _points;
    private readonly int _axis;
    private readonly int[] _begin = new int[Cells * Cells + 1];
    private readonly int[] _rays;
    private readonly Vec2 _low;
    private readonly Vec2 _perCell;

    /// <param name="bounds">The box around the mesh.</param>
    /// <param name="points">Where rays begin; only those whose normal is nearest to the axis are taken.</param>
    /// <param name="axis">0, 1 or 2 for x, y or z.</param>
    public RayColumns(Bounds3 bounds, SurfacePoint[] points, int axis)
    {
        (_points, _axis) = (points, axis);
        _low = Across(bounds.Min);
        Vec2 size = Across(bounds.Max) - _low;
        _perCell = new Vec2(size.X > 0 ? Cells / size.X : 0, size.Y > 0 ? Cells / size.Y : 0);
        int[] own = [.. Enumerable.Range(0, points.Length).Where(i => AxisOf(points[i].Normal) == axis)];
        int[] cells = [.. own.Select(i => Cell(Across(points[i].Position)))];
        Array.Sort(cells, own);
        _rays = own;
        foreach (int cell in cells) _begin[cell + 1]++;
        for (int cell = 0; cell < Cells * Cells; cell++) _begin[cell + 1] += _begin[cell];
    }

    /// <summary>The axis nearest to a direction.</summary>
    public static int AxisOf(Vec3 u)
    {
        double x = Math.Abs(u.X), y = Math.Abs(u.Y), z = Math.Abs(u.Z);
        return x >= y && x >= z ? 0 : y >= z ? 1 : 2;
    }

    public static double Along(Vec3 p, int axis) => axis == 0 ? p.X : axis == 1 ? p.Y : p.Z;

    /// <summary>Notes a triangle at every ray that meets it nearer than what is noted there, but further than
    /// <paramref name="clear"/>.</summary>
    public void Meet(Mesh mesh, int triangle, double clear, RayHit[] hits)
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(triangle);
        Vec2 p = Across(a), q = Across(b), r = Across(c);
        double twice = (q - p).Cross(r - p);
        if (twice == 0 || _rays.Length == 0) return;
        int lowX = Column(Math.Min(p.X, Math.Min(q.X, r.X)), 0), highX = Column(Math.Max(p.X, Math.Max(q.X, r.X)), 0);
        int lowY = Column(Math.Min(p.Y, Math.Min(q.Y, r.Y)), 1), highY = Column(Math.Max(p.Y, Math.Max(q.Y, r.Y)), 1);
        for (int y = lowY; y <= highY; y++)
        {
            int from = _begin[y * Cells + lowX], to = _begin[y * Cells + highX + 1];
            for (int i = from; i < to; i++)
            {
                SurfacePoint ray = _points[_rays[i]];
                if (ray.Triangle == triangle) continue;
                Vec2 at = Across(ray.Position);
                double u = (at - p).Cross(r - p) / twice, v = (q - p).Cross(at - p) / twice;
                if (!(u >= 0 && v >= 0 && u + v <= 1)) continue;
                double depth = Along(a + (b - a) * u + (c - a) * v, _axis);
                double distance = depth - Along(ray.Position, _axis);
                if (Along(ray.Normal, _axis) > 0) distance = -distance;
                if (distance > clear) hits[_rays[i]] = hits[_rays[i]].Nearer(new RayHit(distance, triangle));
            }
        }
    }

    private Vec2 Across(Vec3 p) =>
        _axis == 0 ? new Vec2(p.Y, p.Z) : _axis == 1 ? new Vec2(p.Z, p.X) : new Vec2(p.X, p.Y);

    private int Cell(Vec2 p) => Column(p.Y, 1) * Cells + Column(p.X, 0);

    private int Column(double at, int side)
    {
        double cell = side == 0 ? (at - _low.X) * _perCell.X : (at - _low.Y) * _perCell.Y;
        return Math.Clamp((int)cell, 0, Cells - 1);
    }
}
