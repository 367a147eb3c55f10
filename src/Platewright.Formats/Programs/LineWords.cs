using System.Numerics;
using System.Text;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Programs;

/// <summary>
/// The words of one line: a letter and a number each, in any order, comments and check sums taken out. RS-274 allows
/// spaces anywhere between them, and each letter but G and M once.
/// </summary>
internal sealed class LineWords
{
    private const int Letters = 26;
    private const int MostCodes = 16;
    private const int LongestShown = 24;

    private readonly double[] _values = new double[Letters];
    private readonly int[] _gCodes = new int[MostCodes];
    private readonly int[] _mCodes = new int[MostCodes];
    private uint _stated;
    private uint _bare;
    private int _gCount;
    private int _mCount;

    /// <summary>G words × 10, so that G92.1 is 921.</summary>
    public ReadOnlySpan<int> GCodes => _gCodes.AsSpan(0, _gCount);

    /// <summary>M words × 10.</summary>
    public ReadOnlySpan<int> MCodes => _mCodes.AsSpan(0, _mCount);

    public bool IsEmpty => _stated == 0 && _bare == 0 && _gCount == 0 && _mCount == 0;

    public void Clear()
    {
        _stated = _bare = 0;
        _gCount = _mCount = 0;
    }

    /// <summary>True where the word has a number.</summary>
    public bool Has(char letter) => (_stated & Bit(letter)) != 0;

    /// <summary>True where the word stands there, with a number or bare as in <c>G28 X</c>.</summary>
    public bool Names(char letter) => ((_stated | _bare) & Bit(letter)) != 0;

    public double this[char letter] => _values[letter - 'A'];

    /// <summary>A letter other than G and M that stands without a number; null for none.</summary>
    public char? FirstBare => _bare == 0 ? null : (char)('A' + BitOperations.TrailingZeroCount(_bare));

    /// <summary>Letters with a number among those given, for words nobody reads.</summary>
    public uint StatedOutside(uint known) => _stated & ~known;

    public static uint Bit(char letter) => 1u << (letter - 'A');

    /// <summary>Digits, signs and points as they stand, cut short.</summary>
    private static string Shown(ReadOnlySpan<byte> number) =>
        Encoding.ASCII.GetString(number[..Math.Min(number.Length, LongestShown)]);

    /// <summary>What is wrong with adding the word, without a full stop; null where it is added.</summary>
    public string? Add(char letter, ReadOnlySpan<byte> number)
    {
        if (number.IsEmpty)
        {
            if (letter is 'G' or 'M') return $"{letter} has no number";
            if (Names(letter)) return $"{letter} stands there twice";
            _bare |= Bit(letter);
            return null;
        }
        if (!DecimalNumber.TryParse(number, out double value))
            return $"{letter}{Shown(number)} is not a number";
        if (!ReadRequest.IsInRange(value)) return $"{letter}{Shown(number)} is too large";
        if (letter is 'G' or 'M')
        {
            double code = Math.Round(value * 10);
            if (Math.Abs(code - value * 10) > 1e-6 || code is < 0 or > 99_999)
                return $"{letter}{Shown(number)} is no word of a program";
            ref int count = ref letter == 'G' ? ref _gCount : ref _mCount;
            if (count == MostCodes) return $"it holds more than {MostCodes} {letter} words";
            (letter == 'G' ? _gCodes : _mCodes)[count++] = (int)code;
            return null;
        }
        if (Names(letter)) return $"{letter} stands there twice";
        _stated |= Bit(letter);
        _values[letter - 'A'] = value;
        return null;
    }
}
