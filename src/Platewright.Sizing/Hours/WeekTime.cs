namespace Platewright.Sizing.Hours;

/// <summary>
/// Moments of a week that repeats for ever, as seconds from a Monday 00:00. A moment of the second week lies between
/// <see cref="WeekS"/> and twice that. There are no time zones, no changes of the clock and no holidays.
/// </summary>
public static class WeekTime
{
    /// <summary>A minute, s.</summary>
    public const double MinuteS = 60;

    /// <summary>An hour, s.</summary>
    public const double HourS = 3600;

    /// <summary>A day, s.</summary>
    public const double DayS = 24 * HourS;

    /// <summary>A week, s.</summary>
    public const double WeekS = 7 * DayS;

    /// <summary>Weeks in a mean month: 365.25 days in 12 months of weeks of 7 days.</summary>
    public const double WeeksPerMonth = 365.25 / 12 / 7;

    /// <summary>Saturday 00:00, s; the weekend ends with the week.</summary>
    public const double WeekendS = 5 * DayS;

    /// <summary>
    /// Two moments this near are one, s: sums of seconds round at about 1e-8 s after some years of weeks, and nobody
    /// is a microsecond late.
    /// </summary>
    public const double SameMomentS = 1e-6;

    /// <summary>A moment of the first week, s.</summary>
    /// <param name="day">Monday is the first day.</param>
    /// <param name="minutes">From midnight, 0 … 1440.</param>
    /// <exception cref="ArgumentOutOfRangeException">Minutes outside their range.</exception>
    public static double Moment(DayOfWeek day, double minutes)
    {
        if (!(minutes >= 0 && minutes * MinuteS <= DayS))
            throw new ArgumentOutOfRangeException(nameof(minutes), minutes, "Expected 0 to 1440.");
        return DayIndex(day) * DayS + minutes * MinuteS;
    }

    /// <summary>0 for Monday … 6 for Sunday.</summary>
    public static int DayIndex(DayOfWeek day) => ((int)day + 6) % 7;

    /// <summary>The day a moment of any week lies in.</summary>
    public static DayOfWeek DayAt(double momentS) =>
        (DayOfWeek)(((int)Math.Floor(WithinWeek(momentS) / DayS) + 1) % 7);

    /// <summary>The same moment in the first week, at least 0, less than <see cref="WeekS"/>, s.</summary>
    public static double WithinWeek(double momentS) =>
        Math.Clamp(momentS - Math.Floor(momentS / WeekS) * WeekS, 0, Math.BitDecrement(WeekS));
}
