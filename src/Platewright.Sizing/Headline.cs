using System.Collections.Immutable;
using System.Globalization;

namespace Platewright.Sizing;

/// <summary>A machine as the headline needs it.</summary>
/// <param name="EdgeMm">Where it stands on the line of sizes, mm.</param>
public sealed record MachineStanding(string Name, double EdgeMm, Share CanMake);

/// <summary>
/// The answer in one sentence: the smallest machine that makes the most, and what one size less would lose.
/// </summary>
/// <param name="Best">Makes the most projects; of equals the smallest, then the first of the study.</param>
/// <param name="Below">Of the smaller machines the one that makes the most; null where none is smaller.</param>
public sealed record Headline(MachineStanding Best, MachineStanding? Below, double Confidence)
{
    /// <param name="machines">At least one.</param>
    /// <param name="confidence">Of the intervals in the shares.</param>
    public static Headline Of(ImmutableArray<MachineStanding> machines, double confidence)
    {
        if (machines.IsEmpty) throw new ArgumentException("A headline needs at least one machine.", nameof(machines));
        MachineStanding best = MostMade(machines);
        MachineStanding[] smaller = [.. machines.Where(m => m.EdgeMm < best.EdgeMm)];
        return new Headline(best, smaller.Length == 0 ? null : MostMade(smaller), confidence);
    }

    /// <summary>As "Of 18 projects, generic 330 enclosed can make 14 (78 %; 95 % interval 55 to 91 %) …".</summary>
    public string Sentence()
    {
        Share made = Best.CanMake;
        if (made.Of == 0) return "There is no project to judge.";
        string sample = made.Of == 1 ? "Of 1 project" : $"Of {made.Of} projects";
        if (made.Count == 0) return $"{sample}, none of these machines can make any ({Interval(made)}).";
        string best = $"{sample}, {Best.Name} can make {made.Count} ({Percent(made.Value)}; {Interval(made)})";
        if (Below is null) return best + ".";
        string less = Below.CanMake.Count == 0 ? "none" : Below.CanMake.Count.ToString(CultureInfo.InvariantCulture);
        return $"{best}; the best smaller machine, {Below.Name}, can make {less}.";
    }

    private static MachineStanding MostMade(IEnumerable<MachineStanding> machines) =>
        machines.OrderByDescending(m => m.CanMake.Count).ThenBy(m => m.EdgeMm).First();

    private string Interval(Share share) => string.Create(CultureInfo.InvariantCulture,
        $"{100 * Confidence:0.##} % interval {Number(share.Low)} to {Percent(share.High)}");

    private static string Number(double share) => Math.Round(100 * share).ToString(CultureInfo.InvariantCulture);

    private static string Percent(double share) => Number(share) + " %";
}
