using System.Collections.Immutable;
using Platewright.Sizing.Mixing;

namespace Platewright.Sizing.Answers;

/// <summary>
/// Given sets of kinds priced anew: every job on the able kind that costs least, as many machines as its hours keep busy. Quick enough to
/// ask for every assumption; no optimum over other sets is claimed.
/// </summary>
internal static class CheapestSet
{
    /// <summary>Of a count where hours and machines meet.</summary>
    private const double Rounding = 1e-9;

    /// <returns>Counts per kind and cost a month; no counts where none of the sets keeps share and limits.</returns>
    public static (ImmutableArray<int>? Counts, decimal PerMonth) Of(MixProblem problem, IReadOnlyList<int[]> sets, double share)
    {
        ImmutableArray<int>? best = null;
        decimal least = 0;
        foreach (int[] set in sets)
        {
            if (set.Any(k => k >= problem.Kinds.Length)) continue;
            if (Priced(problem, set, share) is { } found && (best is null || found.PerMonth < least)) (best, least) = found;
        }
        return (best, least);
    }

    private static (ImmutableArray<int> Counts, decimal PerMonth)? Priced(MixProblem problem, int[] set, double share)
    {
        double[] hours = new double[problem.Kinds.Length];
        decimal running = 0;
        double covered = 0, all = 0;
        foreach (MixProject project in problem.Projects)
        {
            all += project.Weight;
            if (!project.Jobs.All(j => set.Any(k => j.On[k] is not null))) continue;
            covered += project.Weight;
            foreach (MixJob job in project.Jobs)
            {
                int kind = set.Where(k => job.On[k] is not null).MinBy(k => job.On[k]!.Value.CostPerMonth);
                hours[kind] += job.On[kind]!.Value.HoursPerMonth;
                running += job.On[kind]!.Value.CostPerMonth;
            }
        }
        if (covered < share * all - Rounding * all) return null;
        int[] counts =
        [
            .. problem.Kinds.Select((kind, k) => Math.Max(
                kind.Least, hours[k] > 0 ? (int)Math.Ceiling(hours[k] / kind.HoursPerMonth - Rounding) : 0)),
        ];
        return Keeps(problem, counts) ? ([.. counts], running + counts.Select((n, k) => n * problem.Kinds[k].CostPerMonth).Sum()) : null;
    }

    private static bool Keeps(MixProblem problem, int[] counts)
    {
        MixLimits limits = problem.Limits;
        return counts.Select((n, k) => n <= problem.Kinds[k].Most).All(within => within)
            && !(counts.Select((n, k) => n * problem.Kinds[k].Price).Sum() > limits.Budget)
            && !(counts.Select((n, k) => n * problem.Kinds[k].FloorM2).Sum() > limits.FloorM2 + Rounding)
            && !(counts.Select((n, k) => n * problem.Kinds[k].PeakW).Sum() > limits.PowerW + Rounding)
            && !(counts.Sum() > limits.Machines);
    }
}
