namespace Platewright.Report;

/// <summary>Every text once, numbered in the order of first sight: parts that look the same share what the page holds.</summary>
internal sealed class Distinct
{
    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<string> _texts = [];

    public IReadOnlyList<string> Texts => _texts;

    public int? NumberOf(string? text)
    {
        if (text is null) return null;
        if (_numbers.TryGetValue(text, out int known)) return known;
        _texts.Add(text);
        return _numbers[text] = _texts.Count - 1;
    }
}
