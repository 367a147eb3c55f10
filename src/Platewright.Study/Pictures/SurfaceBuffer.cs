using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>For each sample of the picture the nearest surface: its depth and its normal (a z-buffer).</summary>
internal sealed class SurfaceBuffer
{
    /// <summary>Normals that differ by more than this many degrees make a visible edge: 28°.</summary>
    private const double EdgeCosine = 0.883;

    /// <summary>Depths that differ by more than this share of the picture make a visible edge.</summary>
    private const double DepthStep = 0.025;

    private readonly double[] _depth;
    private readonly Vec3[] _normal;

    public SurfaceBuffer(int samples)
    {
        Samples = samples;
        _depth = new double[samples * samples];
        _normal = new Vec3[samples * samples];
        Array.Fill(_depth, double.NegativeInfinity);
    }

    public int Samples { get; }

    public bool Covers(int x, int y) => !double.IsNegativeInfinity(Depth(x, y));

    public Vec3 Normal(int x, int y) => _normal[y * Samples + x];

    /// <summary>Draws a triangle, nearest wins; both sides are drawn, since a broken mesh may show its inside.</summary>
    public void Add(Viewpoint view, Vec3 a, Vec3 b, Vec3 c)
    {
        Vec3 p = view.Project(a), q = view.Project(b), r = view.Project(c);
        double area = (q.X - p.X) * (r.Y - p.Y) - (q.Y - p.Y) * (r.X - p.X);
        if (area == 0 || !double.IsFinite(area)) return;
        Vec3 normal = Viewpoint.NormalTowardsViewer(a, b, c);
        (int fromX, int toX) = Range(p.X, q.X, r.X);
        (int fromY, int toY) = Range(p.Y, q.Y, r.Y);
        for (int y = fromY; y <= toY; y++)
        {
            for (int x = fromX; x <= toX; x++)
            {
                double sx = x + 0.5, sy = y + 0.5;
                double u = ((q.X - sx) * (r.Y - sy) - (q.Y - sy) * (r.X - sx)) / area;
                double v = ((r.X - sx) * (p.Y - sy) - (r.Y - sy) * (p.X - sx)) / area;
                double w = 1 - u - v;
                if (u < 0 || v < 0 || w < 0) continue;
                double depth = u * p.Z + v * q.Z + w * r.Z;
                int at = y * Samples + x;
                if (depth <= _depth[at]) continue;
                _depth[at] = depth;
                _normal[at] = normal;
            }
        }
    }

    /// <summary>True where the surface bends sharply, jumps in depth or ends beside this sample.</summary>
    public bool IsEdge(int x, int y)
    {
        for (int dy = -1; dy <= 1; dy++)
        {
            for (int dx = -1; dx <= 1; dx++)
            {
                if ((dx != 0 || dy != 0) && Differs(x, y, dx, dy)) return true;
            }
        }
        return false;
    }

    private bool Differs(int x, int y, int dx, int dy)
    {
        int nx = x + dx, ny = y + dy;
        if (nx < 0 || ny < 0 || nx >= Samples || ny >= Samples || !Covers(nx, ny)) return true;
        if (Normal(x, y).Dot(Normal(nx, ny)) < EdgeCosine) return true;
        return Math.Abs(Depth(x, y) - Depth(nx, ny)) > DepthStep * Samples;
    }

    private double Depth(int x, int y) => _depth[y * Samples + x];

    private (int From, int To) Range(double a, double b, double c)
    {
        double low = Math.Min(a, Math.Min(b, c)) - 0.5, high = Math.Max(a, Math.Max(b, c)) - 0.5;
        return ((int)Math.Clamp(Math.Ceiling(low), 0, Samples), (int)Math.Clamp(Math.Floor(high), -1, Samples - 1));
    }
}
