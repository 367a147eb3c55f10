using System.Globalization;

namespace Platewright.Formats.Toml;

/// <summary>Which numbers a key takes, and how to say so.</summary>
/// <param name="Least">Smallest value.</param>
/// <param name="Most">Largest value, itself allowed.</param>
/// <param name="Unit">Unit to show, as mm; empty for a pure number.</param>
/// <param name="WithoutLeast">True when the smallest value itself is refused.</param>
public sealed record NumberRange(double Least, double Most, string Unit = "", bool WithoutLeast = false)
{
    /// <summary>Greater than 0, at most <paramref name="most"/>.</summary>
    public static NumberRange Positive(double most, string unit = "") => new(0, most, unit, WithoutLeast: true);

    public bool Contains(double value) =>
        double.IsFinite(value) && (WithoutLeast ? value > Least : value >= Least) && value <= Most;

    /// <summary>As "greater than 0 and at most 600 °C".</summary>
    public override string ToString()
    {
        string least = Least.ToString(CultureInfo.InvariantCulture);
        string most = Most.ToString(CultureInfo.InvariantCulture) + (Unit.Length == 0 ? "" : " " + Unit);
        return WithoutLeast ? $"greater than {least} and at most {most}" : $"from {least} to {most}";
    }
}
