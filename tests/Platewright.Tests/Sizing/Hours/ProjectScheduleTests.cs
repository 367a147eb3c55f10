using System.Text.Json;
using CsCheck;
using Platewright.Sizing.Hours;
using static Platewright.Tests.Sizing.Hours.Places;

namespace Platewright.Tests.Sizing.Hours;

public sealed class ProjectScheduleTests
{
    private const double Rounding = 1e-9;

    [Fact]
    public void LongestFirst_GrahamsTightExample_IsMet()
    {
        string file = Repository.SharedOrSkip("reference", "scheduling", "pcmax_graham_m5.json");
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(file));
        JsonElement root = document.RootElement;
        JsonElement best = root.GetProperty("best_known");
        int machines = root.GetProperty("machines").GetInt32();
        BuildStages[] jobs =
            [.. root.GetProperty("processing_times").EnumerateArray().Select(t => new BuildStages(t.GetDouble()))];

        double whole = ProjectSchedule.LongestFirst(Always(), jobs, machines, 0).WholeInHandS;

        Assert.Equal(best.GetProperty("lpt_value").GetDouble(), whole, Rounding);
        Assert.True(whole <= best.GetProperty("value").GetDouble() * Graham(machines) + Rounding);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(7)]
    public void LongestFirst_GrahamsFamily_TakesFourNMinusOne(int n)
    {
        // Graham 1969: two each of 2n−1 … n+1, three of n: longest first takes 4n − 1, the optimum is 3n.
        BuildStages[] jobs =
        [
            .. Enumerable.Range(n + 1, n - 1).SelectMany(t => new[] { t, t }).Concat([n, n, n])
                .Select(t => new BuildStages(t)),
        ];

        Assert.Equal(4 * n - 1, ProjectSchedule.LongestFirst(Always(), jobs, n, 0).WholeInHandS, Rounding);
    }

    [Fact]
    public void LongestFirst_SomebodyAlwaysThere_LiesBetweenItsBounds() =>
        Gen.Select(Gen.Int[1, 50].Array[1, 8], Gen.Int[1, 3]).Sample((times, machines) =>
        {
            BuildStages[] jobs = [.. times.Select(t => new BuildStages(t))];
            double whole = ProjectSchedule.LongestFirst(Always(), jobs, machines, 0).WholeInHandS;
            int optimum = Optimum(times, machines);

            Assert.True(whole >= optimum && whole >= times.Max() && whole * machines >= times.Sum());
            Assert.True(whole <= optimum * Graham(machines) + Rounding);
        }, iter: 1000);

    [Fact]
    public void Sooner_ShortAndLong_LeavesTheLongOnesForTheNight()
    {
        // 5 h and 14 h from Monday 08:00, 08-18 every day. The longest first: 08-22, found Tuesday 08:00; 08-13. The
        // other way round: 08-13, then 13-27, found Tuesday 08:00.
        BuildStages[] jobs = [new(5 * H), new(14 * H)];

        Assert.Equal(Tue(13), ProjectSchedule.LongestFirst(EveryDay(), jobs, 1, Mon(8)).WholeInHandS);
        ProjectSchedule sooner = ProjectSchedule.Sooner(EveryDay(), jobs, 1, Mon(8));
        Assert.Equal(Tue(8), sooner.WholeInHandS);
        Assert.Equal(Mon(13), sooner.FirstInHandS);
    }

    [Fact]
    public void Sooner_AnyPlace_GivesEveryBuildOnceAndNeverTwoToAMachine() =>
        Gen.Select(DrawnPlace.Any, DrawnPlace.Build.Array[1, 12], Gen.Int[1, 4], DrawnPlace.Moment)
            .Sample((place, drawn, machines, start) =>
            {
                BuildStages[] builds = [.. drawn.Where(place.EverMakes)];
                if (builds.Length == 0) return;
                ProjectSchedule schedule = ProjectSchedule.Sooner(place, builds, machines, start);

                Assert.Equal(Enumerable.Range(0, builds.Length), schedule.Builds.Select(b => b.Job).Order());
                foreach (IGrouping<int, ScheduledBuild> machine in schedule.Builds.GroupBy(b => b.Machine))
                {
                    double free = start;
                    foreach (ScheduledBuild build in machine)
                    {
                        Assert.True(build.When.AskedS == free);
                        Assert.Equal(place.Plan(free, builds[build.Job]), build.When);
                        free = build.When.InHandS;
                    }
                }
            }, iter: 500);

    [Fact]
    public void LongestFirst_BuildNeverMadeHere_IsRefused() => Assert.Throws<ArgumentException>(() =>
        ProjectSchedule.LongestFirst(
            Office(new RunLimits { LongestUnattendedS = 0 }), [new(H), new(10 * H)], 1, 0));

    private static double Graham(int machines) => 4.0 / 3 - 1.0 / (3 * machines);

    private static int Optimum(int[] times, int machines)
    {
        int[] loads = new int[machines];
        int best = times.Sum();
        Try(0);
        return best;

        void Try(int job)
        {
            if (job == times.Length)
            {
                best = Math.Min(best, loads.Max());
                return;
            }
            for (int m = 0; m < machines; m++)
            {
                loads[m] += times[job];
                Try(job + 1);
                loads[m] -= times[job];
            }
        }
    }
}
