namespace Platewright.Geometry;

/// <summary>
/// A rotation as a unit quaternion w + xi + yj + zk. <c>default</c> is not a rotation; start from <see
/// cref="Identity"/>.
/// </summary>
public readonly record struct Rotation(double W, double X, double Y, double Z)
{
    public static readonly Rotation Identity = new(1, 0, 0, 0);

    /// <summary>The rotation by <paramref name="angle"/> radians about <paramref name="axis"/> (any length but
    /// zero).</summary>
    public static Rotation About(Vec3 axis, double angle)
    {
        Vec3 u = axis.Normalized() * Math.Sin(angle / 2);
        return new Rotation(Math.Cos(angle / 2), u.X, u.Y, u.Z);
    }

    /// <summary>The shortest rotation that carries direction <paramref name="from"/> onto <paramref
    /// name="to"/>.</summary>
    public static Rotation Between(Vec3 from, Vec3 to)
    {
        Vec3 a = from.Normalized();
        Vec3 b = to.Normalized();
        Vec3 axis = a.Cross(b);
        double w = 1 + a.Dot(b);
        if (w > 1e-9) return new Rotation(w, axis.X, axis.Y, axis.Z).Normalized();
        Vec3 side = Math.Abs(a.X) < 0.6 ? Vec3.UnitX : Vec3.UnitY;
        return About(a.Cross(side), Math.PI);
    }

    public Rotation Normalized()
    {
        double n = Math.Sqrt(W * W + X * X + Y * Y + Z * Z);
        return new Rotation(W / n, X / n, Y / n, Z / n);
    }

    public Rotation Inverse() => new(W, -X, -Y, -Z);

    /// <summary>First <paramref name="b"/>, then <paramref name="a"/>.</summary>
    public static Rotation operator *(Rotation a, Rotation b) => new(
        a.W * b.W - a.X * b.X - a.Y * b.Y - a.Z * b.Z,
        a.W * b.X + a.X * b.W + a.Y * b.Z - a.Z * b.Y,
        a.W * b.Y - a.X * b.Z + a.Y * b.W + a.Z * b.X,
        a.W * b.Z + a.X * b.Y - a.Y * b.X + a.Z * b.W);

    public Matrix3 ToMatrix()
    {
        double xx = X * X, yy = Y * Y, zz = Z * Z;
        double xy = X * Y, xz = X * Z, yz = Y * Z, wx = W * X, wy = W * Y, wz = W * Z;
        return new Matrix3(
            new Vec3(1 - 2 * (yy + zz), 2 * (xy - wz), 2 * (xz + wy)),
            new Vec3(2 * (xy + wz), 1 - 2 * (xx + zz), 2 * (yz - wx)),
            new Vec3(2 * (xz - wy), 2 * (yz + wx), 1 - 2 * (xx + yy)));
    }

    public Vec3 Apply(Vec3 p) => ToMatrix().Apply(p);
}
