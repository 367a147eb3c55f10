using Platewright.Sizing.Hours;

namespace Platewright.Tests.Sizing.Hours;

/// <summary>Invented places, and moments in them.</summary>
internal static class Places
{
    public const double H = WeekTime.HourS;

    public static readonly DayOfWeek[] WorkingDays =
        [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    /// <summary>Monday to Friday, 08:00 to 17:00.</summary>
    public static Place Office(RunLimits? limits = null) => Open(WorkingDays, 8, 17, limits);

    /// <summary>Every day, 08:00 to 18:00.</summary>
    public static Place EveryDay(RunLimits? limits = null) => Open(Enum.GetValues<DayOfWeek>(), 8, 18, limits);

    public static Place Always(RunLimits? limits = null) => new(AttendedWeek.Always, limits ?? RunLimits.None);

    public static Place Open(IEnumerable<DayOfWeek> days, double from, double to, RunLimits? limits = null) =>
        new(AttendedWeek.Of(AttendedWindow.On(days, from * 60, to * 60)), limits ?? RunLimits.None);

    public static double Mon(double hour) => At(DayOfWeek.Monday, hour);

    public static double Tue(double hour) => At(DayOfWeek.Tuesday, hour);

    public static double Fri(double hour) => At(DayOfWeek.Friday, hour);

    public static double At(DayOfWeek day, double hour) => WeekTime.DayIndex(day) * WeekTime.DayS + hour * H;

    public static double NextWeek(double moment) => moment + WeekTime.WeekS;
}
