using System.Buffers;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Programs;

/// <summary>
/// Takes a line apart into words. What begins like no word, or with a G or M word the reader does not know, is named
/// and the rest of the line passed over: other words may have text behind them that is no word at all.
/// </summary>
internal ref struct LineParser(
    ReadOnlySpan<byte> line, LineWords words, UnknownWords unknown, ReadRequest request, int number)
{
    private static readonly SearchValues<byte> NumberBytes = SearchValues.Create("0123456789.-+"u8);

    private readonly ReadOnlySpan<byte> _line = line;
    private int _at;

    public void Parse()
    {
        words.Clear();
        bool first = true;
        while (TrySkipToWord())
        {
            byte c = _line[_at];
            char letter = (char)(c & ~0x20);
            if (letter is < 'A' or > 'Z' || c > 127)
            {
                if (!first) throw Refuse($"{TextScanner.Show(_line[_at..])} is no word of a program");
                unknown.Count(UnknownWords.NameOf(_line[_at..]), number);
                return;
            }
            if (IsName())
            {
                if (!first) throw Refuse($"{TextScanner.Show(_line[_at..])} is no word of a program");
                unknown.Count(UnknownWords.NameOf(_line[_at..]), number);
                return;
            }
            _at++;
            ReadOnlySpan<byte> digits = TakeNumber();
            // A number of the line, or of the program.
            if (letter == 'N' && first && !digits.IsEmpty) continue;
            if (first && digits.IsEmpty)
            {
                unknown.Count(UnknownWords.NameOf(_line[(_at - 1)..]), number);
                return;
            }
            first = false;
            if (words.Add(letter, digits) is string problem) throw Refuse(problem);
            if (letter is 'G' or 'M' && StopsAt(letter)) return;
        }
    }

    /// <summary>True after a word whose line ends for us: unknown, or with text behind it.</summary>
    private readonly bool StopsAt(char letter)
    {
        int code = letter == 'G' ? words.GCodes[^1] : words.MCodes[^1];
        switch (letter == 'G' ? KnownWords.OfG(code) : KnownWords.OfM(code))
        {
            case WordUse.Read:
            case WordUse.NoEffect:
                return false;
            case WordUse.Remark:
                return true;
            default:
                unknown.Count(code % 10 == 0 ? $"{letter}{code / 10}" : $"{letter}{code / 10}.{code % 10}", number);
                return true;
        }
    }

    private bool TrySkipToWord()
    {
        while (_at < _line.Length)
        {
            switch (_line[_at])
            {
                case <= (byte)' ' or (byte)'/' or (byte)'%':
                    _at++;
                    break;
                case (byte)'(':
                    int close = _line[_at..].IndexOf((byte)')');
                    if (close < 0) return false;
                    _at += close + 1;
                    break;
                case (byte)';' or (byte)'*':
                    return false;
                default:
                    return true;
            }
        }
        return false;
    }

    /// <summary>True for two letters side by side: a name, not a word.</summary>
    private readonly bool IsName() =>
        _at + 1 < _line.Length && (char.IsAsciiLetter((char)_line[_at + 1]) || _line[_at + 1] == '_');

    private ReadOnlySpan<byte> TakeNumber()
    {
        while (_at < _line.Length && _line[_at] is (byte)' ' or (byte)'\t') _at++;
        int start = _at;
        int length = _line[start..].IndexOfAnyExcept(NumberBytes);
        _at = length < 0 ? _line.Length : start + length;
        return _line[start.._at];
    }

    private readonly ModelFileException Refuse(string problem) => request.Refuse($"line {number}", problem);
}
