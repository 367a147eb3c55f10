using System.Globalization;

namespace Platewright.Formats.Reading;

/// <summary>
/// Numbers as mesh files write them: sign, digits, point, exponent. Nothing else passes: no comma, no NaN, no Infinity.
/// </summary>
internal static class DecimalNumber
{
    /// <summary>Whole numbers up to here have an exact double.</summary>
    private const ulong GreatestExact = 1UL << 53;

    private static readonly double[] PowersOfTen =
    [
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11,
        1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
    ];

    /// <summary>The nearest double, exactly rounded; infinite where the number is out of range.</summary>
    public static bool TryParse(ReadOnlySpan<byte> token, out double value)
    {
        value = 0;
        int i = 0;
        bool negative = false;
        if (token.Length > 0 && token[0] is (byte)'-' or (byte)'+') negative = token[i++] == '-';

        ulong mantissa = 0;
        int digits = 0;
        int significant = 0;
        int exponent = 0;
        bool afterPoint = false;
        for (; i < token.Length; i++)
        {
            uint digit = token[i] - (uint)'0';
            if (digit <= 9)
            {
                digits++;
                if (significant < 18)
                {
                    mantissa = mantissa * 10 + digit;
                    if (mantissa > 0) significant++;
                }
                else
                {
                    significant = int.MaxValue;
                }
                if (afterPoint) exponent--;
            }
            else if (token[i] == '.' && !afterPoint)
            {
                afterPoint = true;
            }
            else
            {
                break;
            }
        }
        if (digits == 0) return false;
        if (i < token.Length && !TryExponent(token[i..], ref exponent)) return false;

        if (significant <= 18 && mantissa <= GreatestExact && exponent is >= -22 and <= 22)
        {
            // Both factors are exact, so one rounding gives the nearest double (Clinger 1990, fast path).
            double exact = exponent < 0 ? mantissa / PowersOfTen[-exponent] : mantissa * PowersOfTen[exponent];
            value = negative ? -exact : exact;
            return true;
        }
        return double.TryParse(token, NumberStyles.Float, CultureInfo.InvariantCulture, out value);
    }

    private static bool TryExponent(ReadOnlySpan<byte> rest, ref int exponent)
    {
        if (rest[0] is not ((byte)'e' or (byte)'E')) return false;
        int i = 1;
        bool negative = false;
        if (i < rest.Length && rest[i] is (byte)'-' or (byte)'+') negative = rest[i++] == '-';
        if (i == rest.Length) return false;
        int stated = 0;
        for (; i < rest.Length; i++)
        {
            uint digit = rest[i] - (uint)'0';
            if (digit > 9) return false;
            stated = Math.Min(stated * 10 + (int)digit, 100_000);
        }
        exponent += negative ? -stated : stated;
        return true;
    }
}
