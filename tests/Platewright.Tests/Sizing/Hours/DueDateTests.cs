using CsCheck;
using Platewright.Sizing.Hours;
using static Platewright.Tests.Sizing.Hours.Places;

namespace Platewright.Tests.Sizing.Hours;

public sealed class DueDateTests
{
    private static readonly BuildStages SixHours = new(6 * H);

    [Fact]
    public void Of_TwentyFourByFridayWithNights_TakesThreeMachines()
    {
        // One machine: in hand Mon 14, Tue 8, Tue 14, Wed 8, Wed 14, Thu 8, Thu 14, Fri 8, Fri 14: nine; 24 / 9 → 3.
        // Eight each on three machines: Friday 08:00.
        DueDate due = DueDate.Of(Office(), SixHours, 24, 3, Mon(8), Fri(17));

        Assert.Equal(new DueDate(24, 3, Fri(8), 24, 3, Bottleneck.None), due);
        Assert.True(due.InTime);
    }

    [Fact]
    public void Of_TwentyFourByFridayWithoutNights_TakesFive()
    {
        // 08-14 each day, 14-20 is not allowed: five by Friday; 24 / 5 → 5 machines. On three: 15 done, the eighth
        // round on the second Wednesday at 14:00. With nights 27 could be done.
        DueDate due = DueDate.Of(Office(new RunLimits { NightsAllowed = false }), SixHours, 24, 3, Mon(8), Fri(17));

        Assert.Equal(
            new DueDate(24, 3, NextWeek(At(DayOfWeek.Wednesday, 14)), 15, 5, Bottleneck.Nights), due);
        Assert.False(due.InTime);
    }

    [Theory]
    // Two and a half hours alone end at 19:30, too early for 14-20.
    [InlineData(2.5, true, 24, 3, Bottleneck.UnattendedLimit)]
    // Both rules forbid it.
    [InlineData(2.5, false, 24, 3, Bottleneck.RulesTogether)]
    // Without any rule one machine makes 9 by Friday, day and night from Monday 08:00 to Friday 17:00 (105 h) 17.
    [InlineData(2.5, false, 30, 3, Bottleneck.AttendedHours)]
    [InlineData(2.5, false, 51, 3, Bottleneck.AttendedHours)]
    [InlineData(2.5, false, 52, 3, Bottleneck.MachineHours)]
    public void Of_TooFewInTime_NamesTheBottleneck(
        double alone, bool nights, int copies, int machines, Bottleneck expected)
    {
        Place place = Office(new RunLimits { LongestUnattendedS = alone * H, NightsAllowed = nights });

        Assert.Equal(expected, DueDate.Of(place, SixHours, copies, machines, Mon(8), Fri(17)).Bottleneck);
    }

    [Fact]
    public void Of_LessonTooShort_SaysLessonAndNever()
    {
        DueDate due = DueDate.Of(Office(new RunLimits { LessonS = 45 * 60 }), SixHours, 1, 1, Mon(8), Fri(17));

        Assert.Equal(new DueDate(1, 1, null, 0, null, Bottleneck.Lesson), due);
    }

    [Fact]
    public void Of_OverAWeekendWithoutRuns_SaysWeekends()
    {
        // Friday 14:00 + 12 h crosses into Saturday; with it, in hand on Monday 08:00.
        DueDate due = DueDate.Of(
            Office(new RunLimits { WeekendsAllowed = false }), new BuildStages(12 * H), 1, 1, Fri(14), NextWeek(Mon(9)));

        Assert.Equal(Bottleneck.Weekends, due.Bottleneck);
        Assert.Equal(NextWeek(Tue(8)), due.LastInHandS);
        Assert.Null(due.LeastMachines);
    }

    [Fact]
    public void Of_AnyPlace_MoreMachinesAreNeverLaterAndTheLeastIsLeast() =>
        Gen.Select(DrawnPlace.Any, DrawnPlace.Build, Gen.Int[1, 30], Gen.Int[1, 6], Gen.Double[0, 20])
            .Sample((place, build, copies, machines, days) =>
            {
                double due = days * WeekTime.DayS;
                DueDate one = DueDate.Of(place, build, copies, machines, 0, due);
                DueDate more = DueDate.Of(place, build, copies, machines + 1, 0, due);

                Assert.True(more.DoneByDue >= one.DoneByDue);
                Assert.True(more.LastInHandS is null == one.LastInHandS is null);
                if (one.LastInHandS is { } last)
                {
                    Assert.True(more.LastInHandS <= last);
                    Assert.Equal(last <= due, one.InTime);
                }
                Assert.Equal(one.InTime, one.Bottleneck == Bottleneck.None);
                if (one.LeastMachines is not { } least) return;
                Assert.True(DueDate.Of(place, build, copies, least, 0, due).InTime);
                if (least > 1) Assert.False(DueDate.Of(place, build, copies, least - 1, 0, due).InTime);
            }, iter: 500);
}
