using System.Collections.Immutable;
using System.Globalization;
using Platewright.Formats.Toml;
using Platewright.Sizing.Cases;

namespace Platewright.Study;

/// <summary>
/// Reads <c>[work]</c>: what the projects stand for, and whether what the projects say of how often they are made makes sense
/// together.
/// </summary>
internal static class WorkReader
{
    private const int MostProjects = 100_000_000;

    private static readonly NumberRange Rate = NumberRange.Positive(1_000_000);

    /// <summary>Shares are typed with two digits: what their rounding may add up to above 1.</summary>
    private const double Rounding = 0.005;

    public static (WorkStatement Work, double? ProjectsPerMonth) Read(
        TomlTable root, ImmutableArray<TomlTable> tables, ImmutableArray<PlannedProject> projects)
    {
        TomlTable? work = root.Table("work");
        bool? sample = work?.Flag("sample");
        int? of = work?.Count("of", 1, MostProjects);
        double? perMonth = work?.Number("projects_per_month", Rate);
        PlannedProject[] made = [.. projects.Where(p => p.Frequency.PrintedPartsOf is null)];
        bool anyTimes = made.Any(p => p.Frequency.PerMonth is not null);
        bool anyShare = made.Any(p => p.Frequency.ShareOfWork is not null);
        if (of < made.Length)
            work!.Refuse("of", $"the study has {made.Length} projects, so the body of work has at least as many.");
        if (sample is false && of is not null && of != made.Length)
            work!.Refuse("of", "the projects are said to be all the work (sample = false); leave it out.");
        if (anyTimes && perMonth is not null)
            work!.Refuse("projects_per_month", "the projects say how often each is made; leave it out.");
        foreach (PlannedProject project in made) RefuseSilent(project, anyTimes, anyShare, tables, root);
        double sum = made.Sum(p => p.Frequency.ShareOfWork ?? 0);
        if (anyShare && sum > 1 + Rounding)
        {
            At(made.Last(p => p.Frequency.ShareOfWork is not null), tables, root).Refuse(
                "share_of_work", string.Create(CultureInfo.InvariantCulture, $"the shares add up to {100 * sum:0.##} %, more than 100 %."));
        }
        if (anyShare && sum <= 0)
            At(made[0], tables, root).Refuse("share_of_work", "the shares add up to nothing; at least one must be more than 0.");
        bool rated = anyTimes || anyShare;
        return (new WorkStatement(sample ?? !rated, of, !anyTimes && perMonth is null), perMonth);
    }

    // A project that is silent beside others that speak would count as never made, which nobody means.
    private static void RefuseSilent(
        PlannedProject project, bool anyTimes, bool anyShare, ImmutableArray<TomlTable> tables, TomlTable root)
    {
        Frequency f = project.Frequency;
        if (anyTimes && anyShare && f.ShareOfWork is not null)
            At(project, tables, root).Refuse("share_of_work", "other projects say times and per; use one of the two for all.");
        else if ((anyTimes || anyShare) && f is { PerMonth: null, ShareOfWork: null })
        {
            At(project, tables, root).Refuse(
                $"the project \"{project.Name}\" does not say how often it is made, but others do; add {(anyTimes ? "times and per" : "share_of_work")}.");
        }
    }

    private static TomlTable At(PlannedProject project, ImmutableArray<TomlTable> tables, TomlTable root) =>
        tables.FirstOrDefault(t => t.Place == project.Place) ?? root;
}
