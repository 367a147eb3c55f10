namespace Platewright.Sizing.Statistics;

/// <summary>How often a fair coin would split as unevenly as two counts do.</summary>
internal static class SignTest
{
    /// <summary>
    /// Two-sided p of the exact test: twice the smaller tail of the binomial distribution with one half, at most 1.
    /// Each probability is had relative to the middle one, by ratios, and divided by their sum: no logarithm and no
    /// power of two that would vanish. A p below 1e-300 may come out as 0.
    /// </summary>
    /// <param name="one">0 or more.</param>
    /// <param name="other">0 or more.</param>
    public static double TwoSidedP(int one, int other)
    {
        int trials = checked(one + other);
        int fewer = Math.Min(one, other);
        if (one == other) return 1;
        double all = 0;
        double tail = 0;
        double below = 1;
        for (int k = trials / 2; k >= 0 && below > 0; k--)
        {
            // The distribution is symmetric: k and trials − k are equally likely; the very middle counts once.
            all += 2 * k == trials ? below : 2 * below;
            if (k <= fewer) tail += below;
            below *= (double)k / (trials - k + 1);
        }
        return Math.Min(1, 2 * tail / all);
    }
}
