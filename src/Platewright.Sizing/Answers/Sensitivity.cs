using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Mixing;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>
/// An assumption at the ends of its doubt, all others as they are: which of the sets of kinds on the front (and the recommended one) is
/// then the cheapest that still keeps the aim and its limits.
/// </summary>
/// <param name="Key">Of the study file.</param>
/// <param name="LowCounts">Per kind of the problem, with the low value; null where no set keeps the aim.</param>
public sealed record Sensitivity(
    string Key, double Value, double Low, double High, ImmutableArray<int>? LowCounts, ImmutableArray<int>? HighCounts, decimal LowPerMonth,
    decimal HighPerMonth, bool Changes)
{
    /// <summary>Half and double: nobody knows next year's work better. Our choice.</summary>
    private const double LessWork = 0.5, MoreWork = 2;

    /// <summary>Of the sets that keep the aim as things are, so many of the cheapest are priced anew.</summary>
    private const int MostSets = 20;

    private static readonly (string Key, Func<CostAssumptions, Guess> Of, Func<CostNumbers, double, CostNumbers> With)[] Guesses =
    [
        ("cost.energy_per_kwh", a => a.EnergyPerKwh, (n, v) => n with { EnergyPerKwh = v }),
        ("cost.labour_per_h", a => a.LabourPerH, (n, v) => n with { LabourPerH = v }),
        ("cost.tax_share", a => a.TaxShare, (n, v) => n with { TaxShare = v }),
        ("cost.filament_per_kg", a => a.FilamentPerKg, (n, v) => n with { FilamentPerKg = v }),
        ("cost.failure_share", a => a.FailureShare, (n, v) => n with { FailureShare = v }),
        ("cost.life_years", a => a.LifeYears, (n, v) => n with { LifeYears = v }),
        ("cost.residual_share", a => a.ResidualShare, (n, v) => n with { ResidualShare = v }),
        ("cost.assemble_h", a => a.AssembleH, (n, v) => n with { AssembleH = v }),
        ("cost.tune_h_per_year", a => a.TuneHPerYear, (n, v) => n with { TuneHPerYear = v }),
        ("cost.maintain_h_per_100h", a => a.MaintainHPer100H, (n, v) => n with { MaintainHPer100H = v }),
        ("cost.wear_share_per_100h", a => a.WearSharePer100H, (n, v) => n with { WearSharePer100H = v }),
        ("cost.prepare_min", a => a.PrepareMin, (n, v) => n with { PrepareMin = v }),
        ("cost.remove_min", a => a.RemoveMin, (n, v) => n with { RemoveMin = v }),
    ];

    internal static ImmutableArray<Sensitivity> Of(
        SizingCase c, IReadOnlyList<MachineWork> work, IReadOnlyList<decimal> printedParts, MixAsked asked, MachineMix mix, MixFront front,
        CancellationToken cancel)
    {
        int[][] sets = [.. front.Mixes.Select(f => Used(f.Counts)).Append(Used(mix.Counts)).DistinctBy(s => string.Join(' ', s))];
        CostNumbers usual = CostNumbers.Usual(c.Costs);
        double share = Math.Min(asked.Problem.LeastShare, mix.CoveredShare);
        int[][] able = CheapestSet.Cheapest(asked.Problem, CheapestSet.Covering(asked.Problem, sets, share), share, MostSets);
        (ImmutableArray<int>? Counts, decimal PerMonth) now = CheapestSet.Of(asked.Problem, able, share);
        List<Func<Sensitivity>> questions = [];
        foreach (var (key, of, with) in Guesses)
        {
            Guess guess = of(c.Costs);
            if (guess.Low < guess.High)
                questions.Add(() => Of(key, guess.Value, guess.Low, guess.High, v => Priced(with(usual, v)), able));
        }
        double low = c.Machines.Select((_, m) => TimeDoubts.Of(c, m).Low).Min(), high = c.Machines.Select((_, m) => TimeDoubts.Of(c, m).High).Max();
        if (low < high) questions.Add(() => Of("times", 1, 1 + low, 1 + high, v => Priced(usual with { TimeFactor = v }), able));
        double rate = c.Projects.Sum(p => p.PerMonth);
        questions.Add(() => Of(
            "work.projects_per_month", rate, LessWork * rate, MoreWork * rate, v => Problem(Scaled(c, v / rate), usual), able));
        if (c.Projects.Any(p => p.Wanted) && c.Projects.Any(p => !p.Wanted))
        {
            questions.Add(() => Of(
                "wanted", 1, 0, 1, v => v > 0 ? asked.Problem : Problem(c with { Projects = [.. c.Projects.Where(p => !p.Wanted)] }, usual), sets));
        }
        return [.. questions.AsParallel().AsOrdered().WithCancellation(cancel).Select(ask => ask())];

        Sensitivity Of(string key, double value, double lowValue, double highValue, Func<double, MixProblem?> problem, int[][] among)
        {
            (ImmutableArray<int>? atLow, decimal costLow) = At(lowValue);
            (ImmutableArray<int>? atHigh, decimal costHigh) = At(highValue);
            return new Sensitivity(
                key, value, lowValue, highValue, atLow, atHigh, costLow, costHigh, !Same(now.Counts, atLow) || !Same(now.Counts, atHigh));

            (ImmutableArray<int>? Counts, decimal PerMonth) At(double v) =>
                problem(v) is { } changed && changed != asked.Problem ? CheapestSet.Of(changed, among, share) : now;
        }

        // Many assumptions touch nothing: machines state their own, or nobody's time is paid.
        MixProblem? Priced(CostNumbers numbers) => CostsAs(numbers) ? asked.Problem : Problem(c, numbers);

        bool CostsAs(CostNumbers numbers) =>
            numbers.Attempts == usual.Attempts && numbers.TimeFactor == usual.TimeFactor
            && c.Machines.Select((machine, m) => (machine, printedParts[m])).All(x =>
                WorkingRates.Of(x.machine, numbers) == WorkingRates.Of(x.machine, usual)
                && CostAccount.Of(x.machine, 1, Load.None, numbers, x.Item2) == CostAccount.Of(x.machine, 1, Load.None, usual, x.Item2));

        MixProblem? Problem(SizingCase changed, CostNumbers numbers) => MixAsked.Of(changed, work, numbers, printedParts)?.Problem;
    }

    private static SizingCase Scaled(SizingCase c, double factor) =>
        c with { Projects = [.. c.Projects.Select(p => p with { PerMonth = p.PerMonth * factor })] };

    private static int[] Used(ImmutableArray<int> counts) => [.. Enumerable.Range(0, counts.Length).Where(k => counts[k] > 0)];

    private static bool Same(ImmutableArray<int>? a, ImmutableArray<int>? b) =>
        a is { } x && b is { } y ? x.SequenceEqual(y) : a is null && b is null;
}
