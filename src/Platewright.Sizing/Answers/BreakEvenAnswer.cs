using System.Collections.Immutable;
using Platewright.Sizing.Cases;
using Platewright.Sizing.Money;

namespace Platewright.Sizing.Answers;

/// <summary>Two machines on the work that both can make: from which amount on the one costs less than the other.</summary>
/// <param name="Projects">Projects that both can make, with known times.</param>
/// <param name="NowPerMonth">Made of them in a month.</param>
/// <param name="AtPerMonth">Where the cheaper changes; null where it never does up to <paramref name="MostPerMonth"/>.</param>
/// <param name="Interval">Of it, over the draws in which there is one; null where those are too few.</param>
/// <param name="FirstCheaperNow">Whether the first costs less now.</param>
/// <param name="Surely">Share of draws in which the same one costs less now.</param>
/// <param name="Points">Projects a month, cost of the first, cost of the second.</param>
public sealed record BreakEvenAnswer(
    int First, int Second, int Projects, double NowPerMonth, double? AtPerMonth, (double Low, double High)? Interval,
    double DrawsWithOne, double MostPerMonth, bool FirstCheaperNow, double Surely,
    ImmutableArray<(double PerMonth, double First, double Second)> Points)
{
    /// <summary>More than so many times the work of now is another business.</summary>
    private const double MostTimes = 20;

    private const int DrawnPoints = 41;

    /// <summary>Where fewer draws have one, an interval of break-evens says nothing. Our choice.</summary>
    private const double LeastShare = 0.5;

    /// <returns>Null where no price is known, or no project with known times is made by both.</returns>
    public static BreakEvenAnswer? Of(SizingCase c, int first, int second, IReadOnlyList<MachineWork> work, IReadOnlyList<decimal> printedParts, Draws draws)
    {
        if (c.Machines[first].Price is null || c.Machines[second].Price is null) return null;
        WorkProject[] both = [.. c.Projects.Where(p => p.PerMonth > 0 && Loads.Of(p, first) is not null && Loads.Of(p, second) is not null)];
        if (both.Length == 0 || work[first].HoursOfOne <= 0 || work[second].HoursOfOne <= 0) return null;
        double now = both.Sum(p => p.PerMonth);
        (double Low, double High) doubtFirst = TimeDoubts.Of(c, first), doubtSecond = TimeDoubts.Of(c, second);
        Load loadFirst = 1 / now * Loads.OfMonth(both, first), loadSecond = 1 / now * Loads.OfMonth(both, second);
        double most = MostTimes * now;
        CostNumbers usual = CostNumbers.Usual(c.Costs);
        CostLine a = Line(first, loadFirst, usual), b = Line(second, loadSecond, usual);
        double? at = BreakEven.Of(a, b, most);
        bool firstCheaper = a.At(now) <= b.At(now);
        List<double> found = [];
        int same = 0;
        for (int d = 0; d < draws.Numbers.Length; d++)
        {
            CostLine x = Line(first, loadFirst, draws.For(d, first, doubtFirst.Low, doubtFirst.High));
            CostLine y = Line(second, loadSecond, draws.For(d, second, doubtSecond.Low, doubtSecond.High));
            if (BreakEven.Of(x, y, most) is { } one) found.Add(one);
            if (x.At(now) <= y.At(now) == firstCheaper) same++;
        }
        double share = (double)found.Count / draws.Numbers.Length;
        double to = Math.Min(most, 2 * Math.Max(now, at ?? now));
        return new BreakEvenAnswer(
            first, second, both.Length, now, at,
            at is not null && share >= LeastShare ? Draws.Ends([.. found.Order()], c.Confidence) : null,
            share, most, firstCheaper, (double)same / draws.Numbers.Length,
            [.. Enumerable.Range(0, DrawnPoints).Select(i => to * i / (DrawnPoints - 1)).Select(w => (w, a.At(w), b.At(w)))]);

        CostLine Line(int machine, Load load, CostNumbers numbers) =>
            CostLine.Of(c.Machines[machine], load, numbers, work[machine].HoursOfOne, printedParts[machine]);
    }
}
