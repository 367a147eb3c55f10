using Platewright.Sizing.Hours;

namespace Platewright.Tests.Sizing.Hours;

public sealed class AttendedWeekTests
{
    [Fact]
    public void Of_WorkingDays_HasOneStretchADay()
    {
        AttendedWeek week = Places.Office().Week;

        Assert.Equal(5, week.Stretches.Length);
        Assert.Equal(new Stretch(Places.Tue(8), Places.Tue(17)), week.Stretches[1]);
        Assert.Equal(45 * Places.H, week.AttendedS);
        Assert.False(week.IsAlways);
    }

    [Fact]
    public void Of_NightShiftOverSundaysMidnight_IsOneStretch()
    {
        AttendedWeek week = AttendedWeek.Of(
            [new(DayOfWeek.Monday, 0, 360), new(DayOfWeek.Sunday, 1320, 1440), new(DayOfWeek.Monday, 360, 400)]);

        Stretch only = Assert.Single(week.Stretches);
        Assert.Equal(Places.At(DayOfWeek.Sunday, 22), only.StartS);
        Assert.Equal((120 + 400) * 60, only.LengthS);
    }

    [Fact]
    public void Of_SevenWholeDays_IsAlways() =>
        Assert.True(AttendedWeek.Of(AttendedWindow.On(Enum.GetValues<DayOfWeek>(), 0, 1440)).IsAlways);

    [Theory]
    [InlineData(600, 480, "Tuesday ends at 08:00, not after its start at 10:00")]
    [InlineData(600, 600, "not after its start")]
    [InlineData(600, 1441, "Tuesday ends after 24:00: a day has 24 h")]
    [InlineData(-1, 600, "starts outside its day")]
    [InlineData(double.NaN, 600, "starts outside its day")]
    [InlineData(600, double.NaN, "ends after 24:00")]
    public void Problems_NonsenseWindow_SaysWhichAndWhy(double startMin, double endMin, string expected)
    {
        AttendedWindow[] windows =
            [new(DayOfWeek.Monday, 480, 1020), new(DayOfWeek.Tuesday, startMin, endMin)];

        WindowProblem problem = Assert.Single(AttendedWeek.Problems(windows));

        Assert.Equal(1, problem.Index);
        Assert.Contains(expected, problem.Sentence, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => AttendedWeek.Of(windows));
    }

    [Fact]
    public void Problems_OverlappingWindows_NamesTheLater()
    {
        AttendedWindow[] windows = [new(DayOfWeek.Friday, 700, 900), new(DayOfWeek.Friday, 480, 720)];

        WindowProblem problem = Assert.Single(AttendedWeek.Problems(windows));

        Assert.Equal(1, problem.Index);
        Assert.Contains("08:00 to 12:00 and 11:40 to 15:00", problem.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Problems_NoWindow_SaysNobodyIsEverThere()
    {
        WindowProblem problem = Assert.Single(AttendedWeek.Problems([]));

        Assert.Null(problem.Index);
        Assert.Contains("Nobody is ever there", problem.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Problems_TouchingWindowsOfTwoDays_AreNone() => Assert.Empty(AttendedWeek.Problems(
        [new(DayOfWeek.Monday, 480, 1440), new(DayOfWeek.Tuesday, 0, 60), new(DayOfWeek.Tuesday, 60, 90)]));

    [Theory]
    [InlineData(-1.0, null, nameof(RunLimits.LongestUnattendedS))]
    [InlineData(double.NaN, null, nameof(RunLimits.LongestUnattendedS))]
    [InlineData(null, 0.0, nameof(RunLimits.LessonS))]
    [InlineData(null, 100_000.0, nameof(RunLimits.LessonS))]
    public void Problems_NonsenseLimit_NamesIt(double? unattended, double? lesson, string property)
    {
        RunLimits limits = new() { LongestUnattendedS = unattended, LessonS = lesson };

        Assert.Equal(property, Assert.Single(RunLimits.Problems(limits)).Property);
        Assert.Throws<ArgumentException>(() => new Place(AttendedWeek.Always, limits));
    }

    [Fact]
    public void WeekTime_Moments_NameTheirDay()
    {
        Assert.Equal(DayOfWeek.Sunday, WeekTime.DayAt(Places.At(DayOfWeek.Sunday, 23.5)));
        Assert.Equal(DayOfWeek.Monday, WeekTime.DayAt(Places.NextWeek(0)));
        Assert.Equal(DayOfWeek.Sunday, WeekTime.DayAt(-1));
    }
}
