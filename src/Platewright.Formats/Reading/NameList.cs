namespace Platewright.Formats.Reading;

/// <summary>Gives each part of a file a name of its own: the second “Wheel” becomes “Wheel (2)”.</summary>
internal sealed class NameList
{
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _latest = new(StringComparer.Ordinal);

    public string Unique(string wanted)
    {
        string name = Printable.OneLine(wanted);
        if (_taken.Add(name)) return name;
        int number = _latest.GetValueOrDefault(name, 1);
        string numbered;
        do numbered = $"{name} ({++number})";
        while (!_taken.Add(numbered));
        _latest[name] = number;
        return numbered;
    }
}
