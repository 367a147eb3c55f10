namespace Platewright.Build.Heat.Network;

/// <summary>
/// Follows a network through time: steps with error control, and every event (a thermostat that switches, the supply's
/// limit that begins or ends, a goal that is met) located by taking the step again until it ends there.
/// Deterministic: no clock, no chance.
/// </summary>
internal sealed class NetworkRun
{
    // Error of one step, K; what the state is known to near an event, K and W; and of step sizes, s.
    private const double StepErrorK = 1e-3, EventValue = 1e-8, FirstStepS = 1, LeastStepS = 1e-9;

    private const double Safety = 0.9, LeastChange = 0.2, MostChange = 6, ErrorOrder = 4;

    private const double SlopeShare = 1e-3;

    private const int MostRefinements = 60, RootHalvings = 8, MostSteps = 200_000;

    private readonly ThermalNetwork _network;
    private readonly HeatBalance _balance;
    private readonly RosenbrockStep _step;
    private readonly ThermostatEvents _events;
    private readonly List<RunStep> _steps = [];
    private readonly double[] _temperature, _looked, _trial;
    private double[] _state, _rate;
    private double _nextStepS = FirstStepS;

    public NetworkRun(ThermalNetwork network)
    {
        _network = network;
        _balance = new HeatBalance(network);
        _step = new RosenbrockStep(network, _balance);
        _events = new ThermostatEvents(network, _balance);
        int size = _balance.Nodes + _balance.Heaters;
        (_state, _rate, _trial) = (new double[size], new double[size], new double[size]);
        (_temperature, _looked) = (new double[_balance.Nodes], new double[_balance.Nodes]);
        for (int i = 0; i < _balance.Nodes; i++)
        {
            ThermalNode node = network.Nodes[i];
            if (!node.IsHeld) _state[i] = node.CapacityJK * (node.StartC - network.ReferenceC);
        }
        _step.Temperatures(_state, TimeS, _temperature);
        _events.ChooseModes(_temperature);
        _step.Rates(_state, TimeS, _rate);
    }

    public double TimeS { get; private set; }

    /// <summary>Heat of every node over the reference, J (held: what it took), then each heater's energy, J.</summary>
    public ReadOnlySpan<double> State => _state;

    public ReadOnlySpan<double> TemperatureC => _temperature;

    public ReadOnlySpan<double> PowerW => _balance.PowerW;

    public IReadOnlyList<RunStep> Steps => _steps;

    /// <summary>Electrical energy of all heaters since the start, J.</summary>
    public double EnergyJ => Sum(_state.AsSpan(_balance.Nodes));

    /// <summary>Runs until all goals hold at once, or to the given time. True when the goals were met.</summary>
    public bool Run(double untilS, params ReadOnlySpan<Goal> goals)
    {
        Goal[] all = [.. goals];
        while (true)
        {
            if (all.Length > 0 && all.All(g => g.IsMet(_temperature))) return true;
            if (untilS - TimeS <= LeastStepS) return false;
            if (_steps.Count > MostSteps) throw new InvalidOperationException("Bug in Platewright: heat takes no end.");
            Advance(untilS, all);
        }
    }

    /// <summary>Temperatures and the total power of the heaters at a time within a step that was taken.</summary>
    public double At(RunStep step, double timeS, Span<double> temperatureC)
    {
        step.Interpolate((timeS - step.StartS) / step.LengthS, _trial);
        _step.Temperatures(_trial, timeS, temperatureC);
        step.Modes.CopyTo(_balance.Modes, 0);
        _balance.Evaluate(temperatureC);
        return _balance.TotalPowerW;
    }

    private void Advance(double untilS, Goal[] goals)
    {
        bool[] open = [.. goals.Select(g => !g.IsMet(_temperature))];
        double stepS = Math.Min(_nextStepS, untilS - TimeS);
        while (!IsPrecise(stepS, out double better)) stepS = Math.Min(better, stepS * Safety);
        RunStep taken = Taken(stepS);
        int found = FirstEvent(taken, goals, open, out double share);
        if (found >= 0) taken = Locate(taken, found, share * stepS, goals);
        Accept(taken);
        if (found >= 0 && found < _events.Count) Switch(found);
    }

