using CsCheck;
using Platewright.Sizing.Hours;
using static Platewright.Tests.Sizing.Hours.Places;

namespace Platewright.Tests.Sizing.Hours;

public sealed class TurnRoundTests
{
    private const double Nanoseconds = 1e-6;

    [Fact]
    public void At_AfterHours_ToldStageByStage()
    {
        // Changed Monday 19:00; somebody from Tuesday 08:00: 13 h. 10 min + 5 min + 10 h + 30 min: ready at 18:45, and
        // somebody from Wednesday 08:00: 13 h 15 min.
        BuildStages stages = new(10 * H, warmUpS: 300, releaseS: 1800, prepareS: 600, takeOffS: 120);

        TurnRound turn = TurnRound.At(Office(), stages, Mon(19))!;

        Assert.Equal(new TurnRound(13 * H, 600, 300, 10 * H, 1800, 13.25 * H, 120), turn);
        Assert.Equal(37 * H + 120, turn.TotalS);
    }

    [Fact]
    public void Range_SixHoursEveryDay_IsAsComputedByHand()
    {
        // Asked from 08:00 to 12:00, it is in hand after 6 h. Asked at t in (12:00, 18:00], it is ready after hours and
        // in hand at 08:00 of the next day, after 32 h − t: from 20 h down to 14 h, 17 h in the mean.
        // Mean (4 · 6 + 6 · 17) / 10 = 12.6 h.
        TurnRoundRange range = TurnRoundRange.Of(EveryDay(), new BuildStages(6 * H))!;

        Assert.Equal(6 * H, range.Best.TotalS, Nanoseconds);
        Assert.Equal(12.6 * H, range.Mean.TotalS, Nanoseconds);
        Assert.Equal(20 * H, range.Worst.TotalS, Nanoseconds);
        Assert.Equal(0, range.Mean.WaitToStartS);
    }

    [Fact]
    public void Range_AttendedThroughout_WaitsToStart()
    {
        // 6 h in 10 h: asked until 12:00 at once, later at 08:00 of the next day: 32 h − t + 6 h, from 26 h to 20 h.
        // Mean (4 · 6 + 6 · 23) / 10 = 16.2 h.
        TurnRoundRange range = TurnRoundRange.Of(
            EveryDay(new RunLimits { LongestUnattendedS = 0 }), new BuildStages(6 * H))!;

        Assert.Equal(16.2 * H, range.Mean.TotalS, Nanoseconds);
        Assert.Equal(26 * H, range.Worst.TotalS, Nanoseconds);
        Assert.Equal(0, range.Mean.WaitToTakeOffS, Nanoseconds);
    }

    [Fact]
    public void Range_SomebodyAlwaysThere_IsOneNumber()
    {
        BuildStages stages = new(5000, 300, 200, 60, 40);
        TurnRoundRange range = TurnRoundRange.Of(Always(), stages)!;

        Assert.Equal(5600, range.Best.TotalS);
        Assert.Equal(range.Best, range.Worst);
        Assert.Equal(range.Best, range.Mean);
    }

    [Fact]
    public void Range_NeverHere_IsNull() => Assert.Null(TurnRoundRange.Of(
        Office(new RunLimits { LongestUnattendedS = 0 }), new BuildStages(10 * H)));

    [Fact]
    public void Range_AnyPlace_IsWhatManyMomentsShow() =>
        Gen.Select(DrawnPlace.Any, DrawnPlace.Build).Sample((place, build) =>
        {
            if (TurnRoundRange.Of(place, build) is not { } range) return;
            // All turns lie on the grid: between two of its moments totals are linear, the middle is the mean.
            double[] totals =
            [
                .. place.Week.Stretches.SelectMany(s => Enumerable.Range(0, (int)(s.LengthS / DrawnPlace.StepS))
                    .Select(i => s.StartS + (i + 0.5) * DrawnPlace.StepS))
                    .Select(t => TurnRound.At(place, build, t)!.TotalS),
            ];
            Assert.Equal(totals.Average(), range.Mean.TotalS, 1e-3);
            Assert.InRange(range.Worst.TotalS - totals.Max(), -Nanoseconds, DrawnPlace.StepS / 2 + Nanoseconds);
            Assert.InRange(totals.Min() - range.Best.TotalS, -Nanoseconds, DrawnPlace.StepS / 2 + Nanoseconds);
        }, iter: 500);

    [Fact]
    public void InDay_NinetyMinutesAndHalfAnHourToLook_IsFour()
    {
        // In hand at 9:30, 11:30, 13:30, 15:30; 17:30 is too late. A fifth less: 72 min, in hand at 9:12, 10:54, 12:36,
        // 14:18, 16:00; 17:42 is too late. Half more: 135 min, at 10:15, 13:00, 15:45; 18:30 is too late.
        Iterations day = Iterations.InDay(
            Office(), new BuildStages(90 * 60), 30 * 60, DayOfWeek.Wednesday, new TimeDoubt(0.8, 1.5));

        Assert.Equal(new Iterations(4, 3, 5), day);
    }

    [Fact]
    public void InWeek_LongBuild_IsCountedOvernight()
    {
        // 10 h: Monday 08:00 to 18:00, found Tuesday 08:00 … found Friday 08:00 (the fourth); the fifth next Monday.
        BuildStages stages = new(10 * H);

        Assert.Equal(4, Iterations.InWeek(Office(), stages, 0, TimeDoubt.None).Count);
        Assert.Equal(0, Iterations.InDay(Office(), stages, 0, DayOfWeek.Monday, TimeDoubt.None).Count);
        Assert.Equal(0, Iterations.InDay(Office(), new BuildStages(60), 0, DayOfWeek.Sunday, TimeDoubt.None).Count);
    }

    [Fact]
    public void InWeek_AnyDoubt_NeverGivesMoreForLongerTimes() =>
        Gen.Select(DrawnPlace.Any, DrawnPlace.Build, Gen.Double[0.3, 1], Gen.Double[1, 3], Gen.Int[0, 90])
            .Sample((place, build, low, high, look) =>
            {
                Iterations week = Iterations.InWeek(place, build, look * 60, new TimeDoubt(low, high));
                Assert.True(week.Fewest <= week.Count && week.Count <= week.Most);
            }, iter: 300);
}
