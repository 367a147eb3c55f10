using System.Globalization;

namespace Platewright.Cli.Display;

/// <summary>Durations for people: hours and minutes.</summary>
internal static class DurationText
{
    /// <summary>As 3:07, hours and minutes; under ten minutes as 8:30 min.</summary>
    public static string Of(double seconds)
    {
        if (seconds < 600)
        {
            int whole = (int)Math.Round(seconds);
            return string.Create(CultureInfo.InvariantCulture, $"{whole / 60}:{whole % 60:00} min");
        }
        long minutes = (long)Math.Round(seconds / 60);
        return string.Create(CultureInfo.InvariantCulture, $"{minutes / 60}:{minutes % 60:00} h");
    }
}
