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

    /// <summary>The sets whose kinds can make so much: that does not depend on prices or times.</summary>
    public static int[][] Covering(MixProblem problem, IReadOnlyList<int[]> sets, double share)
    {
        double least = (share - Rounding) * problem.Projects.Sum(p => p.Weight);
        return [.. sets.Where(set => problem.Projects.Where(p => Makes(p, set)).Sum(p => p.Weight) >= least)];
    }

    /// <summary>The cheapest of them, and those that break a limit as things are.</summary>
    public static int[][] Cheapest(MixProblem problem, IReadOnlyList<int[]> sets, double share, int most) =>
        [.. sets.OrderBy(set => Priced(problem, set, share)?.PerMonth ?? decimal.MaxValue).Take(most)];

    private static bool Makes(MixProject project, int[] set)
    {
        foreach (MixJob job in project.Jobs) if (CheapestFor(job, set) < 0) return false;
        return true;
    }

    /// <summary>The kind of a set that makes a job for least; −1 where none makes it.</summary>
    private static int CheapestFor(MixJob job, int[] set)
    {
        int best = -1;
        foreach (int kind in set)
        {
            if (job.On[kind] is { } on && (best < 0 || on.CostPerMonth < job.On[best]!.Value.CostPerMonth)) best = kind;
        }
        return best;
    }

    private static (ImmutableArray<int> Counts, decimal PerMonth)? Priced(MixProblem problem, int[] set, double share)
    {
        double[] hours = new double[problem.Kinds.Length];
        decimal running = 0;
        double least = (share - Rounding) * problem.Projects.Sum(p => p.Weight);
        (MixProject Project, decimal Cost)[] made =
            [.. problem.Projects.Where(p => Makes(p, set)).Select(p => (p, p.Jobs.Sum(j => j.On[CheapestFor(j, set)]!.Value.CostPerMonth)))];
        double able = made.Sum(m => m.Project.Weight);
        if (able < least) return null;
        // As in the mix itself, work beyond the aim is not counted on: what costs most for its share is left out first.
        foreach ((MixProject project, decimal cost) in made.OrderByDescending(m => (double)m.Cost / m.Project.Weight))
        {
            if (able - project.Weight >= least)
            {
                able -= project.Weight;
                continue;
            }
            running += cost;
            foreach (MixJob job in project.Jobs)
            {
                int kind = CheapestFor(job, set);
                hours[kind] += job.On[kind]!.Value.HoursPerMonth;
            }
        }
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
