using System.Collections.Immutable;

namespace Platewright.Sizing.Statistics;

/// <summary>
/// A share of hours, mass, money or copies, seen on a sample of projects, with the interval that work like it lies in.
/// </summary>
/// <remarks>
/// The estimate is a ratio of totals, Σ w·covered / Σ w. Its interval is the wider, at each end, of two, for each fails
/// where the other holds: the percentile bootstrap over whole projects (Efron and Tibshirani, An Introduction to the
/// Bootstrap, 1993, chapter 13), which knows that the heavy projects may be the ones a machine cannot make, but takes a
/// sample in which everything or nothing is covered as certain; and Wilson's interval with the sample counted as (Σ w)²
/// / Σ w² equal projects (Kish, Survey Sampling, 1965, section 11.2), which holds there. Parts of one project are never
/// taken as separate evidence. Where the number of all projects is known, the deviations of the first are shrunk by √(1
/// − n/N) and the size of the second counts as in <see cref="FinitePopulation"/>. No interval can tell of a rare
/// project heavier than all that were seen.
/// </remarks>
/// <param name="Covered">In the unit of the weights, 0 … <paramref name="Total"/>.</param>
/// <param name="Total">In the unit of the weights, 0 or more.</param>
/// <param name="Low">Lower end of the interval, 0 … 1.</param>
/// <param name="High">Upper end of the interval, 0 … 1.</param>
/// <param name="Projects">How many projects are counted.</param>
/// <param name="LeftOut">How many are not, because their weight is not known.</param>
public sealed record WeightedShare(
    double Covered, double Total, double Low, double High, int Projects, int LeftOut)
{
    /// <summary>Covered over total, 0 … 1; null where the total is 0.</summary>
    public double? Value => Total == 0 ? null : Math.Clamp(Covered / Total, 0, 1);

    /// <summary>The shares of several machines in the same sample, on the same resamples.</summary>
    /// <param name="weights">
    /// One for each project, finite, 0 or more; null where it is not known, which leaves the project out.
    /// </param>
    /// <param name="covered">
    /// For each machine how much of each project is covered, 0 … 1: 0 or 1 for a project that is only useful complete.
    /// </param>
    /// <param name="resamples">Of as many projects.</param>
    /// <param name="confidence">Greater than 0 and less than 1.</param>
    /// <param name="population">
    /// How many projects there are in all, at least as many as are counted; null where that is not known.
    /// </param>
    /// <returns>One share for each machine. A total of 0, or of one project alone, has the interval 0 … 1: nothing can
    /// be said of how weights and coverage spread; unless that is all there is.</returns>
    /// <exception cref="ArgumentException">Lists differ in length or a number is outside its range.</exception>
    public static ImmutableArray<WeightedShare> Of(
        IReadOnlyList<double?> weights, IReadOnlyList<IReadOnlyList<double>> covered, Resamples resamples,
        double confidence, int? population = null)
    {
        Check(weights, covered, resamples);
        double[] known = [.. weights.Select(w => w ?? 0)];
        int projects = weights.Count(w => w is not null);
        double[][] parts = [.. covered.Select(machine => known.Zip(machine, (w, c) => w * c).ToArray())];
        double[][] totals = resamples.Totals([known, .. parts]);
        var spread = new SpreadOfWeights(known, projects, population, confidence);
        return
        [
            .. parts.Select((part, machine) =>
            {
                double sum = part.Sum();
                (double low, double high) = spread.Interval(sum, totals[machine + 1], totals[0]);
                return new WeightedShare(sum, spread.Total, low, high, projects, weights.Count - projects);
            }),
        ];
    }

    private static void Check(
        IReadOnlyList<double?> weights, IReadOnlyList<IReadOnlyList<double>> covered, Resamples resamples)
    {
        if (resamples.Size != weights.Count)
        {
            throw new ArgumentException(
                $"Expected resamples of {weights.Count} projects, found {resamples.Size}.", nameof(resamples));
        }
        if (weights.FirstOrDefault(w => w is not null && !(double.IsFinite(w.Value) && w >= 0)) is { } wrong)
            throw new ArgumentException($"Expected finite weights of 0 or more, found {wrong}.", nameof(weights));
        foreach (IReadOnlyList<double> machine in covered)
        {
            if (machine.Count != weights.Count)
            {
                throw new ArgumentException(
                    $"Expected {weights.Count} projects on every machine, found {machine.Count}.", nameof(covered));
            }
            if (machine.Any(c => !(c >= 0 && c <= 1)))
                throw new ArgumentException("Expected to be covered from 0 to 1.", nameof(covered));
        }
    }
}
