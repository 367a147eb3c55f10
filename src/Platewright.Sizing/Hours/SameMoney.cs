using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>A build of the work that two kinds of machines are compared by.</summary>
/// <param name="Name">What the answer calls it.</param>
/// <param name="PerWeek">Builds per week wished, greater than 0.</param>
/// <param name="Parts">Parts per build, greater than 0.</param>
/// <param name="Copies">Builds of it in the project, 0 or more.</param>
/// <param name="OnLarge">What it takes on the large machine; null where that cannot make it.</param>
/// <param name="OnSmall">What it takes on a small one; null where that cannot make it.</param>
public sealed record ComparedJob(
    string Name, double PerWeek, double Parts, int Copies, BuildStages? OnLarge, BuildStages? OnSmall);

/// <summary>One side of "one large or n small".</summary>
/// <param name="Machines">How many.</param>
/// <param name="Price">Of all of them, in the money given.</param>
/// <param name="CannotMake">Names of the builds that this kind cannot make: no fit, or no heat.</param>
/// <param name="NeverHere">Names of the builds it could make, but not with the hours and rules of this place.</param>
/// <param name="PerWeek">Its work without pause; null where it makes nothing.</param>
/// <param name="OneDown">The same with one machine down; null where none is left, or nothing is made.</param>
/// <param name="Project">The builds of the project that it can make; null where there is none.</param>
/// <param name="ProjectComplete">Can it make all of the project?</param>
public sealed record MoneySide(
    int Machines, double Price, ImmutableArray<string> CannotMake, ImmutableArray<string> NeverHere,
    Throughput? PerWeek, Throughput? OneDown, ProjectSchedule? Project, bool ProjectComplete)
{
    internal static MoneySide Of(
        Place place, IReadOnlyList<ComparedJob> jobs, Func<ComparedJob, BuildStages?> on, int machines, double priceEach,
        double startS)
    {
        ComparedJob[] able = [.. jobs.Where(j => on(j) is not null)];
        ComparedJob[] made = [.. able.Where(j => place.EverMakes(on(j)!))];
        MixJob[] mix = [.. made.Select(j => new MixJob(on(j)!, j.PerWeek, j.Parts))];
        BuildStages[] project = [.. made.SelectMany(j => Enumerable.Repeat(on(j)!, j.Copies))];
        return new MoneySide(
            machines,
            machines * priceEach,
            [.. jobs.Where(j => on(j) is null).Select(j => j.Name)],
            [.. able.Where(j => !place.EverMakes(on(j)!)).Select(j => j.Name)],
            Work(machines),
            Work(machines - 1),
            project.Length == 0 || machines == 0 ? null : ProjectSchedule.Sooner(place, project, machines, startS),
            machines > 0 && jobs.Sum(j => j.Copies) == project.Length);

        Throughput? Work(int count) => mix.Length == 0 || count < 1 ? null : Throughput.Of(place, mix, count);
    }
}

/// <summary>The same money: one large machine, or as many small ones.</summary>
/// <param name="Large">One large machine.</param>
/// <param name="Small">The small ones; none where even one costs more.</param>
public sealed record SameMoney(MoneySide Large, MoneySide Small)
{
    /// <summary>The answer.</summary>
    /// <param name="place">Hours and rules.</param>
    /// <param name="jobs">The work, on either kind.</param>
    /// <param name="priceLarge">Of one large machine, greater than 0, in any money.</param>
    /// <param name="priceSmall">Of one small machine, greater than 0, in the same money.</param>
    /// <param name="startS">The project starts then; a moment of the repeating week, s.</param>
    /// <param name="small">How many small ones; null: as many as the price of the large one buys.</param>
    public static SameMoney Of(
        Place place, IReadOnlyList<ComparedJob> jobs, double priceLarge, double priceSmall, double startS,
        int? small = null)
    {
        int count = small ?? Buys(priceLarge, priceSmall);
        ArgumentOutOfRangeException.ThrowIfNegative(count, nameof(small));
        return new SameMoney(
            MoneySide.Of(place, jobs, j => j.OnLarge, 1, priceLarge, startS),
            MoneySide.Of(place, jobs, j => j.OnSmall, count, priceSmall, startS));
    }

    /// <summary>Small machines that the price of a large one buys.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A price is not greater than 0.</exception>
    public static int Buys(double priceLarge, double priceSmall)
    {
        if (!(priceLarge > 0 && double.IsFinite(priceLarge)))
            throw new ArgumentOutOfRangeException(nameof(priceLarge), priceLarge, "Expected more than 0.");
        if (!(priceSmall > 0 && double.IsFinite(priceSmall)))
            throw new ArgumentOutOfRangeException(nameof(priceSmall), priceSmall, "Expected more than 0.");
        return (int)Math.Floor(priceLarge / priceSmall);
    }
}
