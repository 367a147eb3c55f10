using System.Text.Json;

namespace Platewright.Verify;

/// <summary>The convex volume of a proof, as walls for the witness and as a support function for the bound.</summary>
internal sealed class Volume
{
    private readonly double[] _corner;
    private readonly double[] _size;
    private readonly double _radius;
    private readonly double[][] _polygon;
    private readonly double _height;

    public Volume(JsonElement e)
    {
        Shape = ProofEntry.Text(e, "shape");
        _corner = ProofEntry.Numbers(ProofEntry.Member(e, "corner_mm"), 2);
        _size = ProofEntry.Numbers(ProofEntry.Member(e, "size_mm"), 2);
        _radius = ProofEntry.Number(e, "radius_mm");
        _polygon = [.. ProofEntry.Member(e, "polygon_mm").EnumerateArray().Select(p => ProofEntry.Numbers(p, 2))];
        _height = ProofEntry.Number(e, "height_mm");
        if (Shape is not ("box" or "cylinder" or "prism")) throw new ProofException($"unknown volume shape \"{Shape}\"");
        if (Shape == "prism" && _polygon.Length < 3) throw new ProofException("a prism needs three corners at least");
    }

    public string Shape { get; }

    /// <summary>Whether a box's x and y edges, and all three, are equal: what cuts of the search they justify.</summary>
    public (bool Square, bool Cube) BoxSymmetry => (_size[0] == _size[1], _size[0] == _size[1] && _size[1] == _height);

    /// <summary>
    /// The support function about a fixed point inside, of the volume or of a larger one that is also symmetric under
    /// half turns about z or x through that point. Where normals cancel, the fixed point does not matter.
    /// </summary>
    public Interval Support(Point n, bool halfTurnZ, bool halfTurnX)
    {
        Interval half = (Interval)_height / 2;
        Interval upright = Interval.Abs(n.Z) * half;
        if (Shape == "box")
            return Interval.Abs(n.X) * _size[0] / 2 + Interval.Abs(n.Y) * _size[1] / 2 + upright;
        if (Shape == "cylinder") return _radius * Interval.Sqrt(n.X * n.X + n.Y * n.Y) + upright;
        Interval flat = Reach(n.X, n.Y);
        if (halfTurnZ) flat = Interval.Max(flat, Reach(-n.X, -n.Y));
        if (halfTurnX) flat = Interval.Max(flat, Reach(n.X, -n.Y));
        if (halfTurnZ && halfTurnX) flat = Interval.Max(flat, Reach(-n.X, n.Y));
        return flat + upright;
    }

    /// <summary>Whether every one of the points is certainly inside.</summary>
    public bool Holds(IEnumerable<Point> points)
    {
        foreach (Point p in points)
        {
            if (!(p.Z.Low >= 0 && p.Z.High <= _height)) return false;
            bool inside = Shape switch
            {
                "box" => p.X.Low >= _corner[0] && p.Y.Low >= _corner[1]
                    && (p.X - _corner[0]).High <= _size[0] && (p.Y - _corner[1]).High <= _size[1],
                "cylinder" => (p.X * p.X + p.Y * p.Y).High <= ((Interval)_radius * _radius).Low,
                _ => IsInPolygon(p),
            };
            if (!inside) return false;
        }
        return true;
    }

    private bool IsInPolygon(Point p)
    {
        for (int i = 0; i < _polygon.Length; i++)
        {
            double[] a = _polygon[i], b = _polygon[(i + 1) % _polygon.Length];
            Interval cross = ((Interval)b[0] - a[0]) * (p.Y - a[1]) - ((Interval)b[1] - a[1]) * (p.X - a[0]);
            if (!(cross.Low >= 0)) return false;
        }
        return true;
    }

    // Farthest of the polygon along (x, y), measured from the mean of its corners.
    private Interval Reach(Interval x, Interval y)
    {
        Interval most = double.NegativeInfinity;
        double cx = _polygon.Average(p => p[0]), cy = _polygon.Average(p => p[1]);
        foreach (double[] p in _polygon) most = Interval.Max(most, ((Interval)p[0] - cx) * x + ((Interval)p[1] - cy) * y);
        return most;
    }
}
