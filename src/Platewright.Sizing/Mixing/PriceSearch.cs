namespace Platewright.Sizing.Mixing;

/// <summary>
/// Raises the bound for given counts over the prices: a subgradient search (Held, Wolfe &amp; Crowder 1974,
/// Mathematical Programming 6:62-88) towards a level above the best so far that comes down when it is not reached.
/// </summary>
internal sealed class PriceSearch
{
    private const int Steps = 80;

    private const double FirstRise = 0.05;

    private const double LastRise = 2e-5;

    private const int Patience = 4;

    private readonly PricedWork _work;
    private readonly IntegerMix _mix;
    private readonly double[] _natural;
    private readonly int[] _all;

    public PriceSearch(PricedWork work)
    {
        _work = work;
        _mix = work.Mix;
        _all = [.. Enumerable.Range(0, _mix.Kinds)];
        // A machine's cost over its hours: what an hour costs if every hour is sold. Where only coverage counts, all hours
        // start at one price, the work's whole weight over the hours it takes where it is fastest.
        double hour = 0;
        for (int j = 0; j < _mix.Jobs && _work.Goal.Coverage; j++)
            hour += _all.Where(k => _mix.Can(j, k)).Min(k => _mix.Hours[j * _mix.Kinds + k]);
        double weight = hour == 0 ? 0 : _mix.Weight.Sum() / hour;
        _natural =
        [
            .. _all.Select(k =>
                _mix.Capacity[k] == 0 ? 0 : _work.Goal.Coverage ? weight : (double)_mix.Cost[k] / _mix.Capacity[k]),
        ];
        _natural.CopyTo(_work.Price, 0);
    }

    /// <summary>The bound where machines are sold by the hour; weight at the price of the target's last project.</summary>
    public MixCut FirstCut()
    {
        double value = _work.Evaluate(_all);
        if (!_work.Everything && !_work.Goal.Coverage)
        {
            long weight = 0;
            foreach (int p in Enumerable.Range(0, _mix.Projects).OrderBy(p => _work.ProjectValue[p] / _mix.Weight[p]))
            {
                if (weight >= _work.Goal.Target) break;
                weight += _mix.Weight[p];
                _work.WeightPrice = _work.ProjectValue[p] / _mix.Weight[p];
            }
            value = _work.Evaluate(_all);
        }
        return _work.Cut(value, _all);
    }

    /// <summary>
    /// A value no mix with these counts goes below; the work is left priced at the best prices found, and the master
    /// has their cuts.
    /// </summary>
    public double Raise(int[] counts, int[] open, long? known, MixMaster master, CancellationToken cancellation)
    {
        foreach (int k in _all)
        {
            if (counts[k] == 0) _work.Price[k] = _natural[k];
        }
        double[] best = [.. _work.Price];
        double bestWeight = _work.WeightPrice;
        double value = Value(counts, open);
        double top = value;
        double rise = FirstRise;
        int waited = 0;
        for (int step = 0; step < Steps && rise > LastRise; step++)
        {
            cancellation.ThrowIfCancellationRequested();
            if (known is { } cost && top >= cost) break;
            if (!Step(counts, open, top + rise * Math.Max(1, Math.Abs(top)) - value)) break;
            value = Value(counts, open);
            if (value > top)
            {
                if (value > top + rise * Math.Abs(top) / 2) rise *= 2;
                top = value;
                _work.Price.CopyTo(best, 0);
                bestWeight = _work.WeightPrice;
                waited = 0;
            }
            else if (++waited >= Patience)
            {
                rise /= 2;
                waited = 0;
                best.CopyTo(_work.Price, 0);
                _work.WeightPrice = bestWeight;
                value = Value(counts, open);
            }
        }
        best.CopyTo(_work.Price, 0);
        _work.WeightPrice = bestWeight;
        master.Add(_work.Cut(_work.Evaluate(_all), _all));
        master.Add(_work.Cut(_work.Evaluate(open), open));
        Value(counts, open);
        return top;
    }

    private double Value(int[] counts, int[] open)
    {
        double value = _work.Evaluate(open);
        for (int k = 0; k < counts.Length; k++)
            value += ((_work.Goal.Coverage ? 0 : _mix.Cost[k]) - _work.Price[k] * _mix.Capacity[k]) * counts[k];
        return value;
    }

    /// <summary>One step along the subgradient, in machines; false where it is zero: the prices are the best.</summary>
    private bool Step(int[] counts, int[] open, double wanted)
    {
        double machines = Math.Max(1, counts.Sum());
        double square = 0;
        var slope = new double[counts.Length];
        foreach (int k in open)
        {
            if (_mix.Capacity[k] == 0) continue;
            slope[k] = _work.HoursUsed[k] / _mix.Capacity[k] - counts[k];
            if (slope[k] < 0 && _work.Price[k] <= 0) slope[k] = 0;
            square += slope[k] * slope[k];
        }
        double weight = _work.Everything ? 0 : (_work.Goal.Target - _work.WeightCovered) / _mix.TotalWeight * machines;
        if (_work.Goal.Coverage || (weight < 0 && _work.WeightPrice <= 0)) weight = 0;
        square += weight * weight;
        if (square == 0) return false;
        double length = wanted / square;
        foreach (int k in open)
        {
            if (_mix.Capacity[k] > 0)
                _work.Price[k] = Math.Max(0, _work.Price[k] + length * slope[k] / _mix.Capacity[k]);
        }
        _work.WeightPrice = Math.Max(0, _work.WeightPrice + length * weight * machines / _mix.TotalWeight);
        return true;
    }
}
