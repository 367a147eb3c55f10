using System.Collections.Immutable;

namespace Platewright.Sizing.Hours;

/// <summary>
/// Many builds told by few: runs of alike length, each class with the mean of its builds, so that builds, parts and the
/// seconds of every stage per week are kept.
/// </summary>
public static class JobClasses
{
    /// <summary>
    /// Classes enough: against the ungrouped jobs, the share of a week that a machine can work then changes by about a
    /// hundredth of itself; the worst seen was 8 %, with 500 unlike builds from minutes to two days and free nights,
    /// where a year does not see each of them once.
    /// </summary>
    public const int Enough = 48;

    /// <summary>At most so many classes, the longest run first.</summary>
    /// <param name="place">Where they are made; a class that could not be made there is told by its own jobs.</param>
    /// <param name="jobs">All of them can be made at the place.</param>
    /// <param name="greatest">Classes of equal hours per week, 1 or more; equal builds are joined anyway.</param>
    public static ImmutableArray<MixJob> Of(Place place, IReadOnlyCollection<MixJob> jobs, int greatest = Enough)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(greatest, 1);
        MixJob[] sorted =
        [
            .. jobs.GroupBy(j => j.Stages).Select(equal => Mean([.. equal]))
                .OrderByDescending(j => j.Stages.RunS).ThenByDescending(j => j.Stages.BusyS)
                .ThenByDescending(j => j.PerWeek),
        ];
        if (sorted.Length <= greatest) return [.. sorted];
        double hours = sorted.Sum(j => j.PerWeek * j.Stages.BusyS);
        ImmutableArray<MixJob>.Builder classes = ImmutableArray.CreateBuilder<MixJob>();
        List<MixJob> open = [];
        double before = 0;
        foreach (MixJob job in sorted)
        {
            open.Add(job);
            before += job.PerWeek * job.Stages.BusyS;
            if (before < hours * (classes.Count + 1) / greatest) continue;
            Close();
        }
        Close();
        return classes.ToImmutable();

        void Close()
        {
            if (open.Count == 0) return;
            MixJob mean = Mean(open);
            // A mean of builds that may start under different rules need not be allowed itself.
            if (place.EverMakes(mean.Stages)) classes.Add(mean);
            else classes.AddRange(open);
            open.Clear();
        }
    }

    private static MixJob Mean(IReadOnlyCollection<MixJob> jobs)
    {
        double perWeek = jobs.Sum(j => j.PerWeek);
        return new MixJob(
            jobs.First() is var first && jobs.All(j => j.Stages == first.Stages)
                ? first.Stages
                : new BuildStages(
                    Of(j => j.Stages.BuildS), Of(j => j.Stages.WarmUpS), Of(j => j.Stages.ReleaseS),
                    Of(j => j.Stages.PrepareS), Of(j => j.Stages.TakeOffS)),
            perWeek,
            Of(j => j.Parts));

        double Of(Func<MixJob, double> what) => jobs.Sum(j => j.PerWeek * what(j)) / perWeek;
    }
}
