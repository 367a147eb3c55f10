using System.Buffers;
using System.Text;

namespace Platewright.Formats.Reading;

/// <summary>
/// Walks over the words of a text without copying it. Lines are counted only when something is wrong.
/// </summary>
internal ref struct TextScanner(ReadOnlySpan<byte> text)
{
    private static readonly SearchValues<byte> LineEnds = SearchValues.Create("\n\r"u8);

    private readonly ReadOnlySpan<byte> _text = text;

    /// <summary>Byte offset of what comes next.</summary>
    public int Position { get; set; }

    public readonly bool AtEnd => Position >= _text.Length;

    /// <summary>The next word, on this line or a later one.</summary>
    public bool TryWord(out ReadOnlySpan<byte> word)
    {
        while (Position < _text.Length && _text[Position] <= ' ') Position++;
        return TakeWord(out word);
    }

    /// <summary>The next word on this line. A backslash at the end of a line joins the next line to it.</summary>
    public bool TryWordOnLine(out ReadOnlySpan<byte> word)
    {
        while (Position < _text.Length)
        {
            byte c = _text[Position];
            if (c is (byte)'\n' or (byte)'\r') break;
            if (c <= ' ') Position++;
            else if (c != '\\' || !TryJoinLine()) return TakeWord(out word);
        }
        word = default;
        return false;
    }

    /// <summary>What is left of this line, without its end and surrounding spaces.</summary>
    public ReadOnlySpan<byte> TakeLine()
    {
        int length = _text[Position..].IndexOfAny(LineEnds);
        ReadOnlySpan<byte> line = length < 0 ? _text[Position..] : _text.Slice(Position, length);
        Position += line.Length;
        return line.Trim(" \t\v\f"u8);
    }

    /// <summary>Moves to the start of the next line.</summary>
    /// <param name="joined">Whether a backslash at the end of a line joins the next line to it.</param>
    public void SkipLine(bool joined)
    {
        while (true)
        {
            int length = _text[Position..].IndexOfAny(LineEnds);
            if (length < 0)
            {
                Position = _text.Length;
                return;
            }
            bool more = joined && length > 0 && _text[Position + length - 1] == '\\';
            Position += length;
            SkipLineEnd();
            if (!more) return;
        }
    }

    /// <summary>Number of the line that holds the byte offset, from 1.</summary>
    public readonly int LineOf(int offset)
    {
        ReadOnlySpan<byte> before = _text[..Math.Min(offset, _text.Length)];
        int lines = before.Count((byte)'\n');
        return 1 + (lines > 0 ? lines : before.Count((byte)'\r'));
    }

    /// <summary>A word fit to be shown in a sentence: short and printable.</summary>
    public static string Show(ReadOnlySpan<byte> word)
    {
        const int longest = 24;
        var shown = new StringBuilder("“");
        foreach (byte b in word[..Math.Min(word.Length, longest)]) shown.Append(b is > 31 and < 127 ? (char)b : '?');
        if (word.Length > longest) shown.Append('…');
        return shown.Append('”').ToString();
    }

    private bool TakeWord(out ReadOnlySpan<byte> word)
    {
        int start = Position;
        while (Position < _text.Length && _text[Position] > ' ') Position++;
        word = _text[start..Position];
        bool atLineEnd = Position < _text.Length && _text[Position] is (byte)'\n' or (byte)'\r';
        if (atLineEnd && word.Length > 1 && word[^1] == '\\')
            word = _text[start..--Position];
        return word.Length > 0;
    }

    private bool TryJoinLine()
    {
        if (Position + 1 >= _text.Length || _text[Position + 1] is not ((byte)'\n' or (byte)'\r')) return false;
        Position++;
        SkipLineEnd();
        return true;
    }

    private void SkipLineEnd()
    {
        if (Position < _text.Length && _text[Position] == '\r') Position++;
        if (Position < _text.Length && _text[Position] == '\n') Position++;
    }
}
