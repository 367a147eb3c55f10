using System.Globalization;
using System.Text.Json;

namespace Platewright.Study.Deciding.Sheet;

/// <summary>How a value of study.json is said on the sheet. Commas part thousands, a point parts decimals.</summary>
internal static class ValueText
{
    // From here on nobody asks for decimals: own choice, no source.
    private const decimal WholeMoneyFrom = 100;
    private const double WholeHoursFrom = 10;
    private const double WholePercentFrom = 10;
    private const double WholePercentUpTo = 99;
    private const double MinutesOnlyBelowS = 600;

    /// <param name="at">The value.</param>
    /// <param name="said">text, count, percent, points, money, hours, time, mm, m2, watts, kwh, number.</param>
    /// <param name="currency">ISO 4217.</param>
    /// <exception cref="ArgumentException">There is no such way to say it.</exception>
    public static string Of(JsonElement at, string said, string currency) => said switch
    {
        "text" => at.GetString()!,
        "count" => Said($"{at.GetInt64():#,0}"),
        "percent" => $"{Hundredths(at.GetDouble())} %",
        "points" => Hundredths(at.GetDouble()),
        "money" => $"{Money(at.GetDecimal())} {currency}",
        "hours" => $"{Hours(at.GetDouble())} h",
        "time" => Time(at.GetDouble()),
        "mm" => Said($"{at.GetDouble():#,0} mm"),
        "m2" => Said($"{at.GetDouble():#,0.##} m²"),
        "watts" => Said($"{at.GetDouble():#,0} W"),
        "kwh" => Said($"{at.GetDouble():#,0.#} kWh"),
        "number" => Number(at.GetDouble()),
        _ => throw new ArgumentException($"A value cannot be said as \"{said}\".", nameof(said)),
    };

    // Small shares, and those that are nearly all, keep a decimal: "all" and "none" must not come from rounding alone.
    private static string Hundredths(double share)
    {
        double hundredths = 100 * share, size = Math.Abs(hundredths);
        return size is >= WholePercentFrom and <= WholePercentUpTo ? Said($"{hundredths:0}") : Said($"{hundredths:0.#}");
    }

    private static string Money(decimal money) => Math.Abs(money) >= WholeMoneyFrom || money == 0 ? Said($"{money:#,0}") : Said($"{money:0.00}");

    // Three digits that count, as far as thousandths.
    private static string Number(double number) => Math.Abs(number) switch
    {
        >= 100 => Said($"{number:#,0}"),
        >= 10 => Said($"{number:0.#}"),
        >= 1 => Said($"{number:0.##}"),
        _ => Said($"{number:0.###}"),
    };

    private static string Hours(double hours) => hours >= WholeHoursFrom ? Said($"{hours:#,0}") : Said($"{hours:0.#}");

    private static string Time(double seconds)
    {
        if (seconds < MinutesOnlyBelowS)
        {
            long whole = (long)Math.Round(seconds, MidpointRounding.AwayFromZero);
            return Said($"{whole / 60}:{whole % 60:00} min");
        }
        long minutes = (long)Math.Round(seconds / 60, MidpointRounding.AwayFromZero);
        return Said($"{minutes / 60:#,0}:{minutes % 60:00} h");
    }

    private static string Said(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
