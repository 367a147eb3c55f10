using System.Globalization;

namespace Platewright.Study;

/// <summary>Days and times of the week as study files write them: "mon", "mon-fri", "08:30", "friday 16:00".</summary>
internal static class WeekTimes
{
    private static readonly string[] Days = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"];

    private const int MinutesPerDay = 24 * 60;

    /// <summary>Minutes from midnight, 24:00 included; null for anything else.</summary>
    public static int? Minutes(string text)
    {
        string[] parts = text.Split(':');
        if (parts.Length != 2 || !Whole(parts[0], 24, out int hours) || !Whole(parts[1], 59, out int minutes)) return null;
        int sum = 60 * hours + minutes;
        return sum <= MinutesPerDay ? sum : null;
    }

    /// <summary>A day, or a range of days as mon-fri; null for anything else.</summary>
    public static IReadOnlyList<int>? DaysOf(string text)
    {
        string[] ends = text.Split('-');
        if (ends.Length > 2 || Day(ends[0]) is not { } first || Day(ends[^1]) is not { } last) return null;
        return last < first ? null : [.. Enumerable.Range(first, last - first + 1)];
    }

    /// <summary>As "friday 16:00": s from Monday 00:00; null for anything else.</summary>
    public static double? Moment(string text)
    {
        string[] parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 2 || Day(parts[0]) is not { } day || Minutes(parts[1]) is not { } minutes) return null;
        return 60.0 * (day * MinutesPerDay + minutes);
    }

    /// <summary>A moment as "friday 16:00"; one of a later week says so.</summary>
    public static string Said(double seconds)
    {
        long minutes = (long)Math.Round(seconds / 60);
        long day = minutes / MinutesPerDay, clock = minutes % MinutesPerDay;
        string week = day >= 7 ? " of the week after" : "";
        return string.Create(CultureInfo.InvariantCulture, $"{FullName((int)(day % 7))} {clock / 60:00}:{clock % 60:00}{week}");
    }

    // The first three letters tell days apart; what follows must still be the day's name.
    private static int? Day(string text)
    {
        string small = text.Trim().ToLowerInvariant();
        if (small.Length < 3) return null;
        int day = Array.IndexOf(Days, small[..3]);
        return day >= 0 && FullName(day).StartsWith(small, StringComparison.Ordinal) ? day : null;
    }

    private static string FullName(int day) =>
        CultureInfo.InvariantCulture.DateTimeFormat.DayNames[(day + 1) % 7].ToLowerInvariant();

    private static bool Whole(string text, int most, out int value) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && value <= most;
}
