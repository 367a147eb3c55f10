using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Statistics;

namespace Platewright.Sizing.Covering;

/// <summary>Up to this price, until the next step, the machine of the study that takes the most.</summary>
/// <param name="FitsMachine">The one that takes most without a compromise; of equals the cheaper.</param>
/// <param name="Machine">The one that takes most with or without one.</param>
public sealed record PriceStep(decimal Price, int FitsMachine, WeightedShare Fits, int Machine, WeightedShare WithCompromise);

/// <summary>
/// The most of the work that one machine of the study takes, against what it may cost. Price is not size: a dearer machine may take
/// less, and then it makes no step.
/// </summary>
/// <param name="CanMake">Whether heat, walls and the rules of the place are asked too, or fit alone.</param>
/// <param name="Steps">One for each price at which something changes, lowest first; none without a price.</param>
public sealed record PriceCurve(Measure Measure, bool CanMake, double Total, int LeftOut, ImmutableArray<PriceStep> Steps)
{
    private static readonly Measure[] Asked = [Measure.Projects, Measure.Hours, Measure.Money];

    /// <summary>Fit alone, then what can be made.</summary>
    private static readonly bool[] Kinds = [false, true];

    /// <summary>By projects, hours and money, for fit and for what can be made.</summary>
    /// <param name="c">Machines without a price take no part.</param>
    /// <param name="money">What each project costs in a month, see <see cref="WorkCosts"/>.</param>
    public static ImmutableArray<PriceCurve> Of(SizingCase c, IReadOnlyList<double?> money)
    {
        var resamples = Resamples.Of(c.Projects.Length);
        return [.. Asked.SelectMany(measure => Kinds.Select(canMake => Of(c, measure, canMake, money, resamples)))];
    }

    private static PriceCurve Of(
        SizingCase c, Measure measure, bool canMake, IReadOnlyList<double?> money, Resamples resamples)
    {
        double?[] weights = [.. c.Projects.Select((p, i) => Weighing.Weight(p, measure, money[i]))];
        ImmutableArray<WeightedShare> Shares(bool strictly) => MeasuredCoverage.SharesOf(
            measure, weights,
            [
                .. Enumerable.Range(0, c.Machines.Length).Select(m => c.Projects
                    .Select(p => (!canMake || p.CanMake[m]) && Weighing.Taken(p.Fits[m], strictly) ? 1.0 : 0).ToArray()),
            ],
            resamples, c.Confidence, c.Work.Sample ? c.Work.Population : c.Projects.Length);
        ImmutableArray<WeightedShare> fits = Shares(strictly: true), all = Shares(strictly: false);
        int[] order = [.. Enumerable.Range(0, c.Machines.Length).Where(m => c.Machines[m].Price is not null).OrderBy(m => c.Machines[m].Price)];
        List<PriceStep> steps = [];
        foreach (int m in order)
        {
            decimal price = c.Machines[m].Price!.Value;
            PriceStep? before = steps.Count > 0 ? steps[^1] : null;
            int strict = before is null || fits[m].Covered > before.Fits.Covered ? m : before.FitsMachine;
            int lenient = before is null || all[m].Covered > before.WithCompromise.Covered ? m : before.Machine;
            if (before is not null && strict == before.FitsMachine && lenient == before.Machine) continue;
            if (before?.Price == price) steps.RemoveAt(steps.Count - 1);
            steps.Add(new PriceStep(price, strict, fits[strict], lenient, all[lenient]));
        }
        return new PriceCurve(
            measure, canMake, weights.Sum(w => w ?? 0), weights.Count(w => w is null), [.. steps]);
    }
}
