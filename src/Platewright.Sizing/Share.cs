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
        if (!(confidence > 0 && confidence < 1))
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Expected between 0 and 1.");
        if (of == 0) return new Share(0, 0, 0, 1);
        double z = NormalQuantile.Of((1 + confidence) / 2);
        double n = of;
        double share = count / n;
        double weight = 1 + z * z / n;
        double middle = (share + z * z / (2 * n)) / weight;
        double half = z * Math.Sqrt(share * (1 - share) / n + z * z / (4 * n * n)) / weight;
        // At the ends the interval reaches 0 and 1 exactly; rounding must not say otherwise.
        double low = count == 0 ? 0 : Math.Max(0, middle - half);
        double high = count == of ? 1 : Math.Min(1, middle + half);
        return new Share(count, of, low, high);
    }
}
