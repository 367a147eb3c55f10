namespace Platewright.Geometry;

/// <summary>
/// On which side does a point lie? The sign is that of the exact determinant of the coordinates as given: a
/// floating-point filter answers nearly always, exact arithmetic the rest (Shewchuk 1997, sections 4.3 and 4.4).
/// </summary>
public static class Orientation
{
    // Shewchuk's bounds ccwerrboundA and o3derrboundA, with his epsilon 2^-53.
    private const double Epsilon = 1.0 / (1L << 53);
    private const double PlaneFilter = (3 + 16 * Epsilon) * Epsilon;

    /// <summary>Relative error of a rounded 3 × 3 determinant of differences, against its permanent.</summary>
    internal const double SpaceFilter = (7 + 56 * Epsilon) * Epsilon;

    /// <summary>Below this a rounded determinant may have lost bits to underflow; it decides nothing.</summary>
    internal const double Underflow = 1e-280;

    // Products of three such numbers, and of their last bits, neither overflow nor underflow.
    private const double Smallest = 5.5e-76;
    private const double Largest = 1.8e75;

    /// <summary>Sign of the turn a → b → c in the plane: +1 counter-clockwise, −1 clockwise, 0 on one line.</summary>
    public static int Of(Vec2 a, Vec2 b, Vec2 c)
    {
        double left = (a.X - c.X) * (b.Y - c.Y);
        double right = (a.Y - c.Y) * (b.X - c.X);
        double determinant = left - right;
        double error = PlaneFilter * (Math.Abs(left) + Math.Abs(right)) + Underflow;
        if (determinant > error) return 1;
        if (determinant < -error) return -1;
        return Exactly(a, b, c);
    }

    /// <summary>
    /// Sign of ((b − a) × (c − a)) · (d − a): +1 where d lies on the side from which a, b, c turn counter-clockwise,
    /// 0 where it lies on their plane.
    /// </summary>
    public static int Of(Vec3 a, Vec3 b, Vec3 c, Vec3 d)
    {
        Vec3 ab = b - a, ac = c - a, ad = d - a;
        double yz = ab.Y * ac.Z, zy = ab.Z * ac.Y;
        double zx = ab.Z * ac.X, xz = ab.X * ac.Z;
        double xy = ab.X * ac.Y, yx = ab.Y * ac.X;
        double determinant = (yz - zy) * ad.X + (zx - xz) * ad.Y + (xy - yx) * ad.Z;
        double permanent = (Math.Abs(yz) + Math.Abs(zy)) * Math.Abs(ad.X)
            + (Math.Abs(zx) + Math.Abs(xz)) * Math.Abs(ad.Y)
            + (Math.Abs(xy) + Math.Abs(yx)) * Math.Abs(ad.Z);
        double error = SpaceFilter * permanent + Underflow;
        if (determinant > error) return 1;
        if (determinant < -error) return -1;
        return Exactly(a, b, c, d);
    }

    /// <summary>True where the three points lie on one line, exactly.</summary>
    public static bool OnOneLine(Vec3 a, Vec3 b, Vec3 c) =>
        Of(new Vec2(a.X, a.Y), new Vec2(b.X, b.Y), new Vec2(c.X, c.Y)) == 0
        && Of(new Vec2(a.Y, a.Z), new Vec2(b.Y, b.Z), new Vec2(c.Y, c.Z)) == 0
        && Of(new Vec2(a.Z, a.X), new Vec2(b.Z, b.X), new Vec2(c.Z, c.X)) == 0;

    /// <summary>(b − a) × (c − a), each component right to the last bit or two however thin the triangle.</summary>
    internal static Vec3 Cross(Vec3 a, Vec3 b, Vec3 c)
    {
        Span<double> minor = stackalloc double[16];
        double x = Expansion.Value(minor[..Minor(b.Y, b.Z, c.Y, c.Z, a.Y, a.Z, minor)]);
        double y = Expansion.Value(minor[..Minor(b.Z, b.X, c.Z, c.X, a.Z, a.X, minor)]);
        double z = Expansion.Value(minor[..Minor(b.X, b.Y, c.X, c.Y, a.X, a.Y, minor)]);
        return new Vec3(x, y, z);
    }

    internal static int Exactly(Vec2 a, Vec2 b, Vec2 c)
    {
        if (!(InRange(a.X) && InRange(a.Y) && InRange(b.X) && InRange(b.Y) && InRange(c.X) && InRange(c.Y)))
            return BigOrientation.Of(a, b, c);
        Span<double> minor = stackalloc double[16];
        int count = Minor(a.X, a.Y, b.X, b.Y, c.X, c.Y, minor);
        return Expansion.Sign(minor[..count]);
    }

    internal static int Exactly(Vec3 a, Vec3 b, Vec3 c, Vec3 d)
    {
        if (!(InRange(a) && InRange(b) && InRange(c) && InRange(d))) return BigOrientation.Of(a, b, c, d);
        Vec3 ab = b - a, ac = c - a, ad = d - a;
        Vec3 abTail = Tail(b, a, ab), acTail = Tail(c, a, ac), adTail = Tail(d, a, ad);
        Span<double> rounded = stackalloc double[24];
        int count = Determinant(ad, ab, ac, rounded);
        if (abTail == default && acTail == default && adTail == default) return Expansion.Sign(rounded[..count]);
        double value = Expansion.Value(rounded[..count]);
        double determinant = value + FirstOrder(ad, ab, ac, adTail, abTail, acTail);
        double doubt = TailFilter * Permanent(ad, ab, ac) + SumFilter * Math.Abs(determinant) + Underflow;
        if (determinant > doubt) return 1;
        if (determinant < -doubt) return -1;
        return Fully(a, b, c, d);
    }

