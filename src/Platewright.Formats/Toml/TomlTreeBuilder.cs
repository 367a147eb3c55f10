using Tomlyn.Syntax;

namespace Platewright.Formats.Toml;

/// <summary>
/// Builds tables from the syntax tree and refuses what TOML 1.0 refuses: a key set twice, a table defined twice, a
/// value used as a table.
/// </summary>
internal sealed class TomlTreeBuilder(string file, List<DescriptionError> errors)
{
    /// <summary>
    /// Tables that only exist because a longer header or dotted key went through them; a header may still define them.
    /// </summary>
    private readonly HashSet<TomlTable> _implied = [];

    /// <summary>Tables that dotted keys made; only dotted keys of the same table may add to them.</summary>
    private readonly HashSet<TomlTable> _dotted = [];

    public TomlTable Build(DocumentSyntax document)
    {
        TomlTable root = new(new TomlPlace(file, 1, ""), errors);
        Fill(root, document.KeyValues);
        foreach (TableSyntaxBase header in document.Tables)
        {
            if (header.Name is null) continue;
            if (Open(root, header) is { } table) Fill(table, header.Items);
        }
        return root;
    }

    private TomlTable? Open(TomlTable root, TableSyntaxBase header)
    {
        string[] keys = KeysOf(header.Name!);
        int line = LineOf(header);
        TomlTable? parent = Walk(root, keys, line, dotted: false);
        if (parent is null) return null;
        string last = keys[^1];
        TomlNode? there = parent.Peek(last);
        if (header is TableArraySyntax) return Append(parent, last, there, line);
        switch (there)
        {
            case null:
                return Create(parent, last, line);
            case TomlTable table when _implied.Remove(table):
                return table;
            default:
                Twice(parent, last, there, line);
                return null;
        }
    }

    private TomlTable? Append(TomlTable parent, string key, TomlNode? there, int line)
    {
        if (there is null) parent.Put(key, there = new TomlList(new(file, line, parent.KeyOf(key)), ofTables: true));
        if (there is not TomlList { OfTables: true } list)
        {
            Twice(parent, key, there, line);
            return null;
        }
        TomlTable table = new(new(file, line, $"{parent.KeyOf(key)}[{list.Items.Count + 1}]"), errors);
        list.Add(table);
        return table;
    }

    private void Fill(TomlTable table, IEnumerable<KeyValueSyntax> pairs)
    {
        foreach (KeyValueSyntax pair in pairs)
        {
            if (pair.Key is null || pair.Value is null) continue;
            string[] keys = KeysOf(pair.Key);
            int line = LineOf(pair);
            if (Walk(table, keys, line, dotted: true) is not { } parent) continue;
            if (parent.Peek(keys[^1]) is { } there) Twice(parent, keys[^1], there, line);
            else parent.Put(keys[^1], Value(pair.Value, new(file, line, parent.KeyOf(keys[^1]))));
        }
    }

    /// <summary>
    /// Goes down to the table that holds the last key; null, with an error, where something else is in the way.
    /// </summary>
    private TomlTable? Walk(TomlTable table, string[] keys, int line, bool dotted)
    {
        foreach (string key in keys.AsSpan(0, keys.Length - 1))
        {
            TomlNode? there = table.Peek(key);
            if (there is null)
            {
                TomlTable made = Create(table, key, line);
                (dotted ? _dotted : _implied).Add(made);
                table = made;
                continue;
            }
            TomlTable? next = there switch
            {
                TomlTable inner when !dotted || _dotted.Contains(inner) => inner,
                TomlList { OfTables: true } list when !dotted => (TomlTable)list.Items[^1],
                _ => null,
            };
            if (next is null)
            {
                Twice(table, key, there, line);
                return null;
            }
            table = next;
        }
        return table;
    }

    private TomlTable Create(TomlTable parent, string key, int line)
    {
        TomlTable table = new(new(file, line, parent.KeyOf(key)), errors);
        parent.Put(key, table);
        return table;
    }

    private TomlNode Value(ValueSyntax value, TomlPlace place)
    {
        switch (value)
        {
            case ArraySyntax array:
                TomlList list = new(place, ofTables: false);
                foreach (ArrayItemSyntax item in array.Items)
                {
                    if (item.Value is null) continue;
                    list.Add(Value(item.Value, new(file, LineOf(item.Value), $"{place.Key}[{list.Items.Count + 1}]")));
                }
                return list;
            case InlineTableSyntax inline:
                TomlTable table = new(place, errors);
                Fill(table, inline.Items.Where(i => i.KeyValue is not null).Select(i => i.KeyValue!));
                return table;
            default:
                return new TomlScalar(place, Scalar(value));
        }
    }

    private static object Scalar(ValueSyntax value) => value switch
    {
        StringValueSyntax text => text.Value ?? "",
        IntegerValueSyntax whole => whole.Value,
        FloatValueSyntax number => number.Value,
        BooleanValueSyntax flag => flag.Value,
        _ => new TomlMoment(value.ToString().Trim()),
    };

    private void Twice(TomlTable parent, string key, TomlNode there, int line) => errors.Add(new(
        $"set twice; it is already {there.Described} on line {there.Place.Line}.", file, line, parent.KeyOf(key)));

    private static string[] KeysOf(KeySyntax key) =>
        [KeyText(key.Key), .. key.DotKeys.Select(d => KeyText(d.Key))];

    private static string KeyText(BareKeyOrStringValueSyntax? key) => key switch
    {
        StringValueSyntax quoted => quoted.Value ?? "",
        BareKeySyntax bare => bare.Key?.Text ?? "",
        _ => "",
    };

    private static int LineOf(SyntaxNodeBase node) => node.Span.Start.Line + 1;
}
