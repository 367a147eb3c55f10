using System.Collections.Immutable;

namespace Platewright.Sizing.Mixing;

/// <summary>Lays a problem on the grid of integers it is counted on, and reads mixes back.</summary>
internal static class MixGrid
{
    public const int GreatestCount = 10_000;

    public const decimal MoneyUnits = 10_000;

    private const double HourUnits = 10_000;

    private const double FloorUnits = 10_000;

    private const double PowerUnits = 1000;

    private const double WeightUnits = 1e9;

    /// <summary>So that a hair of rounding in a sum of doubles does not cost a whole unit.</summary>
    private const double Hair = 1e-6;

    /// <summary>Sums of any number of such values stay far inside 64 bits.</summary>
    private const double GreatestValue = 1e9;

    private const decimal GreatestMoney = 1_000_000_000;

    public static IntegerMix Of(MixProblem problem)
    {
        ImmutableArray<MixKind> kinds = problem.Kinds;
        MixJob[] jobs = [.. problem.Projects.SelectMany(p => p.Jobs)];
        Check(problem, kinds);
        double weights = problem.Projects.Sum(p => p.Weight);
        long[] weight =
            [.. problem.Projects.Select(p => Math.Max(1, (long)Math.Round(p.Weight / weights * WeightUnits)))];
        var firstJob = new int[problem.Projects.Length + 1];
        for (int p = 0; p < problem.Projects.Length; p++)
            firstJob[p + 1] = firstJob[p] + problem.Projects[p].Jobs.Length;
        var hours = new long[jobs.Length * kinds.Length];
        var running = new long[hours.Length];
        for (int j = 0; j < jobs.Length; j++)
        {
            if (jobs[j].On.Length != kinds.Length)
            {
                throw new ArgumentException(
                    $"Job {jobs[j].Id} has {jobs[j].On.Length} entries; expected {kinds.Length}.", nameof(problem));
            }
            for (int k = 0; k < kinds.Length; k++)
            {
                int at = j * kinds.Length + k;
                hours[at] = jobs[j].On[k] is { } on ? Up(on.HoursPerMonth, HourUnits, "hours") : IntegerMix.Not;
                running[at] = jobs[j].On[k] is { } made ? Money(made.CostPerMonth, "running cost") : 0;
            }
        }
        MixLimits limits = problem.Limits;
        return new()
        {
            Cost = [.. kinds.Select(k => Money(k.CostPerMonth, "cost"))],
            Capacity = [.. kinds.Select(k => Down(k.HoursPerMonth, HourUnits, "hours"))],
            Least = [.. kinds.Select(k => k.Least)],
            Most = [.. kinds.Select(k => k.Most)],
            Use =
            [
                [.. kinds.Select(k => Money(k.Price, "price"))],
                [.. kinds.Select(k => Up(k.FloorM2, FloorUnits, "floor area"))],
                [.. kinds.Select(k => Up(k.PeakW, PowerUnits, "power"))],
                [.. kinds.Select(_ => 1L)],
            ],
            Limit =
            [
                limits.Budget is { } budget ? Money(budget, "budget") : IntegerMix.NoLimit,
                limits.FloorM2 is { } floor ? Down(floor, FloorUnits, "floor area") : IntegerMix.NoLimit,
                limits.PowerW is { } power ? Down(power, PowerUnits, "power") : IntegerMix.NoLimit,
                limits.Machines is { } machines ? Down(machines, 1, "machines") : IntegerMix.NoLimit,
            ],
            FirstJob = firstJob,
            Weight = weight,
            TotalWeight = weight.Sum(),
            Hours = hours,
            Running = running,
        };
    }

    /// <summary>The least weight that counts as the share: one unit of slack per project, as each was rounded.</summary>
    public static long Target(IntegerMix mix, double share) => share >= 1
        ? mix.TotalWeight
        : Math.Max(0, (long)Math.Ceiling(share * mix.TotalWeight) - mix.Projects);

