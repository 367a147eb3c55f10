using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Statistics;

namespace Platewright.Sizing.Covering;

/// <summary>How much of the work one machine takes, by one measure.</summary>
/// <param name="Machine">Its place among the machines of the study.</param>
/// <param name="CanMake">What it can make, with or without a compromise.</param>
/// <param name="WithoutCompromise">Of that what fits as drawn or turned.</param>
public sealed record MeasuredCoverage(
    int Machine, Measure Measure, WeightedShare CanMake, WeightedShare WithoutCompromise)
{
    /// <summary>
    /// Every machine by every measure, all on the same resamples of whole projects; plain projects have Wilson's
    /// interval. A project without a known time, mass or part is left out of that measure and counted. Where the
    /// projects are all there is, only those left out leave a doubt.
    /// </summary>
    /// <param name="projects">Each with an answer for each machine.</param>
    /// <param name="machines">How many, 0 or more.</param>
    /// <param name="statement">What the projects stand for.</param>
    /// <param name="confidence">Of the intervals, greater than 0 and less than 1.</param>
    /// <param name="money">
    /// What each project costs in a month, see <see cref="WorkCosts"/>; null where no prices are known at all.
    /// </param>
    /// <returns>By measure, then by machine.</returns>
    /// <exception cref="ArgumentException">A project has another number of answers.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The population is smaller than the sample.</exception>
    public static ImmutableArray<MeasuredCoverage> Of(
        IReadOnlyList<WorkProject> projects, int machines, WorkStatement statement, double confidence,
        IReadOnlyList<double?>? money = null)
    {
        if (projects.FirstOrDefault(p => p.CanMake.Length != machines || p.Fits.Length != machines) is { } odd)
            throw new ArgumentException($"Expected {machines} answers, found others at {odd.Id}.", nameof(projects));
        int? population = statement.Sample ? statement.Population : projects.Count;
        var resamples = Resamples.Of(projects.Count);
        return [.. Enum.GetValues<Measure>().SelectMany(Measured)];

        IEnumerable<MeasuredCoverage> Measured(Measure measure)
        {
            ImmutableArray<WeightedShare> made = Shares(measure, false);
            ImmutableArray<WeightedShare> uncompromised = Shares(measure, true);
            return Enumerable.Range(0, machines)
                .Select(m => new MeasuredCoverage(m, measure, made[m], uncompromised[m]));
        }

        ImmutableArray<WeightedShare> Shares(Measure measure, bool strictly)
        {
            double[][] covered =
            [
                .. Enumerable.Range(0, machines).Select(machine => projects
                    .Select(p => Weighing.Covered(p, machine, measure, strictly)).ToArray()),
            ];
            double?[] weights = [.. projects.Select((p, i) => Weighing.Weight(p, measure, money?[i]))];
            return SharesOf(measure, weights, covered, resamples, confidence, population);
        }
    }

    /// <summary>Shares of several machines: plain projects by Wilson's interval, everything else by <see cref="WeightedShare"/>.</summary>
    internal static ImmutableArray<WeightedShare> SharesOf(
        Measure measure, double?[] weights, double[][] covered, Resamples resamples, double confidence, int? population)
    {
        return measure == Measure.Projects
            ? [.. covered.Select(c => Plain((int)c.Sum()))]
            : WeightedShare.Of(weights, covered, resamples, confidence, population);

        WeightedShare Plain(int count)
        {
            Share share = Share.Wilson(count, weights.Length, confidence, population);
            return new WeightedShare(count, share.Of, share.Low, share.High, share.Of, 0);
        }
    }
}
