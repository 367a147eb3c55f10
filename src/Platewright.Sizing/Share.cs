using Platewright.Sizing.Statistics;

namespace Platewright.Sizing;

/// <summary>A share of a sample, with the interval that work like it lies in.</summary>
/// <param name="Count">How many, 0 … <paramref name="Of"/>.</param>
/// <param name="Of">Size of the sample, 0 or more.</param>
/// <param name="Low">Lower end of the Wilson interval, 0 … 1.</param>
/// <param name="High">Upper end of the Wilson interval, 0 … 1.</param>
public sealed record Share(int Count, int Of, double Low, double High)
{
    /// <summary>Count over size, 0 … 1; 0 for an empty sample.</summary>
    public double Value => Of == 0 ? 0 : (double)Count / Of;

    /// <summary>
    /// A share with its Wilson score interval. Source: Wilson, "Probable inference, the law of succession, and
    /// statistical inference", J. Amer. Statist. Assoc. 22 (1927) 209-212; method 3 of Newcombe, Statistics in Medicine
    /// 17 (1998) 857-872. An empty sample says nothing: 0 … 1.
    /// </summary>
    /// <param name="count">0 … <paramref name="of"/>.</param>
    /// <param name="of">0 or more.</param>
    /// <param name="confidence">Greater than 0 and less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Share Wilson(int count, int of, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(of);
        if (count < 0 || count > of)
            throw new ArgumentOutOfRangeException(nameof(count), count, $"Expected 0 to {of}.");
        double z = ScoreInterval.Z(confidence);
        (double low, double high) = ScoreInterval.Of(of == 0 ? 0 : (double)count / of, of, z);
        return new Share(count, of, low, high);
    }

    /// <summary>The one of the two below that is known of.</summary>
    /// <param name="population">N, at least <paramref name="of"/>; null where not known.</param>
    public static Share Wilson(int count, int of, double confidence, int? population) =>
        population is { } all ? Wilson(count, of, confidence, all) : Wilson(count, of, confidence);

    /// <summary>
    /// The same where the sample was drawn, without replacement, from a known number of projects: Wilson's equation with
    /// the sample counted as n (N − 1) / (N − n), see <see cref="FinitePopulation"/>; and what was seen is certain, so
    /// that no end goes below count / N or above 1 − (n − count) / N. Where all were seen the interval is the share.
    /// </summary>
    /// <param name="count">0 … <paramref name="of"/>.</param>
    /// <param name="of">n, 0 or more.</param>
    /// <param name="confidence">Greater than 0 and less than 1.</param>
    /// <param name="population">N, at least <paramref name="of"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    public static Share Wilson(int count, int of, double confidence, int population)
    {
        Share endless = Wilson(count, of, confidence);
        double size = FinitePopulation.EffectiveSize(of, of, population);
        if (of == 0) return endless;
        (double low, double high) = ScoreInterval.Of(endless.Value, size, ScoreInterval.Z(confidence));
        double whole = population;
        return endless with
        {
            Low = Math.Max(low, count / whole),
            High = Math.Min(high, (whole - (of - count)) / whole),
        };
    }
}
