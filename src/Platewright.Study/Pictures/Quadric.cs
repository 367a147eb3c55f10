using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>
/// The weighted sum of squared distances to planes, as a function of a point (Garland and Heckbert, "Surface simplification
/// using quadric error metrics", 1997).
/// </summary>
internal struct Quadric
{
    /// <summary>Weight of the pull towards a wished place, as a share of the planes' weight: settles it where planes do not.</summary>
    private const double Pull = 1e-3;

    private double _xx, _xy, _xz, _yy, _yz, _zz, _constant;
    private Vec3 _right;

    /// <summary>Sum of the planes' weights.</summary>
    public readonly double Weight => _xx + _yy + _zz;

    /// <summary>Adds the plane through a point; a normal without length adds nothing.</summary>
    public void AddPlane(Vec3 through, Vec3 normal, double weight)
    {
        double length = normal.Length;
        if (!(length > 0) || !double.IsFinite(length)) return;
        Vec3 n = normal / length;
        double d = n.Dot(through);
        _xx += n.X * n.X * weight;
        _xy += n.X * n.Y * weight;
        _xz += n.X * n.Z * weight;
        _yy += n.Y * n.Y * weight;
        _yz += n.Y * n.Z * weight;
        _zz += n.Z * n.Z * weight;
        _right += n * (d * weight);
        _constant += d * d * weight;
    }

    public static Quadric operator +(Quadric a, Quadric b) => new()
    {
        _xx = a._xx + b._xx,
        _xy = a._xy + b._xy,
        _xz = a._xz + b._xz,
        _yy = a._yy + b._yy,
        _yz = a._yz + b._yz,
        _zz = a._zz + b._zz,
        _constant = a._constant + b._constant,
        _right = a._right + b._right,
    };

    /// <summary>Weighted sum of squared distances, mm² times weight, not below 0.</summary>
    public readonly double ErrorAt(Vec3 p)
    {
        Vec3 image = new(_xx * p.X + _xy * p.Y + _xz * p.Z, _xy * p.X + _yy * p.Y + _yz * p.Z, _xz * p.X + _yz * p.Y + _zz * p.Z);
        return Math.Max(0, p.Dot(image) - 2 * p.Dot(_right) + _constant);
    }

    /// <summary>The place of least error; <paramref name="wished"/> where the planes say nothing.</summary>
    public readonly Vec3 Best(Vec3 wished)
    {
        double pull = Pull * Weight;
        var matrix = new Matrix3(new(_xx + pull, _xy, _xz), new(_xy, _yy + pull, _yz), new(_xz, _yz, _zz + pull));
        double determinant = matrix.Determinant;
        if (!(determinant > 0)) return wished;
        Vec3 right = _right + wished * pull;
        // Cramer's rule; the matrix is symmetric, so its rows are its columns.
        return new Vec3(
            new Matrix3(right, matrix.Row1, matrix.Row2).Determinant,
            new Matrix3(matrix.Row0, right, matrix.Row2).Determinant,
            new Matrix3(matrix.Row0, matrix.Row1, right).Determinant) / determinant;
    }
}
