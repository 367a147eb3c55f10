namespace Platewright.Sizing.Mixing;

/// <summary>
/// The quick answer for a set of kinds: projects in the order of what they cost per weight, each job on the kind of the
/// set that makes it cheapest when machine hours are sold at cost, machines added as the hours ask and the limits let.
/// </summary>
internal sealed class SetTrial
{
    private readonly IntegerMix _mix;
    private readonly MixGoal _goal;
    private readonly double[] _price;
    private readonly int[] _order;
    private readonly bool _everything;

    public SetTrial(IntegerMix mix, MixGoal goal)
    {
        _mix = mix;
        _goal = goal;
        _everything = !goal.Coverage && goal.Target >= mix.Weight.Sum();
        double[] hour = [.. mix.Cost.Zip(mix.Capacity, (cost, hours) => hours == 0 ? 0 : (double)cost / hours)];
        _price = new double[mix.Hours.Length];
        for (int at = 0; at < _price.Length; at++)
        {
            _price[at] = mix.Hours[at] == IntegerMix.Not
                ? double.PositiveInfinity
                : mix.Running[at] + hour[at % mix.Kinds] * mix.Hours[at];
        }
        double[] perWeight = [.. Enumerable.Range(0, mix.Projects).Select(p => Least(p) / mix.Weight[p])];
        _order = [.. Enumerable.Range(0, mix.Projects).OrderBy(p => perWeight[p])];
        Counts = new int[mix.Kinds];
        KindOfJob = new int[mix.Jobs];
        _left = new long[mix.Kinds];
    }

    private readonly long[] _left;

    public int[] Counts { get; private set; }

    public int[] KindOfJob { get; }

    public long Weight { get; private set; }

    private double Least(int project)
    {
        double sum = 0;
        for (int j = _mix.FirstJob[project]; j < _mix.FirstJob[project + 1]; j++)
        {
            double least = double.PositiveInfinity;
            for (int k = 0; k < _mix.Kinds; k++) least = Math.Min(least, _price[j * _mix.Kinds + k]);
            sum += least;
        }
        return sum;
    }

    /// <summary>The value of the mix left in the members above; null where the target is not reached.</summary>
    public long? Try(IReadOnlyList<int> set)
    {
        int[] kinds = [.. set.Union(Enumerable.Range(0, _mix.Kinds).Where(k => _mix.Least[k] > 0))];
        Counts = [.. _mix.Least];
        Array.Fill(KindOfJob, -1);
        for (int k = 0; k < _mix.Kinds; k++) _left[k] = _mix.Capacity[k] * Counts[k];
        Weight = 0;
        long running = 0;
        foreach (int p in _order)
        {
            if (!_goal.Coverage && !_everything && Weight >= _goal.Target) break;
            if (Place(p, kinds) is { } cost)
            {
                running += cost;
                Weight += _mix.Weight[p];
            }
            else if (_everything) return null;
        }
        if (_goal.Coverage) return -Weight;
        return Weight < _goal.Target ? null : running + Counts.Select((n, k) => n * _mix.Cost[k]).Sum();
    }

    private long? Place(int project, int[] kinds)
    {
        long running = 0;
        int from = _mix.FirstJob[project], to = _mix.FirstJob[project + 1];
        int[]? before = null;
        for (int j = from; j < to; j++)
        {
            int best = -1;
            double least = double.PositiveInfinity;
            foreach (int k in kinds)
            {
                double price = _price[j * _mix.Kinds + k];
                if (price >= least) continue;
                least = price;
                best = k;
            }
            if (best < 0)
            {
                Undo(from, j, before);
                return null;
            }
            int at = j * _mix.Kinds + best;
            KindOfJob[j] = best;
            _left[best] -= _mix.Hours[at];
            running += _mix.Running[at];
            if (_left[best] >= 0 && Counts[best] > 0) continue;
            before ??= [.. Counts];
            long capacity = _mix.Capacity[best];
            long filled = capacity == 0 ? 1 : (capacity - 1 - _left[best]) / capacity;
            long more = Math.Max(Counts[best] == 0 ? 1 : 0, filled);
            bool tooMany = more > _mix.Most[best] - Counts[best] || (_left[best] < 0 && _mix.Capacity[best] == 0);
            if (!tooMany)
            {
                Counts[best] += (int)more;
                _left[best] += more * _mix.Capacity[best];
            }
            if (!tooMany && _mix.Broken(Counts) is null) continue;
            Undo(from, j + 1, before);
            return null;
        }
        return running;
    }

    private void Undo(int from, int to, int[]? before)
    {
        for (int j = from; j < to; j++)
        {
            _left[KindOfJob[j]] += _mix.Hours[j * _mix.Kinds + KindOfJob[j]];
            KindOfJob[j] = -1;
        }
        if (before is null) return;
        for (int k = 0; k < _mix.Kinds; k++) _left[k] -= _mix.Capacity[k] * (Counts[k] - before[k]);
        Counts = before;
    }
}
