namespace Platewright.Geometry;

/// <summary>A 3 × 3 matrix by rows. For a rotation, row i is the part's direction that ends up along axis i.</summary>
public readonly record struct Matrix3(Vec3 Row0, Vec3 Row1, Vec3 Row2)
{
    public static readonly Matrix3 Identity = new(Vec3.UnitX, Vec3.UnitY, Vec3.UnitZ);

    public double Determinant => Row0.Dot(Row1.Cross(Row2));

    public Vec3 Apply(Vec3 p) => new(Row0.Dot(p), Row1.Dot(p), Row2.Dot(p));

    public Matrix3 Transposed() => new(
        new(Row0.X, Row1.X, Row2.X), new(Row0.Y, Row1.Y, Row2.Y), new(Row0.Z, Row1.Z, Row2.Z));

    public static Matrix3 operator *(Matrix3 a, Matrix3 b)
    {
        Matrix3 t = b.Transposed();
        return new Matrix3(t.Apply(a.Row0), t.Apply(a.Row1), t.Apply(a.Row2));
    }

    public static Matrix3 operator *(Matrix3 a, double s) => new(a.Row0 * s, a.Row1 * s, a.Row2 * s);

    /// <summary>The quaternion of a rotation matrix.</summary>
    public Rotation ToRotation()
    {
        double trace = Row0.X + Row1.Y + Row2.Z;
        if (trace > 0)
        {
            double s = Math.Sqrt(trace + 1) * 2;
            return new Rotation(
                s / 4, (Row2.Y - Row1.Z) / s, (Row0.Z - Row2.X) / s, (Row1.X - Row0.Y) / s).Normalized();
        }
        if (Row0.X > Row1.Y && Row0.X > Row2.Z)
        {
            double s = Math.Sqrt(1 + Row0.X - Row1.Y - Row2.Z) * 2;
            return new Rotation(
                (Row2.Y - Row1.Z) / s, s / 4, (Row0.Y + Row1.X) / s, (Row0.Z + Row2.X) / s).Normalized();
        }
        if (Row1.Y > Row2.Z)
        {
            double s = Math.Sqrt(1 + Row1.Y - Row0.X - Row2.Z) * 2;
            return new Rotation(
                (Row0.Z - Row2.X) / s, (Row0.Y + Row1.X) / s, s / 4, (Row1.Z + Row2.Y) / s).Normalized();
        }
        else
        {
            double s = Math.Sqrt(1 + Row2.Z - Row0.X - Row1.Y) * 2;
            return new Rotation(
                (Row1.X - Row0.Y) / s, (Row0.Z + Row2.X) / s, (Row1.Z + Row2.Y) / s, s / 4).Normalized();
        }
    }
}
