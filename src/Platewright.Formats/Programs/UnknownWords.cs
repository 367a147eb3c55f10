using System.Text;
using Platewright.Formats.Reading;

namespace Platewright.Formats.Programs;

/// <summary>Counts the words nobody reads.</summary>
internal sealed class UnknownWords
{
    /// <summary>Names kept apart; a file that is no program at all would else fill memory with them.</summary>
    private const int MostNames = 200;

    private const int LongestName = 24;

    private const string Others = "others";

    private readonly Dictionary<string, (int Count, int FirstLine)> _words = new(StringComparer.Ordinal);

    public void Count(string word, int line)
    {
        if (_words.Count >= MostNames && !_words.ContainsKey(word)) word = Others;
        _words[word] = _words.TryGetValue(word, out (int Count, int FirstLine) known)
            ? (known.Count + 1, known.FirstLine)
            : (1, line);
    }

    /// <summary>
    /// The name a line begins with: up to a space, comment, bracket or equals sign, short and printable.
    /// </summary>
    public static string NameOf(ReadOnlySpan<byte> line)
    {
        int end = line.IndexOfAny(" \t;=("u8);
        if (end > 0) line = line[..end];
        return Printable.OneLine(Encoding.UTF8.GetString(line[..Math.Min(line.Length, LongestName)]));
    }

    public IReadOnlyList<UnknownWord> InOrder() =>
        [.. _words.OrderBy(w => w.Value.FirstLine)
            .Select(w => new UnknownWord(w.Key, w.Value.Count, w.Value.FirstLine))];
}
