namespace Platewright.Build.Heat.Network;

/// <summary>
/// One step of RODAS, a Rosenbrock method of order 4 with an embedded one of order 3: L-stable, so that air and walls,
/// whose time constants differ a hundredfold, need no small steps once they have settled, and linear sums of the state
/// (the energy balance) are kept to rounding. Hairer &amp; Wanner, Solving Ordinary Differential Equations II,
/// section IV.7; coefficients from memory, their order is measured in the tests.
/// The state holds the heat of every node over the reference, J, then the energy of every heater, J.
/// </summary>
internal sealed class RosenbrockStep
{
    private const int Stages = 6;
    private const double Gamma = 0.25;

    private static readonly double[][] A =
    [
        [],
        [1.544],
        [0.9466785280815826, 0.2557011698983284],
        [3.314825187068521, 2.896124015972201, 0.9986419139977817],
        [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950],
        [1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1],
    ];

    private static readonly double[][] C =
    [
        [],
        [-5.6688],
        [-2.430093356833875, -0.2063599157091915],
        [-0.1073529058151375, -9.594562251023355, -20.47028614809616],
        [7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160],
        [8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054],
    ];

    private static readonly double[] Time = [0, 0.386, 0.21, 0.63, 1, 1];
    private static readonly double[] TimeSlope = [0.25, -0.1043, 0.1035, -0.0362, 0, 0];

    private readonly ThermalNetwork _network;
    private readonly HeatBalance _balance;
    private readonly LinearSystem _system;
    private readonly int _size;
    private readonly double[][] _k;
    private readonly double[] _y, _temperature, _capacity, _heatRate, _timeSlope;

    public RosenbrockStep(ThermalNetwork network, HeatBalance balance)
    {
        _network = network;
        _balance = balance;
        _system = new LinearSystem(balance.Nodes);
        _size = balance.Nodes + balance.Heaters;
        _k = [.. Enumerable.Range(0, Stages).Select(_ => new double[_size])];
        (_y, _heatRate, _timeSlope) = (new double[_size], new double[_size], new double[_size]);
        (_temperature, _capacity) = (new double[balance.Nodes], new double[balance.Nodes]);
        Result = new double[_size];
        Error = new double[_size];
    }

    public double[] Result { get; }

    /// <summary>Difference of the two orders, J.</summary>
    public double[] Error { get; }

    /// <summary>Temperatures of a state at a time, °C.</summary>
    public void Temperatures(ReadOnlySpan<double> state, double timeS, Span<double> temperatureC)
    {
        for (int i = 0; i < _network.Nodes.Length; i++)
        {
            ThermalNode node = _network.Nodes[i];
            temperatureC[i] = node.IsHeld
                ? node.StartC
                : _network.ReferenceC + state[i] / (node.CapacityJK + node.GrowthWK * timeS);
        }
    }

    /// <summary>Rates of a state, W.</summary>
    public void Rates(ReadOnlySpan<double> state, double timeS, Span<double> rateW)
    {
        Temperatures(state, timeS, _temperature);
        _balance.Evaluate(_temperature);
        _balance.InflowW.CopyTo(rateW);
        _balance.PowerW.CopyTo(rateW[_balance.Nodes..]);
    }

    public void Take(ReadOnlySpan<double> state, double timeS, double stepS)
    {
        Prepare(state, timeS, stepS);
        for (int s = 0; s < Stages; s++)
        {
            state.CopyTo(_y);
            for (int j = 0; j < s; j++) AddScaled(_y, _k[j], A[s][j]);
            Rates(_y, timeS + Time[s] * stepS, _heatRate);
            double[] k = _k[s];
            for (int i = 0; i < _size; i++) k[i] = _heatRate[i] + stepS * TimeSlope[s] * _timeSlope[i];
            for (int j = 0; j < s; j++) AddScaled(k, _k[j], C[s][j] / stepS);
            SolveStage(k, stepS);
        }
        _y.CopyTo(Result, 0);
        AddScaled(Result, _k[Stages - 1], 1);
        _k[Stages - 1].CopyTo(Error, 0);
    }

    private void Prepare(ReadOnlySpan<double> state, double timeS, double stepS)
    {
        int n = _balance.Nodes;
        Temperatures(state, timeS, _temperature);
        _balance.Differentiate(_temperature);
        Array.Clear(_timeSlope);
        for (int j = 0; j < n; j++)
        {
            ThermalNode node = _network.Nodes[j];
            _capacity[j] = node.CapacityJK + node.GrowthWK * timeS;
            double drift = node.IsHeld ? 0 : -(_temperature[j] - _network.ReferenceC) * node.GrowthWK / _capacity[j];
            for (int i = 0; i < n; i++)
            {
                _system.Matrix[i, j] = (i == j ? 1 / (stepS * Gamma) : 0) - _balance.Slopes[i, j] / _capacity[j];
                _timeSlope[i] += _balance.Slopes[i, j] * drift;
            }
            for (int h = 0; h < _balance.Heaters; h++) _timeSlope[n + h] += _balance.PowerSlopes[h, j] * drift;
        }
        _system.Factorise();
    }

    // The energies of the heaters depend on the nodes but not the other way round: nodes first, then they follow.
    private void SolveStage(double[] k, double stepS)
    {
        int n = _balance.Nodes;
        _system.Solve(k.AsSpan(0, n));
        for (int h = 0; h < _balance.Heaters; h++)
        {
            double sum = k[n + h];
            for (int j = 0; j < n; j++) sum += _balance.PowerSlopes[h, j] * k[j] / _capacity[j];
            k[n + h] = sum * stepS * Gamma;
        }
    }

    private static void AddScaled(double[] to, double[] what, double factor)
    {
        for (int i = 0; i < to.Length; i++) to[i] += factor * what[i];
    }
}
