using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Platewright.Tests.Study;

/// <summary>
/// Rebuilds the sentences of a decision sheet from study.json alone, as a reader without our code would: RFC 6901 pointers, and
/// the ways of saying a value as docs/sizing.md lists them.
/// </summary>
internal static partial class SheetRebuild
{
    public static string Sentence(JsonElement study, JsonElement sentence)
    {
        string currency = study.GetProperty("sizing").GetProperty("currency").GetString()!;
        string[] values =
        [
            .. sentence.GetProperty("values").EnumerateArray().Select(v =>
                Said(At(study, v.GetProperty("at").GetString()!), v.GetProperty("as").GetString()!, currency)),
        ];
        string pattern = sentence.GetProperty("pattern").GetString()!;
        return Hole().Replace(pattern, hole => values[int.Parse(hole.Value.Trim('{', '}'), CultureInfo.InvariantCulture)]);
    }

    /// <summary>The pattern without its holes.</summary>
    public static string Words(string pattern) => Hole().Replace(pattern, "");

    private static JsonElement At(JsonElement study, string pointer)
    {
        Assert.StartsWith("/", pointer, StringComparison.Ordinal);
        foreach (string escaped in pointer[1..].Split('/'))
        {
            string step = escaped.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            study = study.ValueKind == JsonValueKind.Array
                ? study[int.Parse(step, CultureInfo.InvariantCulture)]
                : study.GetProperty(step);
        }
        return study;
    }

    private static string Said(JsonElement value, string said, string currency)
    {
        if (said == "text") return value.GetString()!;
        decimal number = value.GetDecimal();
        return said switch
        {
            "count" => Grouped(number, 0),
            "percent" => Percent(number) + " %",
            "money" when number != 0 && number > -100 && number < 100 => number.ToString("F2", CultureInfo.InvariantCulture) + " " + currency,
            "money" => Grouped(number, 0) + " " + currency,
            "hours" => Grouped(number, number < 10 ? 1 : 0) + " h",
            "time" => Time(number),
            "m2" => Grouped(number, 2) + " m²",
            "watts" => Grouped(number, 0) + " W",
            "number" => Grouped(number, Math.Abs(number) switch { >= 100 => 0, >= 10 => 1, >= 1 => 2, _ => 3 }),
            _ => throw new ArgumentOutOfRangeException(nameof(said), said, "No such way to say a value."),
        };
    }

    private static string Percent(decimal share) => Grouped(100 * share, 100 * share is >= 10 and <= 99 ? 0 : 1);

    private static string Time(decimal seconds)
    {
        decimal whole = decimal.Round(seconds < 600 ? seconds : seconds / 60, MidpointRounding.AwayFromZero);
        string rest = (whole % 60).ToString("00", CultureInfo.InvariantCulture);
        return $"{Grouped(decimal.Floor(whole / 60), 0)}:{rest} {(seconds < 600 ? "min" : "h")}";
    }

    // Commas part thousands; decimals that are nothing are left out.
    private static string Grouped(decimal number, int decimals)
    {
        string text = decimal.Round(number, decimals, MidpointRounding.AwayFromZero).ToString("N" + decimals, CultureInfo.InvariantCulture);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    [GeneratedRegex(@"\{[0-9]+\}", RegexOptions.ExplicitCapture, MatchWithinMs)]
    private static partial Regex Hole();

    private const int MatchWithinMs = 1000;
}
