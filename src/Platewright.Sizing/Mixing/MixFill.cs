namespace Platewright.Sizing.Mixing;

/// <summary>Fills given machines with work, guided by prices: jobs whole, hours kept. An answer, not a proof.</summary>
internal sealed class MixFill(PricedWork work)
{
    private const int Passes = 3;

    private readonly IntegerMix _mix = work.Mix;
    private readonly int[] _kindOfJob = new int[work.Mix.Jobs];
    private readonly long[] _left = new long[work.Mix.Kinds];

    /// <summary>The filled mix, with counts cut to what is used; null where the target is not reached.</summary>
    public FoundMix? Fill(int[] counts, int[] open)
    {
        Array.Fill(_kindOfJob, -1);
        for (int k = 0; k < _mix.Kinds; k++) _left[k] = _mix.Capacity[k] * counts[k];
        long weight = Cover(open);
        if (weight < work.Goal.Target) return null;
        if (!work.Goal.Coverage)
        {
            for (int pass = 0; pass < Passes && Cheapen(open); pass++)
            {
            }
            Drop(weight - work.Goal.Target);
        }
        int[] needed = Needed(counts);
        return new(needed, [.. _kindOfJob], work.Goal.Coverage ? -weight : Cost(needed));
    }

    private long Cover(int[] open)
    {
        // Dearest per weight last; where all must be made, those that lose most by a second choice first.
        double Rank(int p) => work.Everything ? -Regret(p, open) : work.ProjectValue[p] / _mix.Weight[p];
        double[] rank = [.. Enumerable.Range(0, _mix.Projects).Select(Rank)];
        int[] order = [.. Enumerable.Range(0, _mix.Projects).OrderBy(p => rank[p])];
        long weight = 0;
        foreach (int p in order)
        {
            if (!work.Goal.Coverage && !work.Everything && weight >= work.Goal.Target) break;
            if (double.IsFinite(work.ProjectValue[p]) && Place(p, open)) weight += _mix.Weight[p];
            else if (work.Everything) return -1;
        }
        return weight;
    }

    private double Regret(int project, int[] open)
    {
        double regret = 0;
        for (int j = _mix.FirstJob[project]; j < _mix.FirstJob[project + 1]; j++)
        {
            double second = double.PositiveInfinity;
            foreach (int k in open)
            {
                if (k != work.KindOfJob[j]) second = Math.Min(second, work.Cost(j, k));
            }
            regret += second - work.JobValue[j];
        }
        return regret;
    }

    private bool Place(int project, int[] open)
    {
        for (int j = _mix.FirstJob[project]; j < _mix.FirstJob[project + 1]; j++)
        {
            int best = -1;
            foreach (int k in open)
            {
                if (!_mix.Can(j, k) || Hours(j, k) > _left[k]) continue;
                if (best < 0 || work.Cost(j, k) < work.Cost(j, best)) best = k;
            }
            if (best < 0)
            {
                for (int i = _mix.FirstJob[project]; i < j; i++) Take(i);
                return false;
            }
            _kindOfJob[j] = best;
            _left[best] -= Hours(j, best);
        }
        return true;
    }

    /// <summary>Moves jobs to kinds that run them cheaper, where there is room.</summary>
    private bool Cheapen(int[] open)
    {
        bool moved = false;
        for (int j = 0; j < _mix.Jobs; j++)
        {
            int now = _kindOfJob[j];
            if (now < 0) continue;
            int best = now;
            foreach (int k in open)
            {
                if (k != now && _mix.Can(j, k) && Running(j, k) < Running(j, best) && Hours(j, k) <= _left[k]) best = k;
            }
            if (best == now) continue;
            _left[now] += Hours(j, now);
            _left[best] -= Hours(j, best);
            _kindOfJob[j] = best;
            moved = true;
        }
        return moved;
    }

    /// <summary>Gives up the dearest projects that the target does not need.</summary>
    private void Drop(long spare)
    {
        if (spare <= 0) return;
        IEnumerable<int> covered = Enumerable.Range(0, _mix.Projects).Where(p => _kindOfJob[_mix.FirstJob[p]] >= 0);
        foreach (int p in covered.OrderByDescending(ProjectRunning))
        {
            if (_mix.Weight[p] > spare) continue;
            spare -= _mix.Weight[p];
            for (int j = _mix.FirstJob[p]; j < _mix.FirstJob[p + 1]; j++) Take(j);
        }
    }

    private long ProjectRunning(int project)
    {
        long sum = 0;
        for (int j = _mix.FirstJob[project]; j < _mix.FirstJob[project + 1]; j++) sum += Running(j, _kindOfJob[j]);
        return sum;
    }

    private void Take(int job)
    {
        _left[_kindOfJob[job]] += Hours(job, _kindOfJob[job]);
        _kindOfJob[job] = -1;
    }

    private int[] Needed(int[] counts)
    {
        var used = new bool[_mix.Kinds];
        foreach (int k in _kindOfJob)
        {
            if (k >= 0) used[k] = true;
        }
        var needed = new int[_mix.Kinds];
        for (int k = 0; k < _mix.Kinds; k++)
        {
            long hours = _mix.Capacity[k] * counts[k] - _left[k];
            long fill = _mix.Capacity[k] == 0 ? 0 : (hours + _mix.Capacity[k] - 1) / _mix.Capacity[k];
            needed[k] = Math.Max(_mix.Least[k], used[k] ? (int)Math.Max(1, fill) : 0);
        }
        return needed;
    }

    private long Cost(int[] counts)
    {
        long cost = 0;
        for (int k = 0; k < _mix.Kinds; k++) cost += _mix.Cost[k] * counts[k];
        for (int j = 0; j < _mix.Jobs; j++) cost += _kindOfJob[j] < 0 ? 0 : Running(j, _kindOfJob[j]);
        return cost;
    }

    private long Hours(int job, int kind) => _mix.Hours[job * _mix.Kinds + kind];

    private long Running(int job, int kind) => _mix.Running[job * _mix.Kinds + kind];
}
