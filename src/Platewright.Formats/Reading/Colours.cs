using System.Globalization;

namespace Platewright.Formats.Reading;

/// <summary>Colours as files write them, made #RRGGBB.</summary>
internal static class Colours
{
    /// <summary>#RRGGBB of #RRGGBB or #RRGGBBAA (sRGB; transparency is dropped); null for anything else.</summary>
    public static string? FromHex(string? text)
    {
        string trimmed = text?.Trim() ?? "";
        if (trimmed.Length is not (7 or 9) || trimmed[0] != '#') return null;
        return trimmed.Skip(1).All(char.IsAsciiHexDigit) ? trimmed[..7].ToUpperInvariant() : null;
    }

    /// <summary>#RRGGBB of shares from 0 to 1; shares beyond are cut off.</summary>
    public static string FromShares(double red, double green, double blue) =>
        string.Create(CultureInfo.InvariantCulture, $"#{Byte(red):X2}{Byte(green):X2}{Byte(blue):X2}");

    private static int Byte(double share) => (int)Math.Round(255 * Math.Clamp(share, 0, 1));
}