    private bool IsPrecise(double stepS, out double betterS)
    {
        _step.Take(_state, TimeS, stepS);
        double worst = 0;
        for (int i = 0; i < _balance.Nodes; i++)
        {
            ThermalNode node = _network.Nodes[i];
            if (node.IsHeld) continue;
            worst = Math.Max(worst, Math.Abs(_step.Error[i]) / (node.CapacityJK + node.GrowthWK * TimeS) / StepErrorK);
        }
        double change = worst > 0 ? Safety * Math.Pow(worst, -1 / ErrorOrder) : MostChange;
        betterS = stepS * Math.Clamp(change, LeastChange, MostChange);
        _nextStepS = betterS;
        return worst <= 1 || stepS <= LeastStepS;
    }

    private RunStep Taken(double stepS)
    {
        double[] end = [.. _step.Result], rate = new double[end.Length];
        _step.Rates(end, TimeS + stepS, rate);
        return new RunStep(TimeS, stepS, _state, _rate, end, rate, [.. _balance.Modes]);
    }

    // Half-way and the end are looked at, so that a condition that breaks and heals within one step is not missed.
    private int FirstEvent(RunStep taken, Goal[] goals, bool[] open, out double share)
    {
        (int found, share) = (-1, 1);
        Span<bool> broken = stackalloc bool[_events.Count + goals.Length];
        foreach (double end in (ReadOnlySpan<double>)[0.5, 1])
        {
            Look(taken, end);
            for (int e = 0; e < broken.Length; e++)
                broken[e] = (e < _events.Count || open[e - _events.Count]) && Value(e, goals) > 0;
            for (int e = 0; e < broken.Length; e++)
            {
                if (!broken[e]) continue;
                double root = Root(taken, e, goals, end);
                if (found < 0 || root < share) (found, share) = (e, root);
            }
            if (found >= 0) break;
        }
        return found;
    }

    private double Root(RunStep taken, int e, Goal[] goals, double end)
    {
        double low = 0, high = end;
        for (int i = 0; i < RootHalvings; i++)
        {
            double middle = 0.5 * (low + high);
            if (Value(taken, middle, e, goals) > 0) high = middle; else low = middle;
        }
        return high;
    }

    private double Value(RunStep taken, double share, int e, Goal[] goals)
    {
        Look(taken, share);
        return Value(e, goals);
    }

    // The value of one condition at what was looked at last.
    private double Value(int e, Goal[] goals) =>
        e < _events.Count ? _events.Value(e, _looked) : -goals[e - _events.Count].Miss(_looked);

    private void Look(RunStep taken, double share)
    {
        taken.Interpolate(share, _trial);
        _step.Temperatures(_trial, taken.StartS + share * taken.LengthS, _looked);
        _balance.Evaluate(_looked);
    }

    // The cubic knows the event only as well as it knows the state: steps that end there settle it.
    private RunStep Locate(RunStep taken, int e, double guessS, Goal[] goals)
    {
        double low = 0, high = taken.LengthS, at = Math.Max(guessS, LeastStepS);
        RunStep trial = taken;
        for (int i = 0; i < MostRefinements; i++)
        {
            _step.Take(_state, TimeS, at);
            trial = Taken(at);
            double value = Value(trial, 1, e, goals);
            if (Math.Abs(value) <= EventValue || high - low <= LeastStepS) break;
            if (value > 0) high = at; else low = at;
            double slope = (value - Value(trial, 1 - SlopeShare, e, goals)) / (SlopeShare * at);
            double newton = at - value / slope;
            at = newton > low && newton < high ? newton : 0.5 * (low + high);
        }
        return trial;
    }

    private void Accept(RunStep taken)
    {
        _steps.Add(taken);
        TimeS = taken.EndS;
        (_state, _rate) = (taken.EndState, taken.EndRate);
        _step.Temperatures(_state, TimeS, _temperature);
        _balance.Evaluate(_temperature);
    }

    private void Switch(int e)
    {
        _events.Switch(e, _temperature);
        _rate = new double[_state.Length];
        _step.Rates(_state, TimeS, _rate);
        _nextStepS = Math.Min(_nextStepS, FirstStepS);
    }

    private static double Sum(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double v in values) sum += v;
        return sum;
    }
}