    // Shewchuk's bounds o3derrboundC and resulterrbound.
    private const double TailFilter = (26 + 288 * Epsilon) * Epsilon * Epsilon;
    private const double SumFilter = (3 + 8 * Epsilon) * Epsilon;

    /// <summary>What the differences lost when they were rounded.</summary>
    private static Vec3 Tail(Vec3 p, Vec3 q, Vec3 difference) =>
        new(Tail(p.X, q.X, difference.X), Tail(p.Y, q.Y, difference.Y), Tail(p.Z, q.Z, difference.Z));

    private static double Tail(double p, double q, double difference)
    {
        double virtualQ = p - difference;
        double virtualP = difference + virtualQ;
        return p - virtualP + (virtualQ - q);
    }

    /// <summary>u · (v × w), exactly, for differences taken as they are.</summary>
    private static int Determinant(Vec3 u, Vec3 v, Vec3 w, Span<double> result)
    {
        Span<double> minor = stackalloc double[4];
        Span<double> x = stackalloc double[8];
        Span<double> y = stackalloc double[8];
        Span<double> z = stackalloc double[8];
        Span<double> xy = stackalloc double[16];
        int xs = Expansion.Scale(minor[..Expansion.TwoProducts(v.Y, w.Z, v.Z, w.Y, minor)], u.X, x);
        int ys = Expansion.Scale(minor[..Expansion.TwoProducts(v.Z, w.X, v.X, w.Z, minor)], u.Y, y);
        int zs = Expansion.Scale(minor[..Expansion.TwoProducts(v.X, w.Y, v.Y, w.X, minor)], u.Z, z);
        int half = Expansion.Sum(x[..xs], y[..ys], xy);
        return Expansion.Sum(xy[..half], z[..zs], result);
    }

    /// <summary>The change of u · (v × w) to first order in the tails.</summary>
    private static double FirstOrder(Vec3 u, Vec3 v, Vec3 w, Vec3 du, Vec3 dv, Vec3 dw) =>
        u.Z * (v.X * dw.Y + w.Y * dv.X - (v.Y * dw.X + w.X * dv.Y)) + du.Z * (v.X * w.Y - v.Y * w.X)
        + (v.Z * (w.X * du.Y + u.Y * dw.X - (w.Y * du.X + u.X * dw.Y)) + dv.Z * (w.X * u.Y - w.Y * u.X))
        + (w.Z * (u.X * dv.Y + v.Y * du.X - (u.Y * dv.X + v.X * du.Y)) + dw.Z * (u.X * v.Y - u.Y * v.X));

    private static double Permanent(Vec3 u, Vec3 v, Vec3 w) =>
        (Math.Abs(v.Y * w.Z) + Math.Abs(v.Z * w.Y)) * Math.Abs(u.X)
        + (Math.Abs(v.Z * w.X) + Math.Abs(v.X * w.Z)) * Math.Abs(u.Y)
        + (Math.Abs(v.X * w.Y) + Math.Abs(v.Y * w.X)) * Math.Abs(u.Z);

    private static int Fully(Vec3 a, Vec3 b, Vec3 c, Vec3 d)
    {
        Span<double> minor = stackalloc double[16];
        Span<double> along = stackalloc double[2];
        Span<double> x = stackalloc double[64];
        Span<double> y = stackalloc double[64];
        Span<double> z = stackalloc double[64];
        int count = Minor(b.Y, b.Z, c.Y, c.Z, a.Y, a.Z, minor);
        int xs = Expansion.Product(minor[..count], along[..Expansion.Difference(d.X, a.X, along)], x);
        count = Minor(b.Z, b.X, c.Z, c.X, a.Z, a.X, minor);
        int ys = Expansion.Product(minor[..count], along[..Expansion.Difference(d.Y, a.Y, along)], y);
        count = Minor(b.X, b.Y, c.X, c.Y, a.X, a.Y, minor);
        int zs = Expansion.Product(minor[..count], along[..Expansion.Difference(d.Z, a.Z, along)], z);
        Span<double> xy = stackalloc double[128];
        Span<double> sum = stackalloc double[192];
        int half = Expansion.Sum(x[..xs], y[..ys], xy);
        return Expansion.Sign(sum[..Expansion.Sum(xy[..half], z[..zs], sum)]);
    }

    /// <summary>(px − ox)(qy − oy) − (py − oy)(qx − ox), exactly.</summary>
    private static int Minor(double px, double py, double qx, double qy, double ox, double oy, Span<double> result)
    {
        Span<double> first = stackalloc double[2];
        Span<double> second = stackalloc double[2];
        Span<double> left = stackalloc double[8];
        Span<double> right = stackalloc double[8];
        int f = Expansion.Difference(px, ox, first);
        int s = Expansion.Difference(qy, oy, second);
        int lefts = Expansion.Product(first[..f], second[..s], left);
        f = Expansion.Difference(py, oy, first);
        s = Expansion.Difference(qx, ox, second);
        int rights = Expansion.Product(first[..f], second[..s], right);
        Expansion.Negate(right[..rights]);
        return Expansion.Sum(left[..lefts], right[..rights], result);
    }

    private static bool InRange(Vec3 p) => InRange(p.X) && InRange(p.Y) && InRange(p.Z);

    private static bool InRange(double x)
    {
        double size = Math.Abs(x);
        return size is 0 or (>= Smallest and <= Largest);
    }
}
