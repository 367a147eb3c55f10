using System.Collections.Immutable;

namespace Platewright.Formats.Toml;

public sealed partial class TomlTable
{
    /// <summary>
    /// A text that is not blank, null when absent; absence is an error when <paramref name="required"/>.
    /// </summary>
    public string? Text(string key, bool required = false)
    {
        const string expected = "a text that is not empty";
        if (Find(key) is not { } node) return required ? Missing<string>(key, expected) : null;
        return TextOf(node) ?? Wrong<string>(node, expected);
    }

    /// <summary>One of a few words.</summary>
    public string? Word(string key, IReadOnlyList<string> words, bool required = false)
    {
        string expected = string.Join(" or ", words.Select(w => $"\"{w}\""));
        if (Find(key) is not { } node) return required ? Missing<string>(key, expected) : null;
        if (node is not TomlScalar { Value: string text }) return Wrong<string>(node, expected);
        if (words.Contains(text)) return text;
        Refuse(key, $"expected {expected}, found \"{text}\".{Suggestion.Sentence(text, words)}");
        return null;
    }

    public bool? Flag(string key)
    {
        if (Find(key) is not { } node) return null;
        if (node is TomlScalar { Value: bool flag }) return flag;
        Wrong<string>(node, "true or false");
        return null;
    }

    /// <summary>A number within a range, null when absent or wrong.</summary>
    public double? Number(string key, NumberRange range, bool required = false)
    {
        string expected = $"a number {range}";
        if (Find(key) is { } node) return NumberOf(node, range, expected);
        if (required) Missing<string>(key, expected);
        return null;
    }

    /// <summary>A number within a range, or one word that stands for another answer.</summary>
    /// <returns>The number; null when absent, wrong, or when <paramref name="isWord"/>.</returns>
    public double? NumberOrWord(string key, NumberRange range, string word, out bool isWord)
    {
        TomlNode? node = Find(key);
        isWord = node is TomlScalar { Value: string text } && text == word;
        return node is null || isWord ? null : NumberOf(node, range, $"a number {range}, or \"{word}\"");
    }

    /// <summary>A whole number within a range, null when absent or wrong.</summary>
    public int? Count(string key, int least, int most, bool required = false)
    {
        string expected = $"a whole number from {least} to {most}";
        if (Find(key) is not { } node)
        {
            if (required) Missing<string>(key, expected);
            return null;
        }
        if (node is TomlScalar { Value: long value } && value >= least && value <= most) return (int)value;
        Wrong<string>(node, expected);
        return null;
    }

    /// <summary>A list of exactly <paramref name="count"/> numbers within a range; null when absent or wrong.</summary>
    /// <param name="what">What the numbers are, for the message: "width, depth and height".</param>
    public ImmutableArray<double>? Numbers(string key, int count, NumberRange range, string what, bool required = false)
    {
        string expected = $"a list of {count} numbers ({what}), each {range}";
        if (Find(key) is { } node) return NumbersOf(node, count, range, expected);
        if (required) Missing<string>(key, expected);
        return null;
    }

    /// <summary>A list of lists of <paramref name="count"/> numbers each, as the corners of a polygon.</summary>
    public ImmutableArray<ImmutableArray<double>>? NumberRows(
        string key, int count, NumberRange range, string what, bool required)
    {
        string expected = $"a list of lists of {count} numbers ({what}), each {range}";
        if (Find(key) is not { } node)
        {
            if (required) Missing<string>(key, expected);
            return null;
        }
        if (node is not TomlList list)
        {
            Wrong<string>(node, expected);
            return null;
        }
        ImmutableArray<double>?[] rows =
            [.. list.Items.Select(i => NumbersOf(i, count, range, $"{count} numbers ({what}), each {range}"))];
        return rows.Any(r => r is null) ? null : [.. rows.Select(r => r!.Value)];
    }

    /// <summary>A list of texts; null when absent or wrong.</summary>
    public ImmutableArray<TomlText>? Texts(string key)
    {
        if (Find(key) is not { } node) return null;
        if (node is TomlList list && list.Items.All(i => TextOf(i) is not null))
            return [.. list.Items.Select(i => new TomlText(TextOf(i)!, i.Place))];
        Wrong<string>(node, "a list of texts");
        return null;
    }

    /// <summary>A table inside this one, null when absent or wrong.</summary>
    public TomlTable? Table(string key, bool required = false)
    {
        if (Find(key) is not { } node) return required ? Missing<TomlTable>(key, $"a table [{KeyOf(key)}]") : null;
        return node is TomlTable table ? table : Wrong<TomlTable>(node, "a table");
    }

    /// <summary>The tables under <c>[[key]]</c>, or a list of inline tables; none when absent or wrong.</summary>
    public ImmutableArray<TomlTable> Tables(string key)
    {
        if (Find(key) is not { } node) return [];
        if (node is TomlList list && list.Items.All(i => i is TomlTable)) return [.. list.Items.Cast<TomlTable>()];
        Wrong<string>(node, $"a list of tables, each under [[{key}]]");
        return [];
    }

    private static string? TextOf(TomlNode node) =>
        node is TomlScalar { Value: string text } && !string.IsNullOrWhiteSpace(text) ? text : null;

    private double? NumberOf(TomlNode node, NumberRange range, string expected)
    {
        double? value = (node as TomlScalar)?.Value switch { long l => l, double d => d, _ => null };
        if (value is { } number && range.Contains(number)) return number;
        Wrong<string>(node, expected);
        return null;
    }

    private ImmutableArray<double>? NumbersOf(TomlNode node, int count, NumberRange range, string expected)
    {
        if (node is not TomlList list || list.Items.Count != count)
        {
            _errors.Add(DescriptionError.At(node.Place, node is TomlList short_
                ? $"expected {expected}, found a list of {short_.Items.Count}."
                : $"expected {expected}, found {node.Described}."));
            return null;
        }
        double?[] numbers = [.. list.Items.Select(i => NumberOf(i, range, $"a number {range}"))];
        return numbers.Any(n => n is null) ? null : [.. numbers.Select(n => n!.Value)];
    }
}

/// <summary>A text of a list with its own place.</summary>
public sealed record TomlText(string Text, TomlPlace Place);
