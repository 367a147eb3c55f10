using Platewright.Sizing.Hours;
using static Platewright.Tests.Sizing.Hours.Places;

namespace Platewright.Tests.Sizing.Hours;

/// <summary>Weeks computed by hand.</summary>
public sealed class PlaceTests
{
    [Fact]
    public void EarliestStart_NoLimits_IsTheNextAttendedMoment()
    {
        Place place = Office();

        Assert.Equal(Mon(9.5), place.EarliestStart(Mon(9.5), 100 * H));
        Assert.Equal(Tue(8), place.EarliestStart(Mon(17.5), 100 * H));
        Assert.Equal(NextWeek(Mon(8)), place.EarliestStart(Fri(17.01), 1));
        Assert.Equal(double.PositiveInfinity, place.LongestRunS);
    }

    [Fact]
    public void EarliestStart_FourHoursAlone_LeavesTheEvening()
    {
        // Alone from 17:00, so a run is over by 21:00: 6 h start by 15:00, and 13 h at 08:00 are the longest.
        Place place = Office(new RunLimits { LongestUnattendedS = 4 * H });

        Assert.Equal(Mon(15), place.EarliestStart(Mon(15), 6 * H));
        Assert.Equal(Tue(8), place.EarliestStart(Mon(15) + 1, 6 * H));
        Assert.Equal(13 * H, place.LongestRunS);
        Assert.Equal(Mon(8), place.EarliestStart(0, 13 * H));
        Assert.Null(place.EarliestStart(0, 13 * H + 1));
        // Ten minutes to prepare are lost to the run.
        Assert.Equal(13 * H - 600, place.LongestRunWithS(600, 0, 0));
    }

    [Fact]
    public void EarliestStart_SixteenHoursAlone_RunsThroughNightsUpToTheWeekend()
    {
        // A night is 15 h, the weekend 63 h: Friday 17:00 + 16 h = Saturday 09:00, 5 days and 1 h after Monday 08:00.
        Place place = Office(new RunLimits { LongestUnattendedS = 16 * H });

        Assert.Equal(121 * H, place.LongestRunS);
        Assert.Equal(NextWeek(Mon(8)), place.EarliestStart(Tue(8), 100 * H));
        Assert.Equal(Tue(8), place.EarliestStart(Tue(8), 97 * H));
        Assert.Null(place.EarliestStart(0, 121 * H + 1));
    }

    [Fact]
    public void EarliestStart_AttendedThroughout_EndsBeforeTheLastOneLeaves()
    {
        Place place = Office(new RunLimits { LongestUnattendedS = 0 });

        Assert.Equal(9 * H, place.LongestRunS);
        Assert.Equal(Mon(12), place.EarliestStart(Mon(12), 5 * H));
        Assert.Equal(Tue(8), place.EarliestStart(Mon(12), 5.5 * H));
        Assert.Equal(45 * H, place.RunnableS);
    }

    [Fact]
    public void EarliestStart_NoNights_MayRunThroughLunch()
    {
        // 08:00-12:00 and 13:00-17:00: the hour between touches no midnight.
        AttendedWeek week = AttendedWeek.Of(
            [.. AttendedWindow.On(WorkingDays, 480, 720), .. AttendedWindow.On(WorkingDays, 780, 1020)]);
        Place lunch = new(week, new RunLimits { NightsAllowed = false });
        Place half = new(week, new RunLimits { NightsAllowed = false, LongestUnattendedS = H / 2 });

        Assert.Equal(9 * H, lunch.LongestRunS);
        Assert.Equal(Mon(8), lunch.EarliestStart(0, 9 * H));
        Assert.Equal(45 * H, lunch.RunnableS);
        // With half an hour alone it is over by 12:30.
        Assert.Equal(4.5 * H, half.LongestRunS);
        Assert.Equal(Mon(13), half.EarliestStart(Mon(9), 4 * H));
        // Half an hour of every lunch: 5 · (8 h + 0.5 h).
        Assert.Equal(42.5 * H, half.RunnableS);
    }

    [Fact]
    public void EarliestStart_NoWeekends_IsOverByFridaysMidnight()
    {
        Place place = Office(new RunLimits { WeekendsAllowed = false });

        Assert.Equal(Fri(15), place.EarliestStart(Fri(15), 9 * H));
        Assert.Equal(NextWeek(Mon(8)), place.EarliestStart(Fri(15), 9 * H + 1));
        // Monday 08:00 to Saturday 00:00.
        Assert.Equal(112 * H, place.LongestRunS);
    }

