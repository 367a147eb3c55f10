namespace Platewright.Geometry;

/// <summary>Weighted sum of squared distances from planes, as a function of the place: pᵀAp + 2b·p + c.</summary>
internal readonly record struct Quadric(
    double Xx, double Xy, double Xz, double Yy, double Yz, double Zz, Vec3 B, double C)
{
    /// <summary>Below this share of its size cubed the matrix has no reliable inverse.</summary>
    private const double Singular = 1e-6;

    public static Quadric OfPlane(Vec3 normal, Vec3 point, double weight)
    {
        double offset = -normal.Dot(point);
        Vec3 n = normal * weight;
        return new Quadric(
            n.X * normal.X, n.X * normal.Y, n.X * normal.Z, n.Y * normal.Y, n.Y * normal.Z, n.Z * normal.Z,
            n * offset, weight * offset * offset);
    }

    public static Quadric operator +(Quadric p, Quadric q) => new(
        p.Xx + q.Xx, p.Xy + q.Xy, p.Xz + q.Xz, p.Yy + q.Yy, p.Yz + q.Yz, p.Zz + q.Zz, p.B + q.B, p.C + q.C);

    public double At(Vec3 p) => p.Dot(Times(p)) + 2 * B.Dot(p) + C;

    public bool TryLeast(out Vec3 least)
    {
        Vec3 x = new(Xx, Xy, Xz), y = new(Xy, Yy, Yz), z = new(Xz, Yz, Zz);
        Vec3 yz = y.Cross(z), zx = z.Cross(x), xy = x.Cross(y);
        double determinant = x.Dot(yz), size = (Xx + Yy + Zz) / 3;
        least = -(yz * B.X + zx * B.Y + xy * B.Z) / determinant;
        return Math.Abs(determinant) > Singular * size * size * size;
    }

    private Vec3 Times(Vec3 p) =>
        new(Xx * p.X + Xy * p.Y + Xz * p.Z, Xy * p.X + Yy * p.Y + Yz * p.Z, Xz * p.X + Yz * p.Y + Zz * p.Z);
}
