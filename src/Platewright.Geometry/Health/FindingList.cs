namespace Platewright.Geometry;

/// <summary>Collects findings; what counts none is left out.</summary>
internal sealed class FindingList
{
    private readonly List<Finding> _all = [];

    public IReadOnlyList<Finding> All => _all;

    public void Add(string code, int count, string message) => Add(code, count, _ => message);

    public void Add(string code, int count, Func<int, string> message)
    {
        if (count > 0) _all.Add(new Finding(code, count, message(count)));
    }
}
