using System.Collections.Immutable;

namespace Platewright.Machines;

/// <summary>A machine in the making, with ranges, origins and notes so far.</summary>
internal sealed class Filling(Machine skeleton, MachineClass kind)
{
    private const int Digits = 3;

    private readonly SortedDictionary<string, string> _origins = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, ValueRange> _ranges = new(StringComparer.Ordinal);
    private readonly List<string> _notes = [];
    private Machine _machine = skeleton;

    public MachineClass Kind => kind;

    public TypicalValue TypicalOf(string key) => Find(key).TypicalOf(kind);

    public double ValueOf(string key) => Find(key).Of(_machine)!.Value;

    /// <summary>A value that is known.</summary>
    public void Set(string key, double value, string origin)
    {
        _machine = Find(key).With(_machine, value);
        _ranges.Remove(key);
        _origins[key] = origin;
    }

    /// <summary>A value that is believed to lie in a range; rounded to what is worth reading.</summary>
    public void Set(string key, double value, ValueRange range, string origin)
    {
        double rounded = Significant.Round(value, Digits);
        Set(key, rounded, origin);
        double low = Math.Min(rounded, Significant.Round(range.Low, Digits));
        double high = Math.Max(rounded, Significant.Round(range.High, Digits));
        if (low < high) _ranges[key] = new ValueRange(low, high);
    }

    public void SetTypical(string key)
    {
        TypicalValue typical = TypicalOf(key);
        Set(key, typical.Value, typical.Range, OriginOf(typical));
    }

    public string OriginOf(TypicalValue typical) => $"typical of {kind.Words}: {typical.Source}";

    /// <summary>Says where something came from that is no number of the catalogue.</summary>
    public void Note(string key, string origin) => _origins[key] = origin;

    /// <summary>Says what the person should know or check.</summary>
    public void Tell(string sentence) => _notes.Add(sentence);

    public FilledMachine Done() => new(
        _machine with { Ranges = _ranges.ToImmutableSortedDictionary(StringComparer.Ordinal) },
        _origins.ToImmutableSortedDictionary(StringComparer.Ordinal), [.. _notes]);

    private static MachineParameter Find(string key) =>
        MachineParameters.Find(key) ?? throw new ArgumentException($"There is no parameter \"{key}\".", nameof(key));
}
