using System.Text;
using Spectre.Console;

namespace Platewright.Cli.Display;

/// <summary>A plain table: columns as wide as they need, two blanks between, the first cut short to fit the width.</summary>
internal sealed class TextGrid(int columns)
{
    private const int Gap = 2;
    private const int LeastFirstColumn = 16;

    private readonly List<Cell[]> _rows = [];

    /// <param name="Text">One line.</param>
    /// <param name="Style">A Spectre style, as <c>green</c> or <c>bold</c>; null for none.</param>
    public readonly record struct Cell(string Text, string? Style = null, bool Right = false)
    {
        public static implicit operator Cell(string text) => new(text);
    }

    public void Add(params ReadOnlySpan<Cell> row) => _rows.Add(row.ToArray());

    public void Write(IAnsiConsole console)
    {
        int count = _rows.Max(r => r.Length);
        int[] widths = [.. Enumerable.Range(0, count).Select(c => _rows.Max(r => c < r.Length ? Width(r[c].Text) : 0))];
        int others = widths.Skip(1).Sum(w => w + Gap);
        widths[0] = Math.Max(Math.Min(LeastFirstColumn, widths[0]), Math.Min(widths[0], columns - others));
        foreach (Cell[] row in _rows) console.MarkupLine(Line(row, widths));
    }

    private static string Line(Cell[] row, int[] widths)
    {
        StringBuilder line = new();
        for (int c = 0; c < row.Length; c++)
        {
            string text = Cut(row[c].Text, widths[c]);
            string padding = new(' ', widths[c] - Width(text));
            bool last = c == row.Length - 1;
            string markup = row[c].Style is { } style ? $"[{style}]{Markup.Escape(text)}[/]" : Markup.Escape(text);
            if (row[c].Right) line.Append(padding);
            line.Append(markup);
            if (!row[c].Right && !last) line.Append(padding);
            if (!last) line.Append(' ', Gap);
        }
        return line.ToString();
    }

    // What tells names apart is mostly at their end.
    private static string Cut(string text, int width)
    {
        if (Width(text) <= width) return text;
        string kept = text;
        while (kept.Length > 0 && Width(kept) >= width) kept = kept[(char.IsHighSurrogate(kept[0]) ? 2 : 1)..];
        return $"…{kept}";
    }

    // Spectre knows which letters take two columns.
    private static int Width(string text) => new Text(text).Length;
}
