using Platewright.Sizing.Hours;

namespace Platewright.Study.Deciding;

/// <summary>The place of a study file as sizing reckons with it.</summary>
internal static class Places
{
    private const double SecondsPerHour = 3600;

    private const double SecondsPerMinute = 60;

    private const int DaysPerWeek = 7;

    public static Place Of(PlacePlan plan) => new(
        plan.Attended.IsEmpty ? AttendedWeek.Always : AttendedWeek.Of(plan.Attended.SelectMany(Windows)),
        new RunLimits
        {
            NightsAllowed = plan.Nights,
            WeekendsAllowed = plan.Weekends,
            LongestUnattendedS = plan.LongestUnattendedH * SecondsPerHour,
            LessonS = plan.LessonMin * SecondsPerMinute,
        });

    private static IEnumerable<AttendedWindow> Windows(AttendedPlan plan) =>
        AttendedWindow.On(plan.Days.Select(d => (DayOfWeek)((d + 1) % DaysPerWeek)), plan.FromMin, plan.ToMin);
}
