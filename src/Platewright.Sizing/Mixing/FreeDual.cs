namespace Platewright.Sizing.Mixing;

/// <summary>
/// Raises the bound over prices and job values together with no kind taken as open, so that the cost of choosing a kind
/// is shared among the jobs that would use it (as in Erlenkotter 1978, Operations Research 26:992-1009); a subgradient
/// search. Any values give a valid cut: how good the search is decides only how tight it is.
/// </summary>
internal sealed class FreeDual
{
    private const int Steps = 300;

    private const int Patience = 8;

    private const double LeastFactor = 0.01;

    private readonly PricedWork _work;
    private readonly IntegerMix _mix;
    private readonly double[] _unit;
    private readonly double[] _jobUnit;
    private readonly double[] _slope;
    private readonly double[] _priceSlope;
    private readonly double _weightUnit;

    public FreeDual(PricedWork work)
    {
        _work = work;
        _mix = work.Mix;
        _jobUnit = [.. work.JobValue.Select(v => double.IsFinite(v) ? v : 0)];
        _slope = new double[_mix.Jobs];
        _priceSlope = new double[_mix.Kinds];
        _unit = [.. work.Price];
        _weightUnit = work.WeightPrice;
    }

    /// <summary>From the work's last evaluation with all kinds open; adds the best cut found to the master.</summary>
    public void Run(long known, MixMaster master, CancellationToken cancellation)
    {
        double best = double.NegativeInfinity;
        double factor = 1;
        int waited = 0;
        MixCut? cut = null;
        double[] values = [.. _work.JobValue];
        double[] bestValues = values, bestPrice = [.. _work.Price];
        double bestWeight = _work.WeightPrice;
        for (int step = 0; step < Steps && factor > LeastFactor; step++)
        {
            cancellation.ThrowIfCancellationRequested();
            double value = Slopes(values, out MixCut now, out double weightSlope, out double square);
            if (value > best)
            {
                best = value;
                cut = now;
                bestValues = [.. values];
                _work.Price.CopyTo(bestPrice, 0);
                bestWeight = _work.WeightPrice;
                waited = 0;
            }
            else if (++waited >= Patience)
            {
                factor /= 2;
                waited = 0;
                bestValues.CopyTo(values, 0);
                bestPrice.CopyTo(_work.Price, 0);
                _work.WeightPrice = bestWeight;
                value = Slopes(values, out now, out weightSlope, out square);
            }
            if (square == 0 || value >= known) break;
            double length = factor * (known - value) / square;
            for (int j = 0; j < values.Length; j++)
                values[j] = Math.Max(0, values[j] + length * _slope[j] * _jobUnit[j] * _jobUnit[j]);
            for (int k = 0; k < _unit.Length; k++)
                _work.Price[k] = Math.Max(0, _work.Price[k] + length * _priceSlope[k] * _unit[k] * _unit[k]);
            _work.WeightPrice = Math.Max(0, _work.WeightPrice + length * weightSlope * _weightUnit * _weightUnit);
        }
        if (cut is not null) master.Add(cut);
        bestPrice.CopyTo(_work.Price, 0);
        _work.WeightPrice = bestWeight;
    }

    /// <summary>The bound without limits, its slopes, and its cut.</summary>
    private double Slopes(double[] values, out MixCut cut, out double weightSlope, out double square)
    {
        int kinds = _mix.Kinds;
        var choice = new double[kinds];
        for (int j = 0; j < values.Length; j++)
        {
            int row = j * kinds;
            for (int k = 0; k < kinds; k++)
            {
                double saved = values[j] - _work.Cost(row + k, _work.Price[k]);
                if (saved > 0) choice[k] += saved;
            }
        }
        var units = new int[kinds];
        double value = 0;
        for (int k = 0; k < kinds; k++)
        {
            double each = (_work.Goal.Coverage ? 0 : _mix.Cost[k]) - _work.Price[k] * _mix.Capacity[k];
            units[k] = each < 0 ? _mix.Most[k] : Math.Max(_mix.Least[k], each < choice[k] ? 1 : 0);
            value += each * units[k] - (units[k] > 0 ? choice[k] : 0);
            _priceSlope[k] = -(double)_mix.Capacity[k] * units[k];
        }
        double work = _work.Everything ? 0 : _work.WeightPrice * _work.Goal.Target;
        weightSlope = _work.Everything || _work.Goal.Coverage ? 0 : _work.Goal.Target;
        square = 0;
        for (int p = 0; p < _mix.Projects; p++)
        {
            double sum = 0;
            int from = _mix.FirstJob[p], to = _mix.FirstJob[p + 1];
            for (int j = from; j < to; j++) sum += values[j];
            double worth = _work.Worth(p);
            bool covered = sum < worth;
            if (covered) work += _work.Everything ? sum : sum - worth;
            if (covered && !_work.Everything && !_work.Goal.Coverage) weightSlope -= _mix.Weight[p];
            for (int j = from; j < to; j++) square += Slope(j, covered, units, values[j]);
        }
        for (int k = 0; k < kinds; k++)
        {
            if (_priceSlope[k] < 0 && _work.Price[k] <= 0) _priceSlope[k] = 0;
            square += Math.Pow(_priceSlope[k] * _unit[k], 2);
        }
        square += Math.Pow(weightSlope * _weightUnit, 2);
        cut = new(work, [.. _work.Price.Select((price, k) => price * _mix.Capacity[k])], choice);
        return value + work;
    }

    private double Slope(int job, bool covered, int[] units, double value)
    {
        double slope = covered ? 1 : 0;
        int row = job * units.Length;
        for (int k = 0; k < units.Length; k++)
        {
            if (units[k] == 0 || !(value > _work.Cost(row + k, _work.Price[k]))) continue;
            slope--;
            _priceSlope[k] += Math.Max(0, _mix.Hours[row + k]);
        }
        if (slope < 0 && value <= 0) slope = 0;
        _slope[job] = slope;
        return slope * slope * _jobUnit[job] * _jobUnit[job];
    }
}