    [Fact]
    public void EarliestStart_NoWeekendsButSomebodyThereOnSaturday_MayRunThen()
    {
        Place place = new(
            AttendedWeek.Of([new(DayOfWeek.Saturday, 600, 840)]), new RunLimits { WeekendsAllowed = false });

        Assert.Equal(4 * H, place.LongestRunS);
        Assert.Equal(At(DayOfWeek.Saturday, 10), place.EarliestStart(0, 4 * H));
    }

    [Fact]
    public void EarliestStart_Lessons_HoldTheWholeOfIt()
    {
        // Two lessons of 45 min: 5 + 2 + 25 + 8 + 5 = 45 min fill one, and only from its beginning.
        Place place = new(
            AttendedWeek.Of([new(DayOfWeek.Monday, 480, 525), new(DayOfWeek.Monday, 540, 585)]),
            new RunLimits { LessonS = 45 * 60 });
        BuildStages stages = new(25 * 60, warmUpS: 120, releaseS: 480, prepareS: 300, takeOffS: 300);

        Assert.Equal(Mon(8), place.EarliestStart(0, stages));
        Assert.Equal(Mon(9), place.EarliestStart(Mon(8) + 1, stages));
        Assert.Equal(27 * 60, place.LongestRunWithS(300, 480, 300));
        Assert.False(place.EverMakes(new BuildStages(25 * 60 + 1, 120, 480, 300, 300)));
    }

    [Fact]
    public void EarliestStart_LessonInALongDay_IsNoLongerThanALesson()
    {
        Place place = Office(new RunLimits { LessonS = 90 * 60 });

        Assert.Equal(90 * 60, place.LongestRunS);
        Assert.Equal(Mon(15.5), place.EarliestStart(Mon(15.5), 90 * 60));
        Assert.Equal(Tue(8), place.EarliestStart(Mon(15.75), 90 * 60));
    }

    [Fact]
    public void EarliestStart_HandlingLongerThanAnyStretch_IsNever()
    {
        Place place = Office();

        Assert.Null(place.EarliestStart(0, new BuildStages(1, prepareS: 10 * H)));
        Assert.Null(place.EarliestStart(0, new BuildStages(1, takeOffS: 10 * H)));
        Assert.Equal(0, place.LongestRunWithS(0, 0, 10 * H));
    }

    [Fact]
    public void Plan_SomebodyAlwaysThere_WaitsForNothing()
    {
        PlannedBuild build = Always().Plan(1000, new BuildStages(500, 20, 30, 4, 5))!.Value;

        Assert.Equal(new PlannedBuild(1000, 1000, 1554, 1554, 1559), build);
    }

    [Theory]
    // Common practice, no source; unloading only 08:00-18:00, as planning benchmarks lack it. Build h, then in hand
    // (h from Monday 00:00), one after the other from Monday 08:00 on, no handling time, nights allowed.
    // 6 h: 08-14; 14-20, found at 08 (32); 32-38; 38-44, found at 56; 56-62.
    [InlineData(6.0, new[] { 14.0, 32, 38, 56, 62 })]
    // 10 h: 08-18 just in time; 18-28, found at 32; 32-42 just in time; 42-52, found at 56.
    [InlineData(10.0, new[] { 18.0, 32, 42, 56 })]
    // 14 h: 08-22, found at 32; 32-46, found at 56; 56-70, found at 80.
    [InlineData(14.0, new[] { 32.0, 56, 80 })]
    // 30 h: 08-38 (Tuesday 14:00); 38-68 (Wednesday 20:00), found at 80; 80-110 (Friday 14:00).
    [InlineData(30.0, new[] { 38.0, 80, 110 })]
    public void Plan_UnloadingOnlyEightToEighteen_IsAsComputedByHand(double hours, double[] inHand)
    {
        Place place = EveryDay();
        double now = Mon(8);
        foreach (double expected in inHand)
        {
            now = place.Plan(now, new BuildStages(hours * H))!.Value.InHandS;
            Assert.Equal(expected * H, now);
        }
    }

    [Fact]
    public void Plan_TakingOffNeedsTime_IsLostAtTheEndOfTheDay()
    {
        // 08:00 + 10 h = 18:00, but ten minutes to take it off are there only from Tuesday 08:00 on.
        PlannedBuild build = EveryDay().Plan(Mon(8), new BuildStages(10 * H, takeOffS: 600))!.Value;

        Assert.Equal(Mon(18), build.ReadyS);
        Assert.Equal(14 * H, build.WaitToTakeOffS);
        Assert.Equal(Tue(8) + 600, build.InHandS);
    }
}
