namespace Platewright.Verify;

/// <summary>
/// A closed interval of real numbers. Every operation rounds outward by one unit in the last place, so the true result
/// of exact arithmetic on any members always lies inside (IEEE 754 operations are correctly rounded).
/// </summary>
internal readonly record struct Interval(double Low, double High)
{
    public static implicit operator Interval(double exact) => new(exact, exact);

    public static Interval operator +(Interval a, Interval b) => Outward(a.Low + b.Low, a.High + b.High);

    public static Interval operator -(Interval a, Interval b) => Outward(a.Low - b.High, a.High - b.Low);

    public static Interval operator -(Interval a) => new(-a.High, -a.Low);

    public static Interval operator *(Interval a, Interval b)
    {
        double p = a.Low * b.Low, q = a.Low * b.High, r = a.High * b.Low, s = a.High * b.High;
        return Outward(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)));
    }

    /// <exception cref="ProofException">The divisor may be zero.</exception>
    public static Interval operator /(Interval a, Interval b)
    {
        if (b.Low <= 0 && b.High >= 0) throw new ProofException("a division by an interval that contains zero");
        double p = a.Low / b.Low, q = a.Low / b.High, r = a.High / b.Low, s = a.High / b.High;
        return Outward(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)));
    }

    public static Interval Sqrt(Interval a)
    {
        Interval root = Outward(Math.Sqrt(Math.Max(0, a.Low)), Math.Sqrt(Math.Max(0, a.High)));
        return root with { Low = Math.Max(0, root.Low) };
    }

    public static Interval Abs(Interval a) =>
        a.Low >= 0 ? a : a.High <= 0 ? -a : new Interval(0, Math.Max(-a.Low, a.High));

    public static Interval Max(Interval a, Interval b) => new(Math.Max(a.Low, b.Low), Math.Max(a.High, b.High));

    private static Interval Outward(double low, double high) => new(Math.BitDecrement(low), Math.BitIncrement(high));
}
