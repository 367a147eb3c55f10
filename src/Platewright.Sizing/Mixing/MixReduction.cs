namespace Platewright.Sizing.Mixing;

/// <summary>
/// A smaller problem with the same best value: without what cannot be made, kinds that another does at least as well in
/// everything, and counts that no work could fill; jobs of a project that only one kind can make are one job.
/// </summary>
internal sealed class MixReduction
{
    private readonly IntegerMix _whole;
    private readonly int[] _kinds;
    private readonly List<int[]> _jobs = [];

    private MixReduction(IntegerMix whole)
    {
        _whole = whole;
        long[] hours = WithoutTooLong(whole);
        int[] useful = Useful(whole, hours);
        _kinds = [.. Kept(whole, hours, useful)];
        var weights = new List<long>();
        List<int> firstJob = [0];
        for (int p = 0; p < whole.Projects; p++)
        {
            int[] own = [.. Enumerable.Range(whole.FirstJob[p], whole.FirstJob[p + 1] - whole.FirstJob[p])];
            if (!own.All(j => _kinds.Any(k => Able(hours, j, k)))) continue;
            weights.Add(whole.Weight[p]);
            _jobs.AddRange(own.Where(j => OnlyKind(hours, j) < 0).Select(j => new[] { j }));
            _jobs.AddRange(
                own.Where(j => OnlyKind(hours, j) >= 0).GroupBy(j => OnlyKind(hours, j)).Select(g => g.ToArray()));
            firstJob.Add(_jobs.Count);
        }
        long Sum(long[] table, int[] jobs, int kind) => jobs.Sum(j => table[j * whole.Kinds + kind]);
        Mix = new()
        {
            Cost = Pick(whole.Cost),
            Capacity = Pick(whole.Capacity),
            Least = Pick(whole.Least),
            Most = [.. _kinds.Select(k => Math.Max(whole.Least[k], Math.Min(whole.Most[k], useful[k])))],
            Use = [.. whole.Use.Select(Pick)],
            Limit = whole.Limit,
            FirstJob = [.. firstJob],
            Weight = [.. weights],
            TotalWeight = whole.TotalWeight,
            Hours =
            [
                .. from jobs in _jobs
                   from k in _kinds
                   select jobs.All(j => Able(hours, j, k)) ? Sum(hours, jobs, k) : IntegerMix.Not,
            ],
            Running =
            [
                .. from jobs in _jobs
                   from k in _kinds
                   select jobs.All(j => Able(hours, j, k)) ? Sum(whole.Running, jobs, k) : 0,
            ],
        };
        Makeable = Mix.Weight.Sum();
    }


    /// <summary>The smaller problem.</summary>
    public IntegerMix Mix { get; }

    /// <summary>Weight of the projects that the kinds can make, hours and limits aside.</summary>
    public long Makeable { get; }

    public static MixReduction Of(IntegerMix whole) => new(whole);

    /// <summary>The mix in counts and jobs of the whole problem.</summary>
    public (int[] Counts, int[] KindOfJob) Expand(FoundMix found)
    {
        int[] counts = [.. _whole.Least];
        for (int k = 0; k < _kinds.Length; k++) counts[_kinds[k]] = found.Counts[k];
        var kindOfJob = new int[_whole.Jobs];
        Array.Fill(kindOfJob, -1);
        for (int i = 0; i < _jobs.Count; i++)
        {
            foreach (int job in _jobs[i]) kindOfJob[job] = found.KindOfJob[i] < 0 ? -1 : _kinds[found.KindOfJob[i]];
        }
        return (counts, kindOfJob);
    }

    private long[] Pick(long[] all) => [.. _kinds.Select(k => all[k])];

    private int[] Pick(int[] all) => [.. _kinds.Select(k => all[k])];

    private bool Able(long[] hours, int job, int kind) => hours[job * _whole.Kinds + kind] != IntegerMix.Not;

    private int OnlyKind(long[] hours, int job)
    {
        int[] able = [.. _kinds.Where(k => Able(hours, job, k)).Take(2)];
        return able.Length == 1 ? able[0] : -1;
    }

    private static long[] WithoutTooLong(IntegerMix mix)
    {
        long[] hours = [.. mix.Hours];
        for (int at = 0; at < hours.Length; at++)
        {
            int k = at % mix.Kinds;
            if (hours[at] > mix.Capacity[k] * mix.Most[k] || mix.Most[k] == 0) hours[at] = IntegerMix.Not;
        }
        return hours;
    }

    /// <summary>Per kind the count that all it can make could fill: more are never of use.</summary>
    private static int[] Useful(IntegerMix mix, long[] hours)
    {
        var useful = new int[mix.Kinds];
        for (int k = 0; k < mix.Kinds; k++)
        {
            long sum = 0;
            bool any = false;
            for (int at = k; at < hours.Length; at += mix.Kinds)
            {
                if (hours[at] == IntegerMix.Not) continue;
                any = true;
                sum += hours[at];
            }
            long fill = mix.Capacity[k] == 0 ? 1 : Math.Max(1, (sum + mix.Capacity[k] - 1) / mix.Capacity[k]);
            useful[k] = any ? (int)Math.Min(fill, int.MaxValue) : 0;
        }
        return useful;
    }

    private static List<int> Kept(IntegerMix mix, long[] hours, int[] useful)
    {
        List<int> kept = [.. Enumerable.Range(0, mix.Kinds).Where(k => useful[k] > 0 || mix.Least[k] > 0)];
        foreach (int worse in kept.ToArray().Reverse())
        {
            if (mix.Least[worse] > 0) continue;
            if (kept.Exists(better => better != worse && Replaces(mix, hours, useful, better, worse)))
                kept.Remove(worse);
        }
        return kept;
    }

    /// <summary>Whether each of the worse kind can always give way to one of the better.</summary>
    private static bool Replaces(IntegerMix mix, long[] hours, int[] useful, int better, int worse)
    {
        if (mix.Cost[better] > mix.Cost[worse] || mix.Capacity[better] < mix.Capacity[worse]) return false;
        if (mix.Most[better] < useful[better] || Array.Exists(mix.Use, use => use[better] > use[worse])) return false;
        for (int at = 0; at < hours.Length; at += mix.Kinds)
        {
            long old = hours[at + worse], now = hours[at + better];
            if (old == IntegerMix.Not) continue;
            if (now == IntegerMix.Not || now > old || mix.Running[at + better] > mix.Running[at + worse]) return false;
        }
        return true;
    }
}
