using System.Globalization;

namespace Platewright.Cli.Display;

/// <summary>A verdict in a few columns of text: a shape that says what it counts as, a word that says how.</summary>
internal static class VerdictCell
{
    public const int Columns = 12;

    public const string Legend =
        "● fits   ◐ fits with a compromise   ○ does not fit   ~ tight   † fits, but its heat or walls are out of reach";

    public static string Of(string verdict, string countsAs, bool tight, bool canMake, double? scale = null, int pieces = 0)
    {
        string word = verdict switch
        {
            "as_drawn" => "drawn",
            "scaled" when scale is { } s => Percent(s),
            "in_pieces" when pieces > 1 => $"{pieces} pcs",
            "in_pieces" => "pieces",
            _ => verdict,
        };
        return $"{Shape(countsAs)} {word}{(tight ? "~" : "")}{(countsAs != "no" && !canMake ? "†" : "")}";
    }

    public static string Colour(string countsAs) => countsAs switch
    {
        "fits" => "green",
        "compromise" => "yellow",
        _ => "red",
    };

    /// <summary>Rounded down: a scale that is shown is one that fits.</summary>
    public static string Percent(double scale) => (Math.Floor(scale * 1000) / 10).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    private static string Shape(string countsAs) => countsAs switch
    {
        "fits" => "●",
        "compromise" => "◐",
        _ => "○",
    };
}
