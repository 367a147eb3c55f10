using System.Globalization;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Xml;

/// <summary>Numbers out of attributes and elements, refused by line where they are none.</summary>
internal static class XmlNumbers
{
    /// <summary>Longest number taken for one; doubles need 24 characters.</summary>
    private const int LongestNumber = 128;

    /// <summary>A number with a decimal point and an exponent, finite.</summary>
    public static double Number(this XmlWalk walk, ReadOnlySpan<char> text)
    {
        if (TryNumber(text, out double number)) return number;
        ReadOnlySpan<char> trimmed = text.Trim();
        string shown = Shown(trimmed);
        throw trimmed.Contains(',')
            ? walk.Refuse($"{shown} is not a number", "export it again with a decimal point")
            : walk.Refuse($"{shown} is not a number");
    }

    /// <summary>The same; false where it is none.</summary>
    public static bool TryNumber(ReadOnlySpan<char> text, out double number)
    {
        number = 0;
        ReadOnlySpan<char> trimmed = text.Trim();
        Span<byte> token = stackalloc byte[LongestNumber];
        return trimmed.Length <= LongestNumber && TryNarrow(trimmed, token)
            && DecimalNumber.TryParse(token[..trimmed.Length], out number) && double.IsFinite(number);
    }

    /// <summary>A whole number from 0 on.</summary>
    public static int Index(this XmlWalk walk, ReadOnlySpan<char> text)
    {
        const NumberStyles style = NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite;
        if (int.TryParse(text, style, CultureInfo.InvariantCulture, out int index)) return index;
        throw walk.Refuse($"{Shown(text)} is not a whole number from 0 on");
    }

    /// <summary>A word fit to be shown in a sentence: short and printable.</summary>
    public static string Shown(ReadOnlySpan<char> word)
    {
        Span<byte> bytes = stackalloc byte[Math.Min(word.Length, 32)];
        for (int i = 0; i < bytes.Length; i++) bytes[i] = word[i] < 128 ? (byte)word[i] : (byte)'?';
        return TextScanner.Show(bytes);
    }

    private static bool TryNarrow(ReadOnlySpan<char> text, Span<byte> token)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] > 127) return false;
            token[i] = (byte)text[i];
        }
        return true;
    }
}
