using System.Globalization;
using Platewright.Formats.Toml;
using Platewright.Machines;

namespace Platewright.Study.Interview;

/// <summary>
/// What a person answers about a machine, be it as an option or to a question. Every method refuses nonsense with what was
/// expected.
/// </summary>
public static class MachineAnswers
{
    private const double MostMinutes = 600;

    private static readonly char[] Separators = [',', ' ', ';', '×', 'x'];

    private static readonly NumberRange Millimetres = NumberRange.Positive(100_000, "mm");

    private static readonly NumberRange Watts = NumberRange.Positive(100_000, "W");

    private static readonly NumberRange Minutes = NumberRange.Positive(MostMinutes, "min");

    /// <summary>Below 30 °C nothing can be told of a bed.</summary>
    private static readonly NumberRange BedTemperature = new(30, 300, "°C");

    /// <summary>What beds are most often watched to, °C.</summary>
    private const double UsualBedC = 60;

    /// <summary>Width, depth, height; or diameter, height.</summary>
    public static BuildVolume Size(string text)
    {
        double[] numbers = Numbers(text);
        if (numbers.Length is not (2 or 3) || !numbers.All(Millimetres.Contains))
            throw Refused("--size", "three numbers of mm, as 220,220,250, or two for a round bed, diameter and height", text);
        return numbers is [double width, double depth, double height]
            ? new BoxVolume(width, depth, height)
            : new CylinderVolume(numbers[0], numbers[1]);
    }

    public static bool Closed(string text) => text.Trim().ToLowerInvariant() switch
    {
        "open" => false,
        "closed" => true,
        _ => throw Refused("--enclosure", "open or closed", text),
    };

    /// <summary>Watts of the supply, or of the bed heater with the word before them.</summary>
    public static (double Watts, bool OfBed) Power(string text)
    {
        string rest = text.Trim();
        bool ofBed = rest.StartsWith("bed", StringComparison.OrdinalIgnoreCase);
        if (ofBed) rest = rest["bed".Length..];
        return Numbers(rest) is [double watts] && Watts.Contains(watts)
            ? (watts, ofBed)
            : throw Refused("--watts", "watts of the supply, as 350, or of the bed heater, as \"bed 250\"", text);
    }

    /// <summary>Minutes, or minutes and °C; null for a bed that is not heated.</summary>
    /// <param name="text">The answer.</param>
    /// <param name="toC">Where the answer has no temperature: the one to take, or null for the usual one.</param>
    public static BedWarmUp? WarmUp(string text, double? toC = null)
    {
        if (string.Equals(text.Trim(), "none", StringComparison.OrdinalIgnoreCase)) return null;
        double[] numbers = Numbers(text.Replace("to", " ", StringComparison.OrdinalIgnoreCase));
        double temperature = numbers.Length == 2 ? numbers[1] : toC ?? UsualBedC;
        return numbers.Length is 1 or 2 && Minutes.Contains(numbers[0]) && BedTemperature.Contains(temperature)
            ? new BedWarmUp(numbers[0], temperature)
            : throw Refused(
                "--bed-minutes", "minutes, as 4, with a temperature from 30 to 300 °C, as \"4 to 60\"; or none", text);
    }

    public static Price Price(string text)
    {
        string[] words = text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        bool read = words.Length == 2 && words[1].Length == 3 && words[1].All(char.IsAsciiLetter)
            && decimal.TryParse(words[0], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out _);
        return read
            ? new Price(decimal.Round(decimal.Parse(words[0], CultureInfo.InvariantCulture), 2), words[1].ToUpperInvariant())
            : throw Refused("--price", "an amount and a currency, as \"450 EUR\"", text);
    }

    private static double[] Numbers(string text)
    {
        string[] words = text.Split(Separators, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        double[] numbers = new double[words.Length];
        for (int i = 0; i < words.Length; i++)
            if (!double.TryParse(words[i], NumberStyles.Float, CultureInfo.InvariantCulture, out numbers[i])) return [];
        return numbers;
    }

    private static DescriptionException Refused(string option, string expected, string text) =>
        new(new DescriptionError($"expected {expected}; found \"{text}\".", Key: option));
}
