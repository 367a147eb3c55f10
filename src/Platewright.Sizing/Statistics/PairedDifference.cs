namespace Platewright.Sizing.Statistics;

/// <summary>
/// The interval of the difference of two shares seen on the same sample. Source: Tango, "Equivalence test and
/// confidence interval for the difference in proportions for the paired-sample design", Statistics in Medicine 17
/// (1998) 891-908: the differences that a score test does not reject. At a difference of 0 that test is McNemar's, so
/// that interval and test speak alike; and it needs no patch where one or both counts are 0.
/// </summary>
internal static class PairedDifference
{
    /// <summary>Halvings that take an interval of length 2 below the spacing of doubles near 1.</summary>
    private const int Halvings = 54;

    /// <summary>Ends −1 … 1 of the interval of (first − second) / of.</summary>
    /// <param name="onlyFirst">0 or more.</param>
    /// <param name="onlySecond">0 or more; both together at most <paramref name="of"/>.</param>
    /// <param name="of">Size of the sample; 0 says nothing.</param>
    /// <param name="z">Normal quantile of the confidence.</param>
    public static (double Low, double High) Interval(int onlyFirst, int onlySecond, int of, double z) => of == 0
        ? (-1, 1)
        : (-Upper(onlySecond, onlyFirst, of, z), Upper(onlyFirst, onlySecond, of, z));

    private static double Upper(int onlyFirst, int onlySecond, int of, double z)
    {
        double inside = (double)(onlyFirst - onlySecond) / of;
        double outside = 1;
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (inside + outside) / 2;
            if (Rejected(onlyFirst, onlySecond, of, middle, z)) outside = middle;
            else inside = middle;
        }
        return outside;
    }

    /// <summary>(b − c − n δ)² against z² times its variance n (2 q + δ (1 − δ)), q most likely under δ.</summary>
    private static bool Rejected(int b, int c, int n, double difference, double z)
    {
        double linear = (2.0 * n - b + c) * difference - b - c;
        double constant = -c * difference * (1 - difference);
        double root = Math.Sqrt(linear * linear - 8.0 * n * constant);
        // Of the two forms of the root the one that does not subtract equals.
        double likely = linear <= 0 ? (root - linear) / (4.0 * n) : -2 * constant / (root + linear);
        double variance = n * (2 * likely + difference * (1 - difference));
        double distance = b - c - n * difference;
        return distance * distance > z * z * variance;
    }
}
