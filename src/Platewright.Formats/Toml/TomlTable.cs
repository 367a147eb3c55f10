using System.Collections.Immutable;

namespace Platewright.Formats.Toml;

/// <summary>
/// A table with typed access. Every access names a key as known; what is wrong goes to the file's list of errors, so
/// that one reading reports all of them; <see cref="TomlFile"/> then refuses the keys nobody asked for.
/// </summary>
public sealed partial class TomlTable : TomlNode
{
    private readonly Dictionary<string, TomlNode> _entries = new(StringComparer.Ordinal);
    private readonly SortedSet<string> _known = new(StringComparer.Ordinal);
    private readonly List<DescriptionError> _errors;

    internal TomlTable(TomlPlace place, List<DescriptionError> errors)
        : base(place) => _errors = errors;

    public override string Described => "a table";

    /// <summary>Its entries, asked for or not, in no particular order.</summary>
    public IReadOnlyDictionary<string, TomlNode> Entries => _entries;

    /// <summary>Where a key stands; the place of the table where the file does not have it.</summary>
    public TomlPlace PlaceOf(string key) =>
        _entries.TryGetValue(key, out TomlNode? node) ? node.Place : Place with { Key = KeyOf(key) };

    public bool Has(string key)
    {
        _known.Add(key);
        return _entries.ContainsKey(key);
    }

    /// <summary>Notes an error about a key of this table.</summary>
    public void Refuse(string key, string message) => _errors.Add(DescriptionError.At(PlaceOf(key), message));

    /// <summary>Notes an error about this table as a whole.</summary>
    public void Refuse(string message) => _errors.Add(DescriptionError.At(Place, message));

    /// <summary>Notes an error about something inside this table.</summary>
    public void Refuse(TomlPlace place, string message) => _errors.Add(DescriptionError.At(place, message));

    /// <summary>Notes an error where a key stands that makes no sense beside the others.</summary>
    public void RefuseIfPresent(string key, string message)
    {
        if (Has(key)) Refuse(key, message);
    }

    internal TomlNode? Peek(string key) => _entries.GetValueOrDefault(key);

    internal void Put(string key, TomlNode node) => _entries.Add(key, node);

    internal string KeyOf(string key) => Place.Key.Length == 0 ? key : $"{Place.Key}.{key}";

    internal void RefuseUnknown()
    {
        foreach ((string key, TomlNode node) in _entries)
        {
            if (!_known.Contains(key)) RefuseUnknown(key, node);
            else foreach (TomlTable table in TablesIn(node)) table.RefuseUnknown();
        }
    }

    private void RefuseUnknown(string key, TomlNode node)
    {
        string near = Suggestion.Sentence(key, _known);
        string help = near.Length > 0 ? near : $" Known here: {string.Join(", ", _known)}.";
        _errors.Add(DescriptionError.At(node.Place, "unknown key." + help) with { KnownKeys = [.. _known] });
    }

    private static IEnumerable<TomlTable> TablesIn(TomlNode node) => node switch
    {
        // A table nobody opened was refused by the one who asked for something else there.
        TomlTable table => table._known.Count == 0 ? [] : [table],
        TomlList list => list.Items.SelectMany(TablesIn),
        _ => [],
    };

    private T? Missing<T>(string key, string expected)
    {
        _errors.Add(DescriptionError.At(Place with { Key = KeyOf(key) }, $"missing; expected {expected}."));
        return default;
    }

    private T? Wrong<T>(TomlNode node, string expected)
    {
        _errors.Add(DescriptionError.At(node.Place, $"expected {expected}, found {node.Described}."));
        return default;
    }

    private TomlNode? Find(string key)
    {
        _known.Add(key);
        return _entries.GetValueOrDefault(key);
    }
}
