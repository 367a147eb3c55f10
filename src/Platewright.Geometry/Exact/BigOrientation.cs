using System.Numerics;

namespace Platewright.Geometry;

/// <summary>The orientation signs in whole-number arithmetic: slow, with no limit on the range of finite
/// coordinates.</summary>
internal static class BigOrientation
{
    public static int Of(Vec2 a, Vec2 b, Vec2 c)
    {
        int exponent = Lowest([a.X, a.Y, b.X, b.Y, c.X, c.Y]);
        BigInteger cx = Whole(c.X, exponent), cy = Whole(c.Y, exponent);
        BigInteger left = (Whole(a.X, exponent) - cx) * (Whole(b.Y, exponent) - cy);
        BigInteger right = (Whole(a.Y, exponent) - cy) * (Whole(b.X, exponent) - cx);
        return (left - right).Sign;
    }

    public static int Of(Vec3 a, Vec3 b, Vec3 c, Vec3 d)
    {
        int exponent = Lowest([a.X, a.Y, a.Z, b.X, b.Y, b.Z, c.X, c.Y, c.Z, d.X, d.Y, d.Z]);
        BigInteger ax = Whole(a.X, exponent), ay = Whole(a.Y, exponent), az = Whole(a.Z, exponent);
        BigInteger bx = Whole(b.X, exponent) - ax, by = Whole(b.Y, exponent) - ay, bz = Whole(b.Z, exponent) - az;
        BigInteger cx = Whole(c.X, exponent) - ax, cy = Whole(c.Y, exponent) - ay, cz = Whole(c.Z, exponent) - az;
        BigInteger dx = Whole(d.X, exponent) - ax, dy = Whole(d.Y, exponent) - ay, dz = Whole(d.Z, exponent) - az;
        return ((by * cz - bz * cy) * dx + (bz * cx - bx * cz) * dy + (bx * cy - by * cx) * dz).Sign;
    }

    private static int Lowest(ReadOnlySpan<double> values)
    {
        int lowest = int.MaxValue;
        foreach (double value in values)
            if (value != 0) lowest = Math.Min(lowest, Parts(value).Exponent);
        return lowest == int.MaxValue ? 0 : lowest;
    }

    private static BigInteger Whole(double value, int exponent)
    {
        if (value == 0) return BigInteger.Zero;
        (long mantissa, int own) = Parts(value);
        return new BigInteger(mantissa) << (own - exponent);
    }

    private static (long Mantissa, int Exponent) Parts(double value)
    {
        long bits = BitConverter.DoubleToInt64Bits(value);
        int biased = (int)((bits >> 52) & 0x7FF);
        long fraction = bits & 0xFFFFFFFFFFFFFL;
        long mantissa = biased == 0 ? fraction : fraction | (1L << 52);
        return (bits < 0 ? -mantissa : mantissa, Math.Max(biased, 1) - 1075);
    }
}
