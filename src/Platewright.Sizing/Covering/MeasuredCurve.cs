using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Statistics;

namespace Platewright.Sizing.Covering;

/// <summary>From this edge on, until the next step, these shares of the work.</summary>
/// <param name="EdgeMm">Edge of the imagined machine's cube, mm.</param>
public sealed record MeasuredStep(double EdgeMm, WeightedShare Fits, WeightedShare WithCompromise);

/// <summary>The share of machine hours, or of money, against the edge of a cube-shaped machine.</summary>
/// <param name="Level">What the machine heats to; null where only fit is asked.</param>
/// <param name="Total">Of all projects with a known weight: hours or money in a month.</param>
/// <param name="LeftOut">Projects whose weight is not known.</param>
/// <param name="Steps">Smallest edge first; none where no project is ever held.</param>
public sealed record MeasuredCurve(Measure Measure, HeatLevel? Level, double Total, int LeftOut, ImmutableArray<MeasuredStep> Steps)
{
    private static readonly Measure[] Weighted = [Measure.Hours, Measure.Money];

    /// <summary>For fit and for each way of heating, by hours and by money, all on the same resamples of whole projects.</summary>
    /// <param name="c">Its sized projects are in the order of its projects; without them there is no curve.</param>
    /// <param name="money">What each project costs in a month, see <see cref="WorkCosts"/>.</param>
    public static ImmutableArray<MeasuredCurve> Of(SizingCase c, IReadOnlyList<double?> money)
    {
        if (c.Sized.Length != c.Projects.Length) return [];
        var resamples = Resamples.Of(c.Projects.Length);
        HeatLevel?[] levels = [null, .. c.Heats.Where(l => l.Heat is not null)];
        return [.. Weighted.SelectMany(measure => levels.Select(level => Of(c, measure, level, money, resamples)))];
    }

    private static MeasuredCurve Of(
        SizingCase c, Measure measure, HeatLevel? level, IReadOnlyList<double?> money, Resamples resamples)
    {
        ImaginedMachine machine =
            level is null ? ImaginedMachine.OfAnyKind : new ImaginedMachine(CanMake: true, level.Heat, c.BeadWidthMm);
        Edges[] edges = [.. c.Sized.Select(machine.EdgesFor)];
        double?[] known = [.. c.Projects.Select((p, i) => Weighing.Weight(p, measure, money[i]))];
        double[] weights = [.. known.Select(w => w ?? 0)];
        int leftOut = known.Count(w => w is null), counted = known.Length - leftOut;
        int? population = c.Work.Sample ? c.Work.Population : c.Projects.Length;
        SpreadOfWeights spread = new(weights, counted, population, c.Confidence);
        double[] drawn = resamples.Totals([weights])[0];
        double[] fits = [.. edges.Select(e => e.FitsMm)], compromised = [.. edges.Select(e => e.WithCompromiseMm)];
        Climb strict = new(fits, weights, counted, leftOut, resamples, spread, drawn);
        Climb lenient = new(compromised, weights, counted, leftOut, resamples, spread, drawn);
        double[] steps = [.. fits.Concat(compromised).Where(double.IsFinite).Distinct().Order()];
        return new MeasuredCurve(
            measure, level, spread.Total, leftOut, [.. steps.Select(edge => new MeasuredStep(edge, strict.UpTo(edge), lenient.UpTo(edge)))]);
    }

    /// <summary>Projects taken one by one as the edge grows, with the totals of every resample so far.</summary>
    private sealed class Climb(
        double[] edges, double[] weights, int counted, int leftOut, Resamples resamples, SpreadOfWeights spread, double[] drawn)
    {
        private readonly int[] _order = [.. Enumerable.Range(0, edges.Length).OrderBy(i => edges[i])];
        private readonly double[] _totals = new double[resamples.Draws];
        private int _taken;
        private double _covered;
        private WeightedShare? _last;

        /// <param name="edge">Not less than at the call before.</param>
        public WeightedShare UpTo(double edge)
        {
            int before = _taken;
            for (; _taken < _order.Length && edges[_order[_taken]] <= edge; _taken++)
            {
                _covered += weights[_order[_taken]];
                resamples.Add(_totals, _order[_taken], weights[_order[_taken]]);
            }
            if (_last is not null && _taken == before) return _last;
            (double low, double high) = spread.Interval(_covered, _totals, drawn);
            return _last = new WeightedShare(_covered, spread.Total, low, high, counted, leftOut);
        }
    }
}
