using CsCheck;
using Platewright.Sizing.Hours;
using static Platewright.Tests.Sizing.Hours.Places;

namespace Platewright.Tests.Sizing.Hours;

public sealed class ThroughputTests
{
    private const double Rounding = 1e-9;

    private static readonly Gen<MixJob> Job = Gen.Select(
        DrawnPlace.Build, Gen.Double[0.1, 20], Gen.Int[1, 9],
        (build, perWeek, parts) => new MixJob(build, perWeek, parts));

    [Theory]
    // Found on Mon 14, Tue 8, Tue 14 … Fri 14 and, built from 14:00 on Friday, on Monday 8: ten a week of 6 h.
    [InlineData(6, 10)]
    // 10 h fill a day and are found the next morning: five a week.
    [InlineData(10, 5)]
    // 9 h end as the last one leaves, the next runs overnight from then on: two a day.
    [InlineData(9, 10)]
    // 20 h: Mon 8 – Tue 4, found at 8; five a week, the last over the weekend.
    [InlineData(20, 5)]
    public void Of_OneKindInAnOffice_IsAsComputedByHand(double hours, double perWeek)
    {
        Throughput made = Throughput.Of(Office(), [new MixJob(new BuildStages(hours * H), 1000, 3)], 1);

        Assert.Equal(perWeek, made.BuildsPerWeek, Rounding);
        Assert.Equal(3 * perWeek, made.PartsPerWeek, Rounding);
        Assert.Equal(perWeek * hours, made.HoursPerWeek, Rounding);
        Assert.Equal(perWeek * hours / 168, made.EffectiveShare, Rounding);
        // What is not building is waiting.
        Assert.Equal(168 - perWeek * hours, made.WaitedHoursPerWeek, Rounding);
    }

    [Fact]
    public void Of_FewerWishedThanPossible_MakesThoseWished()
    {
        // Ten a week are possible, four wished: of the 168 − 60 h that ten wait, four wait 4/10.
        Throughput made = Throughput.Of(Office(), [new MixJob(new BuildStages(6 * H), 4)], 1);

        Assert.Equal(2.5, made.MixesPerWeek, Rounding);
        Assert.Equal(4, made.BuildsPerWeek, Rounding);
        Assert.Equal(24, made.HoursPerWeek, Rounding);
        Assert.Equal(43.2, made.WaitedHoursPerWeek, Rounding);
        // 60 h a week, 365.25 / 84 weeks a month.
        Assert.Equal(60 * 365.25 / 84, made.EffectiveHoursPerMonth, Rounding);
    }

    [Fact]
    public void Of_DayAndNightBuilds_GoTogether()
    {
        // 8 h in the day and 16 h from 16:00 on fill all of a day with somebody there 08:00-18:00: 7 of each a week.
        Throughput made = Throughput.Of(
            EveryDay(), [new MixJob(new BuildStages(8 * H), 100), new MixJob(new BuildStages(16 * H), 100)], 1);

        Assert.Equal(14, made.BuildsPerWeek, Rounding);
        Assert.Equal(1, made.EffectiveShare, Rounding);
    }

    [Fact]
    public void Of_NeverMadeHere_IsListedAndNotCounted()
    {
        Place place = Office(new RunLimits { LongestUnattendedS = 0 });
        MixJob tooLong = new(new BuildStages(10 * H), 5);

        Throughput made = Throughput.Of(place, [tooLong, new MixJob(new BuildStages(9 * H), 2)], 1);

        Assert.Equal([0], made.Impossible);
        Assert.Equal(18, made.WishedHoursPerWeek, Rounding);
        Assert.Equal(2, made.BuildsPerWeek, Rounding);
        Assert.Equal(0, Throughput.Of(place, [tooLong], 1).EffectiveHoursPerMonth);
    }

    [Fact]
    public void Of_SomebodyAlwaysThere_IsHoursOverDuration() =>
        Gen.Select(Job, Gen.Int[1, 5]).Sample((job, machines) =>
        {
            Throughput made = Throughput.Of(Always(), [job], machines);
            double most = machines * WeekTime.WeekS / job.Stages.BusyS;

            Assert.Equal(most, ThroughputBound.MixesPerWeek(Always(), [job], machines) * job.PerWeek, Rounding * most);
            // Builds that reach over the ends of the weeks count with the machine's share of them inside.
            Assert.InRange(made.MixesPerWeek * job.PerWeek - most, -Edges(made), Edges(made));
            Assert.Equal(0, made.WaitedHoursPerWeek);
        }, iter: 200);

    [Fact]
    public void Of_SomebodyAlwaysThereNoHandling_IsExactForAnyMix() =>
        Gen.Select(Gen.Double[300, 4e5], Gen.Double[0.1, 20]).Array[1, 8].Sample(drawn =>
        {
            MixJob[] mix = [.. drawn.Select(d => new MixJob(new BuildStages(d.Item1), d.Item2))];

            Throughput made = Throughput.Of(Always(), mix, 2);

            Assert.Equal(ThroughputBound.MixesPerWeek(Always(), mix, 2), made.MixesPerWeek, 1e-6 * made.MixesPerWeek);
        }, iter: 200);

