using Platewright.Geometry;

namespace Platewright.Fit.Planar;

/// <summary>One condition on a shadow: where it reaches along a wall's normal must stay within the wall.</summary>
/// <param name="Normal">Outward unit normal of the wall.</param>
/// <param name="Offset">Distance of the wall from the origin along it, mm.</param>
/// <param name="Reach">How far the shadow reaches along the normal, mm.</param>
/// <param name="Vertex">Which vertex reaches farthest; the caller's number.</param>
internal readonly record struct Wall(Vec2 Normal, double Offset, double Reach, int Vertex);

/// <summary>
/// The least factor σ by which walls n_i · p ≤ c_i must move out to hold a shape that reaches h_i along n_i, wherever
/// the shape is put: max Σ λ_i h_i over λ ≥ 0 with Σ λ_i n_i = 0 and Σ λ_i c_i = 1. The simplex method on a basis of three
/// walls; walls enter one by one, so that a round surface (a wall in every direction) works like a polygon.
/// </summary>
internal sealed class WallProgramme
{
    private readonly Wall[] _basis = new Wall[3];
    private readonly double[] _inverse = new double[9];
    private readonly double[] _weight = new double[3];
    private double _tx;
    private double _ty;

    /// <summary>σ, the reciprocal of the largest scale, as far as the walls seen so far tell.</summary>
    public double Value { get; private set; }

    /// <summary>Where the shape's origin belongs when the walls have moved out by σ, mm.</summary>
    public Vec2 Offset => new(-_tx, -_ty);

    /// <summary>Begins with three walls whose normals hold each other back.</summary>
    /// <returns>False when they do not.</returns>
    public bool Start(in Wall a, in Wall b, in Wall c)
    {
        Matrix3 m = new(
            new Vec3(a.Normal.X, b.Normal.X, c.Normal.X), new Vec3(a.Normal.Y, b.Normal.Y, c.Normal.Y),
            new Vec3(a.Offset, b.Offset, c.Offset));
        double det = m.Determinant;
        if (Math.Abs(det) < 1e-9 * (Math.Abs(a.Offset) + Math.Abs(b.Offset) + Math.Abs(c.Offset))) return false;
        Vec3 r0 = m.Row1.Cross(m.Row2) / det, r1 = m.Row2.Cross(m.Row0) / det, r2 = m.Row0.Cross(m.Row1) / det;
        double least = Math.Min(r2.X, Math.Min(r2.Y, r2.Z));
        if (least < -1e-12 * Math.Max(r2.X, Math.Max(r2.Y, r2.Z))) return false;
        (_inverse[0], _inverse[1], _inverse[2]) = (r0.X, r1.X, r2.X);
        (_inverse[3], _inverse[4], _inverse[5]) = (r0.Y, r1.Y, r2.Y);
        (_inverse[6], _inverse[7], _inverse[8]) = (r0.Z, r1.Z, r2.Z);
        (_weight[0], _weight[1], _weight[2]) = (Math.Max(0, r2.X), Math.Max(0, r2.Y), Math.Max(0, r2.Z));
        (_basis[0], _basis[1], _basis[2]) = (a, b, c);
        Price();
        return true;
    }

    public Wall WallAt(int k) => _basis[k];

    public double WeightAt(int k) => _weight[k];

    /// <summary>How far the wall is violated now, mm.</summary>
    public double Excess(in Wall wall) =>
        wall.Reach - (wall.Normal.X * _tx + wall.Normal.Y * _ty + wall.Offset * Value);

    /// <summary>Brings a wall into the basis. False where rounding no longer allows it.</summary>
    public bool Enter(in Wall wall)
    {
        Span<double> d = stackalloc double[3];
        int row = -1;
        double least = double.PositiveInfinity;
        for (int i = 0; i < 3; i++)
        {
            d[i] = _inverse[3 * i] * wall.Normal.X + _inverse[3 * i + 1] * wall.Normal.Y + _inverse[3 * i + 2] * wall.Offset;
            if (d[i] <= 1e-14) continue;
            double ratio = Math.Max(0, _weight[i]) / d[i];
            if (ratio >= least) continue;
            least = ratio;
            row = i;
        }
        if (row < 0) return false;
        for (int k = 0; k < 3; k++) _inverse[3 * row + k] /= d[row];
        for (int i = 0; i < 3; i++)
        {
            if (i == row) continue;
            for (int k = 0; k < 3; k++) _inverse[3 * i + k] -= d[i] * _inverse[3 * row + k];
            _weight[i] -= d[i] * least;
        }
        _weight[row] = least;
        _basis[row] = wall;
        Price();
        return true;
    }

    /// <summary>Lets walls enter until none of <paramref name="walls"/> is violated.</summary>
    public void Solve(ReadOnlySpan<Wall> walls)
    {
        for (int step = 0; step < 20 + 4 * walls.Length; step++)
        {
            int entering = -1;
            double most = 1e-14 * (Math.Abs(_basis[0].Reach) + Math.Abs(_basis[1].Reach) + Math.Abs(_basis[2].Reach));
            for (int i = 0; i < walls.Length; i++)
            {
                double excess = Excess(walls[i]);
                if (excess <= most) continue;
                most = excess;
                entering = i;
            }
            if (entering < 0 || !Enter(walls[entering])) return;
        }
    }

    private void Price()
    {
        double h0 = _basis[0].Reach, h1 = _basis[1].Reach, h2 = _basis[2].Reach;
        _tx = h0 * _inverse[0] + h1 * _inverse[3] + h2 * _inverse[6];
        _ty = h0 * _inverse[1] + h1 * _inverse[4] + h2 * _inverse[7];
        Value = h0 * _inverse[2] + h1 * _inverse[5] + h2 * _inverse[8];
    }
}
