using System.Globalization;

namespace Platewright.Sizing.Statistics;

/// <summary>Two machines tried on the same projects.</summary>
/// <param name="Both">Projects that both can make, 0 or more.</param>
/// <param name="OnlyFirst">Projects that only the first can make.</param>
/// <param name="OnlySecond">Projects that only the second can make.</param>
/// <param name="Neither">Projects that neither can make.</param>
/// <param name="Confidence">Of test and interval, greater than 0 and less than 1.</param>
/// <param name="P">
/// Of McNemar's exact two-sided test: how often machines that make equally much would differ by as much, 0 … 1. Source:
/// McNemar, Psychometrika 12 (1947) 153-157, with the exact binomial distribution of the projects that differ.
/// </param>
/// <param name="Low">Lower end of the interval of <see cref="Difference"/>, −1 … 1.</param>
/// <param name="High">Upper end, −1 … 1.</param>
/// <param name="MoreProjectsNeeded">
/// How many more projects like these would tell the two apart with a chance of 80 %, were the difference the one seen;
/// 0 where they are told apart already, null where no difference is seen or more than
/// <see cref="MostProjectsWorthNaming"/> would be needed.
/// </param>
public sealed record PairedComparison(
    int Both, int OnlyFirst, int OnlySecond, int Neither, double Confidence,
    double P, double Low, double High, int? MoreProjectsNeeded)
{
    /// <summary>Nobody collects more projects than this to choose a machine. Own choice, no source.</summary>
    public const int MostProjectsWorthNaming = 10_000;

    /// <summary>
    /// The chance to find the difference that <see cref="MoreProjectsNeeded"/> asks for; usual, no source.
    /// </summary>
    private const double Power = 0.8;

    /// <summary>Projects tried.</summary>
    public int Of => Both + OnlyFirst + OnlySecond + Neither;

    /// <summary>Share of the first less share of the second, −1 … 1; 0 for an empty sample.</summary>
    public double Difference => Of == 0 ? 0 : (double)(OnlyFirst - OnlySecond) / Of;

    /// <summary>Whether the sample tells the two apart: P is at most 1 − confidence.</summary>
    public bool Distinguishable => P <= 1 - Confidence;

    /// <param name="first">What the first machine can make, one for each project.</param>
    /// <param name="second">What the second can make, in the same order.</param>
    /// <param name="confidence">Greater than 0 and less than 1.</param>
    /// <exception cref="ArgumentException">The lists differ in length.</exception>
    public static PairedComparison Between(
        IReadOnlyList<bool> first, IReadOnlyList<bool> second, double confidence)
    {
        if (first.Count != second.Count)
        {
            throw new ArgumentException(
                $"Expected {first.Count} answers as for the first machine, found {second.Count}.", nameof(second));
        }
        int Counted(bool byFirst, bool bySecond) =>
            Enumerable.Range(0, first.Count).Count(i => first[i] == byFirst && second[i] == bySecond);
        return FromCounts(
            Counted(true, true), Counted(true, false), Counted(false, true), Counted(false, false), confidence);
    }

    /// <exception cref="ArgumentOutOfRangeException">A count is negative or the confidence is outside.</exception>
    /// <exception cref="OverflowException">The counts add up to more than a whole number holds.</exception>
    public static PairedComparison FromCounts(
        int both, int onlyFirst, int onlySecond, int neither, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(both);
        ArgumentOutOfRangeException.ThrowIfNegative(onlyFirst);
        ArgumentOutOfRangeException.ThrowIfNegative(onlySecond);
        ArgumentOutOfRangeException.ThrowIfNegative(neither);
        double z = ScoreInterval.Z(confidence);
        int of = checked(both + onlyFirst + onlySecond + neither);
        double p = SignTest.TwoSidedP(onlyFirst, onlySecond);
        (double low, double high) = PairedDifference.Interval(onlyFirst, onlySecond, of, z);
        int? more = p <= 1 - confidence ? 0 : More(onlyFirst, onlySecond, of, z);
        return new PairedComparison(both, onlyFirst, onlySecond, neither, confidence, p, low, high, more);
    }

    /// <summary>
    /// As "A makes 5 more of 18 projects than B: a difference of 28 points (95 % interval 8 to 49)", or that the two
    /// cannot be told apart; then it puts neither before the other.
    /// </summary>
    public string Sentence(string nameA, string nameB)
    {
        if (Of == 0) return $"There is no project to compare {nameA} and {nameB} on.";
        if (Distinguishable && OnlyFirst > OnlySecond) return Ahead(nameA, nameB, Low, High);
        if (Distinguishable) return Ahead(nameB, nameA, -High, -Low);
        string start = $"{nameA} and {nameB} cannot be told apart on this sample";
        if (Neither == Of) return $"{start}: neither makes any of {Projects(Of)}.";
        if (OnlyFirst + OnlySecond == 0) return $"{start}: they make the same {Both} of {Projects(Of)}.";
        if (OnlyFirst == OnlySecond) return $"{start}: each makes {OnlyFirst} of {Projects(Of)} that the other cannot.";
        return MoreProjectsNeeded is { } more
            ? $"{start}; about {Rough(more)} more {(more == 1 ? "project" : "projects")} like these would."
            : $"{start}, nor by {MostProjectsWorthNaming} more projects like these.";
    }

    private static int? More(int onlyFirst, int onlySecond, int of, double z)
    {
        if (onlyFirst == onlySecond) return null;
        double needed = PairedSampleSize.Of(
            (double)(onlyFirst + onlySecond) / of, (double)(onlyFirst - onlySecond) / of, z, NormalQuantile.Of(Power));
        // The exact test asks for a little more than the formula: where that is met already, for at least one.
        double more = Math.Max(1, Math.Ceiling(needed) - of);
        return more <= MostProjectsWorthNaming ? (int)more : null;
    }

    private string Ahead(string better, string other, double low, double high) => string.Create(
        CultureInfo.InvariantCulture,
        $"{better} makes {Math.Abs(OnlyFirst - OnlySecond)} more of {Projects(Of)} than {other}: a difference of "
        + $"{Points(Math.Abs(Difference))} points "
        + $"({100 * Confidence:0.##} % interval {Points(low)} to {Points(high)}).");

    private static string Projects(int count) => count == 1 ? "1 project" : $"{count} projects";

    /// <summary>Whole points, and tenths below one point.</summary>
    private static string Points(double share) =>
        (100 * share).ToString(Math.Abs(share) < 0.01 ? "0.#" : "0", CultureInfo.InvariantCulture);

    /// <summary>Rounded up to two digits, as it is no more than an estimate.</summary>
    private static int Rough(int count)
    {
        int step = 1;
        while (count / step >= 100) step *= 10;
        return (count + step - 1) / step * step;
    }
}