    [Fact]
    public void Of_AnyPlace_IsNotAboveItsBound() =>
        Gen.Select(DrawnPlace.Any, Job, Gen.Int[1, 3]).Sample((place, job, machines) =>
        {
            Throughput made = Throughput.Of(place, [job], machines);
            if (made.Impossible.Length > 0) return;

            double bound = ThroughputBound.MixesPerWeek(place, [job], machines) * job.PerWeek;
            Assert.True(made.MixesPerWeek * job.PerWeek <= bound + Edges(made));
            Assert.True(made.BuildsPerWeek <= job.PerWeek * (1 + Rounding));
            Assert.InRange(made.EffectiveShare, 0, 1 + Rounding);
        }, iter: 500);

    [Fact]
    public void Of_BuildOfManyYears_IsStillScheduled() => Assert.Equal(
        1, Throughput.Of(Always(), [new MixJob(new BuildStages(1e10), 1)], 1).EffectiveShare, Rounding);

    [Fact]
    public void Of_OneKind_MachinesDoNotHinderEachOther() =>
        Gen.Select(DrawnPlace.Any, DrawnPlace.Build, Gen.Int[2, 6]).Sample((place, build, machines) =>
        {
            MixJob[] mix = [new(build, 1e6)];
            Throughput one = Throughput.Of(place, mix, 1);
            Throughput all = Throughput.Of(place, mix, machines);
            // A number of weeks that differs cuts builds elsewhere.
            Assert.InRange(
                all.BuildsPerWeek - machines * one.BuildsPerWeek, -machines * Edges(one) - Edges(all),
                machines * Edges(one) + Edges(all));
        }, iter: 200);

    [Fact]
    public void Group_ManyJobs_KeepsTheSums() =>
        Gen.Select(DrawnPlace.Any, Lengths(5, 12).Array[50, 300]).Sample((place, drawn) =>
        {
            MixJob[] jobs = [.. drawn.Where(j => place.EverMakes(j.Stages))];
            if (jobs.Length == 0) return;

            MixJob[] grouped = [.. JobClasses.Of(place, jobs)];

            foreach (Func<MixJob, double> sum in Sums)
                Assert.Equal(jobs.Sum(sum), grouped.Sum(sum), 1e-9 * jobs.Sum(sum));
            Assert.All(grouped, j => Assert.True(place.EverMakes(j.Stages)));
        }, iter: 300);

    [Theory]
    [InlineData(null, 5.5, 7)]
    [InlineData(null, 7.5, 11)]
    [InlineData(null, 6.5, 12)]
    [InlineData(16.0, 7.5, 11)]
    [InlineData(16.0, 6.5, 12)]
    [InlineData(4.0, 7.5, 10.5)]
    [InlineData(0.0, 5.5, 10)]
    public void Group_ManyJobs_NearlyKeepsTheShare(double? alone, double from, double to)
    {
        // Fixed draws: what is told is an error seen, not a law.
        Place place = Office(new RunLimits { LongestUnattendedS = alone * H });
        Random random = new(1);
        MixJob[] jobs =
        [
            .. Enumerable.Range(0, 150)
                .Select(_ => new BuildStages(
                    Math.Exp(from + random.NextDouble() * (to - from)), 200, 900 * random.NextDouble(), 300, 120))
                .Select(s => new MixJob(s, 0.01 + 0.1 * random.NextDouble())).Where(j => place.EverMakes(j.Stages)),
        ];

        Assert.InRange(JobClasses.Of(place, jobs).Length, 2, JobClasses.Enough);
        double share = Throughput.Of(place, jobs, 1).EffectiveShare;
        Assert.InRange(share / Throughput.Ungrouped(place, jobs, 1).EffectiveShare, 0.95, 1.05);
    }

    /// <summary>Builds whose logarithm of seconds lies between two numbers.</summary>
    private static Gen<MixJob> Lengths(double from, double to) => Gen.Select(
        Gen.Double[from, to], Gen.Double[0, 900], Gen.Double[0.01, 0.1],
        (log, releaseS, perWeek) => new MixJob(new BuildStages(Math.Exp(log), 200, releaseS, 300, 120), perWeek));

    private static readonly Func<MixJob, double>[] Sums =
    [
        j => j.PerWeek, j => j.PerWeek * j.Parts, j => j.PerWeek * j.Stages.MachineS,
        j => j.PerWeek * j.Stages.HandlingS,
    ];

    /// <summary>Builds per week that the ends of the weeks may tell wrong: one of each machine at each end.</summary>
    private static double Edges(Throughput made) => 2.0 * made.Machines / made.WeeksSimulated + Rounding;
}
