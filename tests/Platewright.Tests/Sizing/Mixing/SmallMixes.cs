using System.Collections.Immutable;
using CsCheck;
using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

/// <summary>Random problems small enough to try every mix, and that trial.</summary>
internal static class SmallMixes
{
    private const int Kinds = 3;

    private static readonly Gen<JobOn?> On =
        Gen.Select(Gen.Int[0, 3], Gen.Int[0, 12], Gen.Int[0, 9], Gen.Int[1, 9])
            .Select((able, hours, cost, turn) => able == 0 ? (JobOn?)null : new JobOn(hours / 2.0, cost, turn));

    private static readonly Gen<ImmutableArray<JobOn?>> Row = On.Array[Kinds].Select(r => r.ToImmutableArray());

    private static readonly Gen<(int Weight, ImmutableArray<JobOn?>[] Jobs)> Project =
        Gen.Select(Gen.Int[1, 8], Row.Array[1, 2]);

    private static readonly Gen<MixKind> Kind =
        Gen.Select(Gen.Int[0, 20], Gen.Int[1, 8], Gen.Int[0, 9], Gen.Int[1, 4], Gen.Int[1, 5], Gen.Int[0, 2], Gen.Int[0, 5])
            .Select((cost, hours, price, floor, power, most, least) => new MixKind("", cost, hours)
            {
                Price = price,
                FloorM2 = floor / 2.0,
                PeakW = power * 100,
                Most = most,
                Least = least == 0 ? Math.Min(most, 1) : 0,
            });

    private static readonly Gen<MixLimits> Limits =
        Gen.Select(Gen.Int[0, 40], Gen.Int[0, 16], Gen.Int[0, 30], Gen.Int[0, 8])
            .Select((budget, floor, power, machines) => new MixLimits(
                budget > 20 ? null : budget, floor > 8 ? null : floor / 2.0, power > 15 ? null : power * 100, machines > 4 ? null : machines));

    public static readonly Gen<MixProblem> Problems =
        Gen.Select(Kind.Array[Kinds], Project.Array[0, 4], Gen.Int[0, 10], Limits).Select((kinds, projects, share, limits) => new MixProblem(
            [.. kinds.Select((k, i) => k with { Id = $"kind {i}" })],
            [.. projects.Select((p, i) => new MixProject($"project {i}", p.Weight, [.. p.Jobs.Select((r, j) => new MixJob($"job {j}", r))]))],
            share / 10.0,
            limits));

    /// <summary>Every mix and every way to use it: the least cost per weight covered, by exhaustion.</summary>
    public static Dictionary<double, decimal> Enumerate(MixProblem problem)
    {
        var best = new Dictionary<double, decimal>();
        foreach (int[] counts in CountsWithin(problem))
        {
            decimal machines = counts.Select((n, k) => n * problem.Kinds[k].CostPerMonth).Sum();
            double[] left = [.. counts.Select((n, k) => n * problem.Kinds[k].HoursPerMonth)];
            Cover(problem, counts, left, 0, 0, 0, machines, best);
        }
        return best;
    }

    /// <summary>The least cost at this share or more; null where nothing reaches it.</summary>
    public static decimal? Cheapest(MixProblem problem, Dictionary<double, decimal> best, double share)
    {
        double all = problem.Projects.Sum(p => p.Weight);
        decimal[] able = [.. best.Where(b => b.Key >= share * all - 1e-6).Select(b => b.Value)];
        return able.Length == 0 ? null : able.Min();
    }

    private static IEnumerable<int[]> CountsWithin(MixProblem problem)
    {
        var counts = new int[Kinds];
        for (counts[0] = problem.Kinds[0].Least; counts[0] <= problem.Kinds[0].Most; counts[0]++)
        {
            for (counts[1] = problem.Kinds[1].Least; counts[1] <= problem.Kinds[1].Most; counts[1]++)
            {
                for (counts[2] = problem.Kinds[2].Least; counts[2] <= problem.Kinds[2].Most; counts[2]++)
                {
                    if (Within(problem, counts)) yield return counts;
                }
            }
        }
    }

    private static bool Within(MixProblem problem, int[] counts) =>
        counts.Sum() <= (problem.Limits.Machines ?? int.MaxValue)
        && counts.Select((n, k) => n * problem.Kinds[k].Price).Sum() <= (problem.Limits.Budget ?? decimal.MaxValue)
        && counts.Select((n, k) => n * problem.Kinds[k].FloorM2).Sum() <= (problem.Limits.FloorM2 ?? double.MaxValue)
        && counts.Select((n, k) => n * problem.Kinds[k].PeakW).Sum() <= (problem.Limits.PowerW ?? double.MaxValue);

    private static void Cover(
        MixProblem problem, int[] counts, double[] left, int project, int job, double weight, decimal cost, Dictionary<double, decimal> best)
    {
        if (project == problem.Projects.Length)
        {
            if (!best.TryGetValue(weight, out decimal old) || cost < old) best[weight] = cost;
            return;
        }
        MixProject p = problem.Projects[project];
        if (job == 0) Cover(problem, counts, left, project + 1, 0, weight, cost, best);
        for (int k = 0; k < Kinds; k++)
        {
            if (counts[k] == 0 || p.Jobs[job].On[k] is not { } on || on.HoursPerMonth > left[k]) continue;
            left[k] -= on.HoursPerMonth;
            bool last = job + 1 == p.Jobs.Length;
            Cover(
                problem, counts, left, last ? project + 1 : project, last ? 0 : job + 1, last ? weight + p.Weight : weight,
                cost + on.CostPerMonth, best);
            left[k] += on.HoursPerMonth;
        }
    }
}
