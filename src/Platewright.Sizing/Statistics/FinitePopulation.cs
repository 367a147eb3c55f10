namespace Platewright.Sizing.Statistics;

/// <summary>
/// What a sample without replacement gains from being a sizeable part of the whole. Source: Cochran, Sampling
/// Techniques, 3rd ed. 1977, sections 2.6 and 3.2 (from memory).
/// </summary>
public static class FinitePopulation
{
    /// <summary>
    /// 1 − n/N: what multiplies s²/n, the variance of a mean, 0 … 1. Without a known whole it is 1.
    /// </summary>
    /// <param name="sampled">n, 0 or more.</param>
    /// <param name="population">N, at least n; null where it is not known or has no end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The whole is smaller than the sample.</exception>
    public static double Correction(int sampled, int? population)
    {
        Check(sampled, population);
        return population is not { } whole || whole == 0 ? 1 : (double)(whole - sampled) / whole;
    }

    /// <summary>
    /// The size of a sample from an endless whole that says as much about a share: n (N − 1) / (N − n), from the
    /// variance p (1 − p) / n · (N − n) / (N − 1). Infinite where everything was seen.
    /// </summary>
    /// <param name="size">What the sample would count as in an endless whole, 0 or more.</param>
    /// <param name="sampled">n, 0 or more.</param>
    /// <param name="population">N, at least n; null where it is not known or has no end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The whole is smaller than the sample.</exception>
    public static double EffectiveSize(double size, int sampled, int? population)
    {
        Check(sampled, population);
        if (population is not { } whole) return size;
        return whole == sampled ? double.PositiveInfinity : size * (whole - 1) / (whole - sampled);
    }

    private static void Check(int sampled, int? population)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(sampled);
        if (population < sampled)
        {
            throw new ArgumentOutOfRangeException(
                nameof(population), population, $"Expected at least the {sampled} that were sampled.");
        }
    }
}
