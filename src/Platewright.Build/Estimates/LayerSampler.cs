using System.Collections.Concurrent;
using Platewright.Build.Motion;
using Platewright.Machines;

namespace Platewright.Build.Estimates;

/// <summary>
/// Times all layers of a part from a sample of planned ones. Floors and lids are a stratum of their own, and so is each direction of
/// filling. Within a stratum the time of a kind of path, divided by a length known exactly for every layer, is
/// interpolated between planned layers. The error is judged by leaving out each planned layer in turn and estimating it from its
/// neighbours, which are then twice as far apart; layers are added where it is greatest until it is small enough.
/// </summary>
internal sealed class LayerSampler
{
    /// <summary>Relative error of the time of all layers that sampling stops at, at 99 %.</summary>
    private const double Wanted = 0.02;

    /// <summary>Layers planned at first, and added at a time.</summary>
    private const int FirstSample = 32;
    private const int Added = 8;

    /// <summary>Lengths within this ratio of each other are alike.</summary>
    private const double AlikeRatio = 1.5;

    /// <summary>Beyond this ratio a neighbour says nothing: the rate of all planned layers serves.</summary>
    private const double UnlikeRatio = 3;

    /// <summary>Standard error of a time taken from layers that are not alike, as a share of it.</summary>
    private const double DoubtfulShare = 0.5;

    /// <summary>Quantile of the normal distribution for 99 %.</summary>
    private const double Quantile = 2.576;

    private readonly PartPaths _part;
    private readonly Machine _machine;
    private readonly Material _material;
    private readonly ConcurrentBag<DrivenMachine> _driven = [];
    private readonly MotionTimes?[] _planned;
    private MotionTimes _sum;
    private PerKind _lengths;

    private LayerSampler(PartPaths part, Machine machine, Material material)
    {
        _part = part;
        _machine = machine;
        _material = material;
        _planned = new MotionTimes?[part.LayerCount];
    }

    /// <param name="part">The part.</param>
    /// <param name="machine">The machine.</param>
    /// <param name="material">What it is built of.</param>
    /// <param name="full">Plan every layer.</param>
    /// <param name="phase">Chooses the first sample, 0 … 1.</param>
    /// <param name="cancel">Stops the work.</param>
    public static LayerTimes Run(
        PartPaths part, Machine machine, Material material, bool full, double phase, CancellationToken cancel)
    {
        LayerSampler sampler = new(part, machine, material);
        return full ? sampler.All(cancel) : sampler.Sample(phase, cancel);
    }

    /// <summary>
    /// The layers on a machine that differs a little: all times change as those of some of the planned layers do.
    /// </summary>
    public static LayerTimes Again(PartPaths part, Machine machine, Material material, LayerTimes before)
    {
        LayerSampler sampler = new(part, machine, material);
        int step = (before.Planned.Count + MostAgain - 1) / MostAgain;
        double was = 0, now = 0;
        for (int i = 0; i < before.Planned.Count; i += step)
        {
            int layer = before.Planned[i];
            was += before.Layers[layer].TotalS;
            now += sampler.Time(layer).TotalS;
        }
        double ratio = was > 0 ? now / was : 1;
        return before with
        {
            Layers = [.. before.Layers.Select(l => l with { MovingS = l.MovingS * ratio, StandstillS = l.StandstillS * ratio })],
            ErrorS = before.ErrorS * ratio,
        };
    }

    /// <summary>Layers that are timed again for another machine.</summary>
    private const int MostAgain = 12;

    private LayerTimes All(CancellationToken cancel)
    {
        int[] all = [.. Enumerable.Range(0, _part.LayerCount).Where(IsFirst)];
        Plan(all, cancel);
        return new LayerTimes(Fill([]), all, 0);
    }

    private LayerTimes Sample(double phase, CancellationToken cancel)
    {
        List<int>[] strata = Strata();
        Plan(FirstLayers(strata, phase), cancel);
        while (true)
        {
            MotionTimes[] layers = Fill(strata);
            List<Gap> gaps = Gaps(strata);
            double error = Quantile * Math.Sqrt(gaps.Sum(g => g.Error * g.Error));
            double total = layers.Sum(l => l.TotalS);
            int[] planned = [.. Enumerable.Range(0, _part.LayerCount).Where(l => _planned[l] is not null)];
            if (gaps.Count == 0) return new LayerTimes(layers, planned, 0);
            if (error <= Wanted * total) return new LayerTimes(layers, planned, error);
            Plan([.. gaps.OrderByDescending(g => g.Error).Take(Added).Select(g => g.Middle)], cancel);
        }
    }

