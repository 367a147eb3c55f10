using System.Collections.Immutable;
using Platewright.Formats.Toml;

namespace Platewright.Machines;

/// <summary>
/// Reads <c>[range]</c>: its tables mirror those of the file, and every key there gives the bounds of the same key here.
/// </summary>
internal static class RangeReader
{
    /// <param name="root">The file.</param>
    /// <param name="machine">The machine without ranges; null where it could not be read.</param>
    public static ImmutableSortedDictionary<string, ValueRange> Read(TomlTable root, Machine? machine)
    {
        var ranges = ImmutableSortedDictionary.CreateBuilder<string, ValueRange>(StringComparer.Ordinal);
        if (root.Table("range") is not { } top) return ranges.ToImmutable();
        Dictionary<string, TomlTable?> tables = new(StringComparer.Ordinal) { [""] = top };
        foreach (MachineParameter parameter in MachineParameters.All)
        {
            int dot = parameter.Key.LastIndexOf('.');
            if (Open(tables, parameter.Key[..dot]) is not { } table) continue;
            if (Range(table, parameter.Key[(dot + 1)..], parameter, machine) is { } range)
                ranges.Add(parameter.Key, range);
        }
        return ranges.ToImmutable();
    }

    private static TomlTable? Open(Dictionary<string, TomlTable?> tables, string path)
    {
        if (tables.TryGetValue(path, out TomlTable? known)) return known;
        int dot = path.LastIndexOf('.');
        TomlTable? parent = Open(tables, dot < 0 ? "" : path[..dot]);
        return tables[path] = parent?.Table(path[(dot + 1)..]);
    }

    private static ValueRange? Range(TomlTable table, string key, MachineParameter parameter, Machine? machine)
    {
        if (table.Numbers(key, 2, parameter.Allowed, "low and high") is not { } bounds) return null;
        if (bounds[0] > bounds[1])
        {
            table.Refuse(key, $"the low bound {bounds[0]} is above the high one {bounds[1]}; write [low, high].");
            return null;
        }
        if (machine is null) return null;
        double? value = parameter.Of(machine);
        if (value is { } v && v >= bounds[0] && v <= bounds[1]) return new ValueRange(bounds[0], bounds[1]);
        table.Refuse(key, value is null
            ? $"{parameter.Key} is not stated in the file; state its most likely value, or drop the range."
            : $"{parameter.Key} is {value}, which is not between {bounds[0]} and {bounds[1]}.");
        return null;
    }
}
