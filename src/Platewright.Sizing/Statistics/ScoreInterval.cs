namespace Platewright.Sizing.Statistics;

/// <summary>Wilson's score interval of a share, for any size of sample, whole or not.</summary>
internal static class ScoreInterval
{
    /// <summary>
    /// Both solutions p of (share − p)² = z² p (1 − p) / size. Source: see
    /// <see cref="Share.Wilson(int, int, double)"/>.
    /// </summary>
    /// <param name="share">0 … 1.</param>
    /// <param name="size">0 (nothing is known: 0 … 1) to infinity (the share itself).</param>
    /// <param name="z">Normal quantile of the confidence.</param>
    public static (double Low, double High) Of(double share, double size, double z)
    {
        if (size == 0) return (0, 1);
        double weight = 1 + z * z / size;
        double middle = (share + z * z / (2 * size)) / weight;
        double half = z * Math.Sqrt(share * (1 - share) / size + z * z / (4 * size * size)) / weight;
        // At the ends the interval reaches 0 and 1 exactly; rounding must not say otherwise.
        double low = share == 0 ? 0 : Math.Max(0, middle - half);
        double high = share == 1 ? 1 : Math.Min(1, middle + half);
        return (low, high);
    }

    /// <summary>The z of a two-sided interval.</summary>
    /// <param name="confidence">Greater than 0 and less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="confidence"/> is outside.</exception>
    public static double Z(double confidence)
    {
        if (!(confidence > 0 && confidence < 1))
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Expected between 0 and 1.");
        return NormalQuantile.Of((1 + confidence) / 2);
    }
}
