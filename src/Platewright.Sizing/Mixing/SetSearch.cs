namespace Platewright.Sizing.Mixing;

/// <summary>Looks for a good set of kinds: from one kind on, and from all of them down, one change at a time.</summary>
internal sealed class SetSearch(IntegerMix mix, SetTrial trial)
{
    private readonly Dictionary<ulong, long> _tried = [];

    /// <summary>The best found; null where no set that was tried reaches the target.</summary>
    public FoundMix? Best { get; private set; }

    /// <summary>Counts of the sets tried that are close to the best, best first.</summary>
    public IEnumerable<int[]> Promising(int count) =>
        _tried.Where(t => t.Value != long.MaxValue).OrderBy(t => t.Value).ThenBy(t => t.Key).Take(count).Select(t =>
        {
            trial.Try(Members(t.Key));
            return trial.Counts;
        });

    public void Run(CancellationToken cancellation)
    {
        Descend(mix.Kinds == 64 ? ulong.MaxValue : (1UL << mix.Kinds) - 1, cancellation);
        ulong single = Enumerable.Range(0, mix.Kinds).Select(k => 1UL << k).MinBy(Value);
        Descend(single, cancellation);
    }

    private void Descend(ulong set, CancellationToken cancellation)
    {
        long value = Value(set);
        while (true)
        {
            cancellation.ThrowIfCancellationRequested();
            ulong next = Neighbours(set).DefaultIfEmpty().MinBy(Value);
            if (next == 0 || Value(next) >= value) return;
            value = Value(next);
            set = next;
        }
    }

    /// <summary>One kind more, one less, or one for another.</summary>
    private IEnumerable<ulong> Neighbours(ulong set)
    {
        int[] inside = Members(set);
        int[] outside = [.. Enumerable.Range(0, mix.Kinds).Except(inside)];
        foreach (int k in outside) yield return set | 1UL << k;
        foreach (int k in inside)
        {
            ulong less = set & ~(1UL << k);
            if (less != 0) yield return less;
            if (inside.Length > SwapsUpTo) continue;
            foreach (int other in outside) yield return less | 1UL << other;
        }
    }

    /// <summary>Larger sets have too many swaps, and they matter less there.</summary>
    private const int SwapsUpTo = 4;

    private long Value(ulong set)
    {
        if (_tried.TryGetValue(set, out long known)) return known;
        long value = trial.Try(Members(set)) ?? long.MaxValue;
        _tried[set] = value;
        if (value != long.MaxValue && (Best is null || value < Best.Value))
            Best = new([.. trial.Counts], [.. trial.KindOfJob], value);
        return value;
    }

    private int[] Members(ulong set) => [.. Enumerable.Range(0, mix.Kinds).Where(k => (set >> k & 1) != 0)];
}
