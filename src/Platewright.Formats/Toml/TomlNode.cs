using System.Globalization;

namespace Platewright.Formats.Toml;

/// <summary>A value, list or table of a TOML file, with its place.</summary>
public abstract class TomlNode(TomlPlace place)
{
    public TomlPlace Place { get; } = place;

    /// <summary>What it is, for messages: <c>the text "x"</c>, <c>a list</c>.</summary>
    public abstract string Described { get; }
}

/// <summary>A single value: string, long, double, bool, or a date or time kept as its text.</summary>
public sealed class TomlScalar(TomlPlace place, object value) : TomlNode(place)
{
    /// <summary>A string, long, double or bool; a <see cref="TomlMoment"/> for dates and times.</summary>
    public object Value { get; } = value;

    public override string Described => Value switch
    {
        string text => text.Length <= LongestQuote ? $"the text \"{text}\"" : $"the text \"{text[..LongestQuote]}…\"",
        bool flag => flag ? "true" : "false",
        TomlMoment => "a date or time",
        _ => Convert.ToString(Value, CultureInfo.InvariantCulture)!,
    };

    private const int LongestQuote = 60;
}

/// <summary>A date or time as written. No key of ours takes one.</summary>
public sealed record TomlMoment(string Text);

/// <summary>A list of values, or the tables under one <c>[[name]]</c>.</summary>
public sealed class TomlList(TomlPlace place, bool ofTables) : TomlNode(place)
{
    private readonly List<TomlNode> _items = [];

    public IReadOnlyList<TomlNode> Items => _items;

    /// <summary>True when it grew from <c>[[name]]</c> headers.</summary>
    public bool OfTables { get; } = ofTables;

    public override string Described => "a list";

    internal void Add(TomlNode item) => _items.Add(item);
}
