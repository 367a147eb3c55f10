using System.Globalization;
using System.Text;

namespace Platewright.Formats.Toml;

/// <summary>Lines of TOML with comments in a column of their own.</summary>
/// <param name="commentOf">What to say beside a dotted key; null for nothing.</param>
public sealed class TomlWriter(Func<string, string?> commentOf)
{
    private const int CommentColumn = 40;

    private readonly StringBuilder _lines = new();

    /// <summary>A line of its own.</summary>
    public void Comment(string line) => Line($"# {line}");

    /// <summary>A header as it stands, as <c>[price]</c>, after an empty line.</summary>
    public void Open(string header)
    {
        Line("");
        Line(header);
    }

    /// <summary>A table of numbers; nothing at all where it has none.</summary>
    public void Table(string table, params ReadOnlySpan<(string Key, double? Value)> numbers)
    {
        bool opened = false;
        foreach ((string key, double? value) in numbers)
        {
            if (value is null) continue;
            if (!opened) Open($"[{table}]");
            opened = true;
            Add(table, key, value);
        }
    }

    /// <summary>One key; nothing where there is no value.</summary>
    /// <param name="table">The table it stands in; empty for the file itself.</param>
    /// <param name="key">The key.</param>
    /// <param name="value">Its value.</param>
    public void Add(string table, string key, double? value) => Put(table, key, value is { } v ? Text(v) : null);

    public void Add(string table, string key, bool? value) => Put(table, key, value switch
    {
        true => "true",
        false => "false",
        null => null,
    });

    public void Add(string table, string key, string? value) => Put(table, key, value is null ? null : Quoted(value));

    public void Add(string table, string key, double[]? values) =>
        Put(table, key, values is null ? null : Row(values));

    public void AddRows(string table, string key, IEnumerable<double[]> rows) =>
        Put(table, key, $"[{string.Join(", ", rows.Select(Row))}]");

    public override string ToString() => _lines.ToString();

    private void Put(string table, string key, string? value)
    {
        if (value is null) return;
        string line = $"{key} = {value}";
        string? comment = commentOf(table.Length == 0 ? key : $"{table}.{key}");
        Line(comment is null ? line : $"{line.PadRight(CommentColumn)} # {comment}");
    }

    private void Line(string text) => _lines.Append(text).Append('\n');

    private static string Row(double[] values) => $"[{string.Join(", ", values.Select(Text))}]";

    private static string Text(double value) => value.ToString(CultureInfo.InvariantCulture);

    private static string Quoted(string text)
    {
        StringBuilder quoted = new("\"");
        foreach (char c in text)
        {
            if (c is '"' or '\\') quoted.Append('\\').Append(c);
            else if (char.IsControl(c)) quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
            else quoted.Append(c);
        }
        return quoted.Append('"').ToString();
    }
}
