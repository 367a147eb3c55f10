using Platewright.Build.Estimates;

namespace Platewright.Build.Learning;

/// <summary>
/// Fits a machine's correction to its past jobs. The logarithms of measured over estimated are taken to scatter about one value
/// with the heavy tails of Student's t with four degrees of freedom, so that a job that went wrong weighs little (Lange, Little and
/// Taylor, J. Am. Stat. Assoc. 84 (1989) 881: weights (ν + 1)/(ν + r²), iterated). The value has the model's prior error as
/// its prior, the scatter a weak one of its own; so three jobs already say something, and never too much. The interval is for
/// the next job, not for the mean.
/// </summary>
public static class CorrectionFit
{
    /// <summary>Fewer jobs say too little.</summary>
    public const int LeastJobs = 3;

    private const double TailDegrees = 4;

    /// <summary>Prior of the scatter of jobs of one machine, and how many jobs it weighs as: our choice, no source.</summary>
    private const double PriorScatter = 0.1;
    private const double PriorScatterJobs = 3;

    /// <summary>95 %, both sides: quantile of the normal distribution.</summary>
    private const double Quantile = 1.959964;

    /// <summary>The scale of t with four degrees of freedom is below the standard deviation of the jobs that went as usual.</summary>
    private const double ScaleToDeviation = 1.15;

    private const int Rounds = 60;

    /// <param name="ratios">Measured over estimated, each above 0; at least <see cref="LeastJobs"/>.</param>
    /// <param name="priorError">Half-width of the model's 95 % error without jobs, as a share.</param>
    /// <exception cref="ArgumentException">Too few jobs, or a ratio that is not above 0.</exception>
    public static Correction Of(IReadOnlyList<double> ratios, double priorError = ModelError.PriorTime)
    {
        if (ratios.Count < LeastJobs)
            throw new ArgumentException($"At least {LeastJobs} jobs are needed, found {ratios.Count}.", nameof(ratios));
        if (ratios.Any(r => !(r > 0) || !double.IsFinite(r)))
            throw new ArgumentException("A ratio of times is above 0.", nameof(ratios));
        double[] logs = [.. ratios.Select(r => Math.Log(r))];
        double priorDeviation = Math.Log(1 + priorError) / Quantile, priorWeight = 1 / (priorDeviation * priorDeviation);
        double middle = Median(logs), variance = PriorScatter * PriorScatter, weight = 0;
        for (int round = 0; round < Rounds; round++)
        {
            double sum = 0, squares = 0;
            weight = 0;
            foreach (double y in logs)
            {
                double w = (TailDegrees + 1) / (TailDegrees + (y - middle) * (y - middle) / variance);
                weight += w;
                sum += w * y;
                squares += w * (y - middle) * (y - middle);
            }
            middle = sum / variance / (weight / variance + priorWeight);
            variance = (PriorScatterJobs * PriorScatter * PriorScatter + squares) / (PriorScatterJobs + logs.Length);
        }
        double scatter = ScaleToDeviation * ScaleToDeviation * variance;
        double deviation = Math.Sqrt(scatter + 1 / (weight / variance + priorWeight));
        double half = StudentQuantile(logs.Length - 1 + PriorScatterJobs) * deviation;
        return new Correction(Math.Exp(middle), Math.Exp(-half) - 1, Math.Exp(half) - 1, logs.Length);
    }

    private static double Median(double[] values)
    {
        double[] sorted = [.. values.Order()];
        int half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    /// <summary>97.5 % quantile of Student's t: Abramowitz and Stegun 26.7.5, good to 0.002 from five degrees on.</summary>
    internal static double StudentQuantile(double degrees)
    {
        const double z = Quantile;
        double z3 = z * z * z, z5 = z3 * z * z, z7 = z5 * z * z;
        return z + (z3 + z) / (4 * degrees) + (5 * z5 + 16 * z3 + 3 * z) / (96 * degrees * degrees)
            + (3 * z7 + 19 * z5 + 17 * z3 - 15 * z) / (384 * degrees * degrees * degrees);
    }
}