    private bool IsFirst(int layer) => _part.SameAs(layer) == layer;

    private void Plan(IReadOnlyList<int> layers, CancellationToken cancel) => Parallel.ForEach(
        layers, new ParallelOptions { CancellationToken = cancel }, l => _planned[l] = Time(l));

    private MotionTimes Time(int layer)
    {
        if (!_driven.TryTake(out DrivenMachine? driven)) driven = new DrivenMachine(_machine, _material, _part);
        MotionTimes times = driven.Time(_part.Plan(layer), layer == 0, _part.TopMm(layer));
        _driven.Add(driven);
        return times;
    }

    // The first layer is always planned by itself.
    private List<int>[] Strata()
    {
        List<int>[] strata = [.. Enumerable.Range(0, 4).Select(_ => new List<int>())];
        for (int l = 1; l < _part.LayerCount; l++)
            if (IsFirst(l)) strata[(_part.Features.Flat[l] ? 2 : 0) + l % 2].Add(l);
        return strata;
    }

    private List<int> FirstLayers(List<int>[] strata, double phase)
    {
        List<int> layers = [0, .. LayersWithMost()];
        int all = strata.Sum(s => s.Count);
        foreach (List<int> stratum in strata)
        {
            if (stratum.Count == 0) continue;
            int wanted = Math.Min(stratum.Count, Math.Max(4, (int)Math.Ceiling((double)FirstSample * stratum.Count / all)));
            for (int i = 0; i < wanted; i++)
            {
                // The ends of a stratum, and in each of the stretches between them one by chance: even steps would fall in with
                // whatever repeats from layer to layer.
                double place = i == 0 ? 0 : i == wanted - 1 ? stratum.Count - 1
                    : (i - 0.5 + Chance(i, phase)) * (stratum.Count - 1) / (wanted - 1);
                int layer = stratum[(int)Math.Round(place)];
                if (!layers.Contains(layer)) layers.Add(layer);
            }
        }
        return layers;
    }

    /// <summary>For each kind of path the layer that has most of it.</summary>
    private IEnumerable<int> LayersWithMost()
    {
        HashSet<int> layers = [];
        foreach (PathKind kind in Kinds)
        {
            int most = 0;
            for (int l = 1; l < _part.LayerCount; l++)
                if (_part.Features.Length(l, kind) > _part.Features.Length(most, kind)) most = l;
            if (_part.Features.Length(most, kind) > 0) layers.Add(_part.SameAs(most));
        }
        return layers.Where(l => l > 0);
    }

    /// <summary>Of all planned layers: what a kind's time and material are for a length known exactly.</summary>
    private void MeasureRates()
    {
        MotionTimes sum = default;
        PerKind lengths = default;
        for (int l = 1; l < _part.LayerCount; l++)
        {
            if (_planned[l] is not { } times) continue;
            sum += times;
            foreach (PathKind kind in Kinds) lengths[kind] += _part.Features.Length(l, kind);
        }
        (_sum, _lengths) = (sum, lengths);
    }

    private MotionTimes[] Fill(List<int>[] strata)
    {
        MeasureRates();
        var layers = new MotionTimes[_part.LayerCount];
        foreach (List<int> stratum in strata)
        {
            List<int> known = [.. stratum.Where(l => _planned[l] is not null)];
            int k = 0;
            foreach (int l in stratum)
            {
                while (k + 1 < known.Count && known[k + 1] <= l) k++;
                layers[l] = _planned[l] ?? Between(l, known[k], known[Math.Min(k + 1, known.Count - 1)]);
            }
        }
        for (int l = 0; l < layers.Length; l++)
        {
            int first = _part.SameAs(l);
            // Where a bed moves, equal layers take longer the higher they lie.
            bool own = _machine.Motion!.MovingBed && l != first && _planned[first] is not null;
            layers[l] = own ? Time(l) : _planned[first] ?? layers[first];
        }
        return layers;
    }

