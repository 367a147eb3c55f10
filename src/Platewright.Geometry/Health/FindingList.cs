namespace Platewright.Geometry;

/// <summary>Collects findings; what counts none is left out.</summary>
internal sealed class FindingList
{
    private readonly List<Finding> _all = [];

    public IReadOnlyList<Finding> All => _all;

    public void Add(string code, int count, string message) => Add(code, count, _ => message);

    /// <param name="places">Where it is; no more than <see cref="Finding.MostPlaces"/> are looked up.</param>
    public void Add(string code, int count, Func<int, string> message, IEnumerable<FindingPlace>? places = null)
    {
        if (count == 0) return;
        FindingPlace[] first = [.. (places ?? []).Where(p => p.From.IsFinite && p.To.IsFinite).Take(Finding.MostPlaces)];
        _all.Add(new Finding(code, count, message(count)) { Places = first });
    }
}
