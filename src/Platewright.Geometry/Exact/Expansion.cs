namespace Platewright.Geometry;

/// <summary>
/// Exact sums of doubles: numbers held as non-overlapping components, smallest first (Shewchuk, "Adaptive precision
/// floating-point arithmetic and fast robust geometric predicates", 1997; zero components are left out).
/// Exact as long as no product over- or underflows; <see cref="Orientation"/> checks the range beforehand.
/// </summary>
internal static class Expansion
{
    /// <summary>a − b. At most two components.</summary>
    public static int Difference(double a, double b, Span<double> result)
    {
        double x = a - b;
        double virtualB = a - x;
        double virtualA = x + virtualB;
        double tail = a - virtualA + (virtualB - b);
        return Store(x, tail, result);
    }

    /// <summary>a·b − c·d. At most four components.</summary>
    public static int TwoProducts(double a, double b, double c, double d, Span<double> result)
    {
        Span<double> left = stackalloc double[2];
        Span<double> right = stackalloc double[2];
        double x = a * b, y = c * d;
        int lefts = Store(x, Math.FusedMultiplyAdd(a, b, -x), left);
        int rights = Store(-y, -Math.FusedMultiplyAdd(c, d, -y), right);
        return Sum(left[..lefts], right[..rights], result);
    }

    /// <summary>e · b. At most twice the components of e.</summary>
    public static int Scale(ReadOnlySpan<double> e, double b, Span<double> result)
    {
        if (e.IsEmpty || b == 0) return 0;
        int count = 0;
        double q = e[0] * b;
        double tail = Math.FusedMultiplyAdd(e[0], b, -q);
        if (tail != 0) result[count++] = tail;
        for (int i = 1; i < e.Length; i++)
        {
            double high = e[i] * b;
            double low = Math.FusedMultiplyAdd(e[i], b, -high);
            double sum = TwoSum(q, low, out tail);
            if (tail != 0) result[count++] = tail;
            q = TwoSum(high, sum, out tail);
            if (tail != 0) result[count++] = tail;
        }
        if (q != 0) result[count++] = q;
        return count;
    }

    /// <summary>e + f. At most the components of both.</summary>
    public static int Sum(ReadOnlySpan<double> e, ReadOnlySpan<double> f, Span<double> result)
    {
        int i = 0, j = 0, count = 0;
        double q = 0;
        while (i < e.Length || j < f.Length)
        {
            bool takeE = j >= f.Length || (i < e.Length && Math.Abs(e[i]) < Math.Abs(f[j]));
            q = TwoSum(q, takeE ? e[i++] : f[j++], out double tail);
            if (tail != 0) result[count++] = tail;
        }
        if (q != 0) result[count++] = q;
        return count;
    }

    /// <summary>e · f with f of at most two components. At most 2·|e|·|f| components.</summary>
    public static int Product(ReadOnlySpan<double> e, ReadOnlySpan<double> f, Span<double> result)
    {
        if (f.Length == 0) return 0;
        if (f.Length == 1) return Scale(e, f[0], result);
        Span<double> low = stackalloc double[2 * e.Length];
        Span<double> high = stackalloc double[2 * e.Length];
        int lows = Scale(e, f[0], low);
        int highs = Scale(e, f[1], high);
        return Sum(low[..lows], high[..highs], result);
    }

    public static void Negate(Span<double> e)
    {
        for (int i = 0; i < e.Length; i++) e[i] = -e[i];
    }

    public static int Sign(ReadOnlySpan<double> e) => e.IsEmpty ? 0 : Math.Sign(e[^1]);

    /// <summary>The sum as one rounded number.</summary>
    public static double Value(ReadOnlySpan<double> e)
    {
        double sum = 0;
        foreach (double component in e) sum += component;
        return sum;
    }

    private static int Store(double x, double tail, Span<double> result)
    {
        int count = 0;
        if (tail != 0) result[count++] = tail;
        if (x != 0) result[count++] = x;
        return count;
    }

    private static double TwoSum(double a, double b, out double tail)
    {
        double x = a + b;
        double virtualB = x - a;
        double virtualA = x - virtualB;
        tail = a - virtualA + (b - virtualB);
        return x;
    }
}
