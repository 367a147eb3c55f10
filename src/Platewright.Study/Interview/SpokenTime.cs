using System.Globalization;

namespace Platewright.Study.Interview;

/// <summary>How people write how long something took: 2:35, 2:35:10, 155 min, 2.5 h.</summary>
public static class SpokenTime
{
    private const double SecondsPerMinute = 60, SecondsPerHour = 3600;

    private static readonly (string Unit, double Seconds)[] Units =
        [("minutes", SecondsPerMinute), ("min", SecondsPerMinute), ("hours", SecondsPerHour), ("h", SecondsPerHour)];

    /// <summary>Seconds, greater than 0; null for anything else, a bare number included: nobody knows its unit.</summary>
    public static double? Seconds(string text)
    {
        string time = text.Trim();
        double? seconds = time.Contains(':', StringComparison.Ordinal) ? Clock(time) : WithUnit(time);
        return seconds > 0 ? seconds : null;
    }

    private static double? Clock(string time)
    {
        string[] words = time.Split(':');
        if (words.Length is not (2 or 3)) return null;
        double sum = 0;
        for (int i = 0; i < words.Length; i++)
        {
            const int sixty = 60;
            if (!int.TryParse(words[i], NumberStyles.None, CultureInfo.InvariantCulture, out int part)) return null;
            if (i > 0 && part >= sixty) return null;
            sum += part * Math.Pow(sixty, 2 - i);
        }
        return sum;
    }

    private static double? WithUnit(string time)
    {
        foreach ((string unit, double factor) in Units)
        {
            if (!time.EndsWith(unit, StringComparison.OrdinalIgnoreCase)) continue;
            return double.TryParse(
                time[..^unit.Length].Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number)
                ? number * factor
                : null;
        }
        return null;
    }
}
