namespace Platewright.Formats;

/// <summary>Sizes and names of the units of length.</summary>
public static class LengthUnits
{
    /// <summary>How many mm the unit is long.</summary>
    public static double ToMillimetres(this LengthUnit unit) => unit switch
    {
        LengthUnit.Micrometre => 0.001,
        LengthUnit.Millimetre => 1,
        LengthUnit.Centimetre => 10,
        LengthUnit.Metre => 1000,
        LengthUnit.Inch => 25.4,
        LengthUnit.Foot => 304.8,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a unit of length."),
    };

    /// <summary>The short name: um, mm, cm, m, in or ft.</summary>
    public static string Symbol(this LengthUnit unit) => unit switch
    {
        LengthUnit.Micrometre => "um",
        LengthUnit.Millimetre => "mm",
        LengthUnit.Centimetre => "cm",
        LengthUnit.Metre => "m",
        LengthUnit.Inch => "in",
        LengthUnit.Foot => "ft",
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a unit of length."),
    };

    /// <summary>
    /// The unit with that short or long name, in British or American spelling; null for any other word.
    /// </summary>
    public static LengthUnit? Named(string name) => name.Trim().ToLowerInvariant() switch
    {
        "um" or "µm" or "micron" or "micrometre" or "micrometer" => LengthUnit.Micrometre,
        "mm" or "millimetre" or "millimeter" => LengthUnit.Millimetre,
        "cm" or "centimetre" or "centimeter" => LengthUnit.Centimetre,
        "m" or "metre" or "meter" => LengthUnit.Metre,
        "in" or "inch" or "inches" => LengthUnit.Inch,
        "ft" or "foot" or "feet" => LengthUnit.Foot,
        _ => null,
    };
}