    public static decimal ToMoney(long units) => units / MoneyUnits;

    /// <summary>Counts and kinds per job of the whole problem, as a mix.</summary>
    public static MachineMix Read(IntegerMix mix, int[] counts, int[] kindOfJob, bool withJobs = true)
    {
        long machines = 0, running = 0, covered = 0;
        var hours = new long[mix.Kinds];
        var made = ImmutableArray.CreateBuilder<ImmutableArray<int>>(withJobs ? mix.Projects : 0);
        for (int k = 0; k < mix.Kinds; k++) machines += mix.Cost[k] * counts[k];
        for (int p = 0; p < mix.Projects; p++)
        {
            Span<int> own = kindOfJob.AsSpan(mix.FirstJob[p]..mix.FirstJob[p + 1]);
            if (withJobs) made.Add([.. own]);
            if (own.Contains(-1)) continue;
            covered += mix.Weight[p];
            for (int i = 0; i < own.Length; i++)
            {
                int at = (mix.FirstJob[p] + i) * mix.Kinds + own[i];
                running += mix.Running[at];
                hours[own[i]] += mix.Hours[at];
            }
        }
        long Sum(MixLimit limit) => counts.Select((n, k) => n * mix.Use[(int)limit][k]).Sum();
        return new(
            [.. counts],
            made.DrainToImmutable(),
            ShareOf(mix, covered),
            ToMoney(machines),
            ToMoney(running),
            ToMoney(Sum(MixLimit.Budget)),
            Sum(MixLimit.Floor) / FloorUnits,
            Sum(MixLimit.Power) / PowerUnits,
            [.. hours.Select(h => h / HourUnits)]);
    }

    public static double ShareOf(IntegerMix mix, long weight) =>
        mix.TotalWeight == 0 ? 1 : (double)weight / mix.TotalWeight;

    private static void Check(MixProblem problem, ImmutableArray<MixKind> kinds)
    {
        if (kinds.IsEmpty) throw new ArgumentException("Expected at least one kind.", nameof(problem));
        if (!(problem.LeastShare is >= 0 and <= 1))
            throw new ArgumentException($"LeastShare {problem.LeastShare}: expected 0 to 1.", nameof(problem));
        if (kinds.Select(k => k.Id).Distinct(StringComparer.Ordinal).Count() < kinds.Length)
            throw new ArgumentException("Two kinds have the same id.", nameof(problem));
        foreach (MixKind kind in kinds)
        {
            if (kind.Least < 0 || kind.Least > kind.Most || kind.Most > GreatestCount)
            {
                throw new ArgumentException(
                    $"Counts of {kind.Id}, {kind.Least} to {kind.Most}: expected 0 to {GreatestCount}, least first.",
                    nameof(problem));
            }
        }
        foreach (MixProject project in problem.Projects)
        {
            if (!(project.Weight > 0 && double.IsFinite(project.Weight)))
            {
                throw new ArgumentException(
                    $"Weight of {project.Id}, {project.Weight}: expected more than 0.", nameof(problem));
            }
            if (project.Jobs.IsEmpty) throw new ArgumentException($"Project {project.Id} has no job.", nameof(problem));
        }
    }

    private static long Money(decimal value, string what) => value is >= 0 and <= GreatestMoney
        ? (long)Math.Round(value * MoneyUnits)
        : throw new ArgumentOutOfRangeException(what, value, $"Expected 0 to {GreatestValue}.");

    private static long Up(double value, double units, string what) =>
        (long)Math.Ceiling(Checked(value, what) * units - Hair);

    private static long Down(double value, double units, string what) =>
        (long)Math.Floor(Checked(value, what) * units + Hair);

    private static double Checked(double value, string what) => value is >= 0 and <= GreatestValue
        ? value
        : throw new ArgumentOutOfRangeException(what, value, $"Expected 0 to {GreatestValue}.");
}
