namespace Platewright.Sizing.Statistics;

/// <summary>How many pairs tell two shares apart.</summary>
internal static class PairedSampleSize
{
    /// <summary>
    /// n = (z₁ √ψ + z₂ √(ψ − δ²))² / δ². Source: Connor, "Sample size for testing differences in proportions for the
    /// paired-sample design", Biometrics 43 (1987) 207-211 (from memory).
    /// </summary>
    /// <param name="differing">ψ, the share of pairs that differ, more than 0 and at most 1.</param>
    /// <param name="difference">δ, the difference of the two shares, not 0, at most ψ in size.</param>
    /// <param name="z">Normal quantile of the two-sided confidence.</param>
    /// <param name="zPower">Normal quantile of the chance to find the difference.</param>
    public static double Of(double differing, double difference, double z, double zPower)
    {
        double square = difference * difference;
        double root = z * Math.Sqrt(differing) + zPower * Math.Sqrt(Math.Max(0, differing - square));
        return root * root / square;
    }
}
