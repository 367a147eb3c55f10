namespace Platewright.Build.Heat.Network;

/// <summary>What a heater does until the next event.</summary>
internal enum HeaterMode : byte
{
    Off,

    /// <summary>Full on, limited by its own power.</summary>
    Full,

    /// <summary>Full on, limited by what the supply has left.</summary>
    Shared,

    /// <summary>At its setting, with the power that keeps it there.</summary>
    Holding,
}

/// <summary>
/// Heat into every node, and its slopes, at given temperatures and modes of the heaters. Conserves energy term by term:
/// what leaves a node arrives in another, so any linear sum over the nodes holds in every step of the integrator.
/// </summary>
internal sealed class HeatBalance
{
    private readonly ThermalNetwork _network;
    private readonly ThermalLink[] _links;
    private readonly double[,] _powerSlopes;

    public HeatBalance(ThermalNetwork network)
    {
        _network = network;
        _links = [.. network.Links];
        Nodes = network.Nodes.Length;
        Heaters = network.Heaters.Length;
        Modes = new HeaterMode[Heaters];
        PowerW = new double[Heaters];
        InflowW = new double[Nodes];
        Slopes = new double[Nodes, Nodes];
        _powerSlopes = new double[Heaters, Nodes];
    }

    public int Nodes { get; }

    public int Heaters { get; }

    public HeaterMode[] Modes { get; }

    /// <summary>Power of each heater, W, after <see cref="Evaluate"/>.</summary>
    public double[] PowerW { get; }

    /// <summary>Net heat into each node, W; held nodes show what they take.</summary>
    public double[] InflowW { get; }

    /// <summary>∂ inflow / ∂ temperature, W/K, after <see cref="Differentiate"/>.</summary>
    public double[,] Slopes { get; }

    /// <summary>∂ power / ∂ temperature, W/K, after <see cref="Differentiate"/>.</summary>
    public double[,] PowerSlopes => _powerSlopes;

    public double TotalPowerW
    {
        get
        {
            double sum = 0;
            foreach (double p in PowerW) sum += p;
            return sum;
        }
    }

    /// <summary>What the supply leaves for heater <paramref name="h"/> after those served before it, W.</summary>
    public double LeftW(int h)
    {
        double left = _network.SupplyW;
        for (int i = 0; i < h; i++) left -= PowerW[i];
        return left;
    }

    public void Evaluate(ReadOnlySpan<double> temperatureC)
    {
        Array.Clear(InflowW);
        foreach (ThermalLink link in _links)
        {
            double heat = link.Law.HeatW(temperatureC[link.From], temperatureC[link.To]);
            InflowW[link.From] -= heat;
            InflowW[link.To] += heat;
        }
        for (int h = 0; h < Heaters; h++)
        {
            ThermalHeater heater = _network.Heaters[h];
            PowerW[h] = Modes[h] switch
            {
                HeaterMode.Full => heater.PowerW,
                HeaterMode.Shared => LeftW(h),
                HeaterMode.Holding => -InflowW[heater.Node],
                _ => 0,
            };
            InflowW[heater.Node] += PowerW[h];
        }
    }

    public void Differentiate(ReadOnlySpan<double> temperatureC)
    {
        Array.Clear(Slopes);
        Array.Clear(_powerSlopes);
        foreach (ThermalLink link in _links)
        {
            (double from, double to) = link.Law.Slopes(temperatureC[link.From], temperatureC[link.To]);
            Slopes[link.From, link.From] -= from;
            Slopes[link.From, link.To] -= to;
            Slopes[link.To, link.From] += from;
            Slopes[link.To, link.To] += to;
        }
        for (int h = 0; h < Heaters; h++)
        {
            int node = _network.Heaters[h].Node;
            for (int j = 0; j < Nodes; j++)
            {
                double slope = 0;
                if (Modes[h] == HeaterMode.Holding)
                    slope = -Slopes[node, j];
                else if (Modes[h] == HeaterMode.Shared)
                    for (int i = 0; i < h; i++) slope -= _powerSlopes[i, j];
                _powerSlopes[h, j] = slope;
                Slopes[node, j] += slope;
            }
        }
    }
}
