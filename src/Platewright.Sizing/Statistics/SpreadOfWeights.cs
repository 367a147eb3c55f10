namespace Platewright.Sizing.Statistics;

/// <summary>What the intervals of all shares of one measure have in common; see <see cref="WeightedShare"/>.</summary>
internal sealed class SpreadOfWeights
{
    private readonly double _tail;

    private readonly double _z;

    /// <summary>What the deviations of the bootstrap are shrunk by.</summary>
    private readonly double _shrink;

    /// <summary>As many equal projects of an endless whole would say as much.</summary>
    private readonly double _size;

    /// <param name="weights">0 where they are not known.</param>
    /// <param name="projects">How many are known.</param>
    /// <param name="population">How many there are in all; null where that is not known.</param>
    public SpreadOfWeights(double[] weights, int projects, int? population, double confidence)
    {
        Total = weights.Sum();
        _tail = (1 - confidence) / 2;
        _z = ScoreInterval.Z(confidence);
        _shrink = Math.Sqrt(FinitePopulation.Correction(projects, population));
        double largest = weights.DefaultIfEmpty().Max();
        // Relative to the largest weight, so that no square overflows or vanishes.
        double size = Total == 0 ? 0 : Math.Pow(Total / largest, 2) / weights.Sum(w => w / largest * (w / largest));
        bool single = weights.Count(w => w > 0) < 2;
        _size = FinitePopulation.EffectiveSize(single ? 0 : size, projects, population);
    }

    /// <summary>Σ w, the estimated denominator of every share.</summary>
    public double Total { get; }

    /// <param name="covered">Σ w·covered.</param>
    /// <param name="coveredDrawn">The same in every resample.</param>
    /// <param name="totalDrawn">Σ w in every resample.</param>
    public (double Low, double High) Interval(double covered, double[] coveredDrawn, double[] totalDrawn)
    {
        if (Total == 0) return (0, 1);
        double share = Math.Min(1, covered / Total);
        (double low, double high) = ScoreInterval.Of(share, _size, _z);
        // A resample without any weight says nothing of a share.
        double[] shares = [.. coveredDrawn.Zip(totalDrawn).Where(d => d.Second > 0).Select(d => d.First / d.Second)];
        if (shares.Length == 0) return (low, high);
        Array.Sort(shares);
        double lowest = share + _shrink * (Quantile(shares, _tail) - share);
        double highest = share + _shrink * (Quantile(shares, 1 - _tail) - share);
        return (Math.Clamp(lowest, 0, low), Math.Clamp(highest, high, 1));
    }

    /// <summary>
    /// Between the ordered values at p (n + 1), never beyond the ends: definition 6 of Hyndman and Fan, The American
    /// Statistician 50 (1996) 361-365.
    /// </summary>
    private static double Quantile(double[] ordered, double p)
    {
        double place = Math.Clamp(p * (ordered.Length + 1) - 1, 0, ordered.Length - 1);
        int below = (int)place;
        int above = Math.Min(below + 1, ordered.Length - 1);
        return ordered[below] + (place - below) * (ordered[above] - ordered[below]);
    }
}