    private List<Gap> Gaps(List<int>[] strata)
    {
        List<Gap> gaps = [];
        foreach (List<int> stratum in strata)
        {
            List<int> known = [.. stratum.Where(l => _planned[l] is not null)];
            if (known.Count == stratum.Count) continue;
            double[] missed = Missed(known);
            double pooled = missed.Sum(m => m * m) / missed.Length;
            Dictionary<int, int> places = stratum.Select((l, i) => (l, i)).ToDictionary(p => p.l, p => p.i);
            for (int i = 0; i + 1 < known.Count; i++)
            {
                int from = places[known[i]], to = places[known[i + 1]];
                if (to - from < 2) continue;
                double local = (missed[i] * missed[i] + missed[i + 1] * missed[i + 1]) / 2;
                double count = 0, doubtful = 0, most = 0;
                int next = stratum[from + 1 + (int)(Chance(from, 0) * (to - from - 1))];
                for (int p = from + 1; p < to; p++)
                {
                    int layer = stratum[p], copies = Copies(layer);
                    count += copies;
                    Between(layer, known[i], known[i + 1], out double doubt);
                    doubtful += copies * doubt;
                    if (copies * doubt > most) (most, next) = (copies * doubt, layer);
                }
                double usual = count * Math.Sqrt(local / 2 + pooled), unusual = DoubtfulShare * doubtful;
                gaps.Add(new Gap(next, Math.Sqrt(usual * usual + unusual * unusual)));
            }
        }
        return gaps;
    }

    /// <summary>A number from 0 to 1 that looks random and is the same every time: the golden ratio's multiples (Weyl).</summary>
    private static double Chance(int number, double phase)
    {
        double turns = number * 0.6180339887498949 + phase;
        return turns - Math.Floor(turns);
    }

    private int[]? _copies;

    /// <summary>How many layers are equal to this one, itself among them.</summary>
    private int Copies(int layer)
    {
        if (_copies is null)
        {
            _copies = new int[_part.LayerCount];
            for (int l = 0; l < _part.LayerCount; l++) _copies[_part.SameAs(l)]++;
        }
        return _copies[layer];
    }

    /// <summary>By how much each planned layer is missed when it is estimated from its neighbours, s.</summary>
    private double[] Missed(List<int> known)
    {
        var missed = new double[known.Count];
        for (int i = 0; i < known.Count; i++)
        {
            int before = known[i > 0 ? i - 1 : Math.Min(1, known.Count - 1)];
            int after = known[i + 1 < known.Count ? i + 1 : Math.Max(known.Count - 2, 0)];
            missed[i] = Math.Abs(Between(known[i], before, after).TotalS - _planned[known[i]]!.Value.TotalS);
        }
        return missed;
    }

    /// <summary>A layer estimated from two planned ones.</summary>
    private MotionTimes Between(int layer, int before, int after) => Between(layer, before, after, out _);

    /// <param name="doubtfulS">Time of kinds of which both have much less or much more than the layer, s.</param>
    private MotionTimes Between(int layer, int before, int after, out double doubtfulS)
    {
        MotionTimes a = _planned[before]!.Value, b = _planned[after]!.Value;
        double share = after == before ? 0 : Math.Clamp((double)(layer - before) / (after - before), 0, 1);
        MotionTimes estimate = default;
        doubtfulS = 0;
        foreach (PathKind kind in Kinds)
        {
            double x = _part.Features.Length(layer, kind);
            if (x <= 0) continue;
            double xa = _part.Features.Length(before, kind), xb = _part.Features.Length(after, kind);
            double before1 = estimate.TotalS;
            if (x > UnlikeRatio * Math.Max(xa, xb))
            {
                if (_lengths[kind] > 0) Add(ref estimate, _sum, kind, x / _lengths[kind]);
                doubtfulS += estimate.TotalS - before1;
                continue;
            }
            double wa = xa <= 0 ? 0 : xb <= 0 ? 1 : 1 - share;
            if (wa > 0) Add(ref estimate, a, kind, wa * x / xa);
            if (wa < 1) Add(ref estimate, b, kind, (1 - wa) * x / xb);
            bool unlike = x > AlikeRatio * Math.Max(xa, xb) || AlikeRatio * x < Math.Min(xa, xb);
            if (unlike) doubtfulS += estimate.TotalS - before1;
        }
        return estimate;
    }

    private static void Add(ref MotionTimes to, in MotionTimes from, PathKind kind, double times)
    {
        PerKind moving = to.MovingS, path = to.PathMm, material = to.MaterialMm3;
        moving[kind] += times * from.MovingS[kind];
        path[kind] += times * from.PathMm[kind];
        material[kind] += times * from.MaterialMm3[kind];
        double standstill = to.StandstillS + (kind == PathKind.Travel ? times * from.StandstillS : 0);
        to = new MotionTimes(moving, standstill, path, material);
    }

    private static readonly PathKind[] Kinds = Enum.GetValues<PathKind>();

    /// <summary>A stretch of layers between two planned ones.</summary>
    /// <param name="Middle">The layer to plan next.</param>
    /// <param name="Error">Standard error of its whole time, s.</param>
    private readonly record struct Gap(int Middle, double Error);
}
