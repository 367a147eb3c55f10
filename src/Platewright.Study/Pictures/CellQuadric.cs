using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>
/// The planes of the triangles that touch a cell, and the mean of their corners there. The cell's vertex goes where the
/// squared distances to the planes are least; a small pull towards the mean settles it where planes leave it free.
/// </summary>
internal struct CellQuadric
{
    /// <summary>Weight of the pull towards the mean, as a share of the planes' weight.</summary>
    private const double Pull = 1e-3;

    private double _xx, _xy, _xz, _yy, _yz, _zz;
    private Vec3 _right;
    private Vec3 _sum;
    private Vec3 _origin;
    private int _count;

    /// <summary>Adds a corner of a triangle with this normal, whose length weighs it.</summary>
    public void Add(Vec3 corner, Vec3 normal)
    {
        if (_count == 0) _origin = corner;
        Vec3 p = corner - _origin;
        _sum += p;
        _count++;
        double length = normal.Length;
        if (!(length > 0) || !double.IsFinite(length)) return;
        Vec3 n = normal / length;
        double d = n.Dot(p) * length;
        _xx += n.X * n.X * length;
        _xy += n.X * n.Y * length;
        _xz += n.X * n.Z * length;
        _yy += n.Y * n.Y * length;
        _yz += n.Y * n.Z * length;
        _zz += n.Z * n.Z * length;
        _right += n * d;
    }

    /// <summary>Where the cell's vertex goes: at most one cell's edge from the mean, since planes may meet far away.</summary>
    public readonly Vec3 Place(double cellEdgeMm)
    {
        if (_count == 0) return default;
        Vec3 mean = _sum / _count;
        if (cellEdgeMm == 0) return _origin;
        double pull = Pull * (_xx + _yy + _zz);
        var matrix = new Matrix3(new(_xx + pull, _xy, _xz), new(_xy, _yy + pull, _yz), new(_xz, _yz, _zz + pull));
        double determinant = matrix.Determinant;
        if (!(determinant > 0)) return _origin + mean;
        Vec3 right = _right + mean * pull;
        // Cramer's rule; the matrix is symmetric, so its rows are its columns.
        Vec3 place = new Vec3(
            new Matrix3(right, matrix.Row1, matrix.Row2).Determinant,
            new Matrix3(matrix.Row0, right, matrix.Row2).Determinant,
            new Matrix3(matrix.Row0, matrix.Row1, right).Determinant) / determinant;
        Vec3 away = place - mean;
        return _origin + (away.Length <= cellEdgeMm ? place : mean);
    }
}
