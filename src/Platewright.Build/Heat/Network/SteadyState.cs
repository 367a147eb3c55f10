namespace Platewright.Build.Heat.Network;

/// <summary>Where a network ends: nothing changes any more, and the heaters draw what they draw there.</summary>
/// <param name="TemperatureC">Of every node, °C.</param>
/// <param name="PowerW">Of every heater, W.</param>
public sealed record SteadyState(double[] TemperatureC, double[] PowerW)
{
    // A Newton step of this size is rounding, K; none goes further than the other; and the balance is softened a
    // little, W/K, where laws of a power have no slope.
    private const double Settled = 1e-10, FarthestK = 60, Softening = 1e-9;

    // Settings are met to this, K and W.
    private const double Slack = 1e-6;

    private const int MostSteps = 400, MostRounds = 20;

    /// <summary>
    /// Solves the balance by Newton's method; which heaters hold, which are full on and which are off is found by
    /// changing those whose state contradicts the answer, then, should that go round in circles, by trying all.
    /// </summary>
    public static SteadyState Of(ThermalNetwork network)
    {
        HeatBalance balance = new(network);
        double[] temperature = [.. network.Nodes.Select(n => n.StartC)];
        Array.Fill(balance.Modes, HeaterMode.Full);
        for (int round = 0; round < MostRounds; round++)
            if (Solve(network, balance, temperature) && !Correct(network, balance, temperature))
                return new SteadyState(temperature, [.. balance.PowerW]);
        for (int all = 0; all < Math.Pow(4, balance.Heaters); all++)
        {
            for (int h = 0, code = all; h < balance.Heaters; h++, code /= 4) balance.Modes[h] = (HeaterMode)(code % 4);
            for (int i = 0; i < temperature.Length; i++) temperature[i] = network.Nodes[i].StartC;
            if (Solve(network, balance, temperature) && !Correct(network, balance, temperature))
                return new SteadyState(temperature, [.. balance.PowerW]);
        }
        throw new InvalidOperationException("Bug in Platewright: no steady state of a heat network was found.");
    }

    private static bool Solve(ThermalNetwork network, HeatBalance balance, double[] temperature)
    {
        LinearSystem system = new(balance.Nodes);
        double[] change = new double[balance.Nodes];
        for (int h = 0; h < balance.Heaters; h++)
            if (balance.Modes[h] == HeaterMode.Holding) temperature[network.Heaters[h].Node] = network.Heaters[h].SetC;
        for (int step = 0; step < MostSteps; step++)
        {
            balance.Evaluate(temperature);
            balance.Differentiate(temperature);
            for (int i = 0; i < balance.Nodes; i++)
            {
                bool isFixed = IsFixed(network, balance, i);
                for (int j = 0; j < balance.Nodes; j++)
                    system.Matrix[i, j] = isFixed ? (i == j ? 1 : 0) : -balance.Slopes[i, j] + (i == j ? Softening : 0);
                change[i] = isFixed ? 0 : balance.InflowW[i];
            }
            system.Factorise();
            system.Solve(change);
            double largest = 0;
            for (int i = 0; i < change.Length; i++)
            {
                temperature[i] += Math.Clamp(change[i], -FarthestK, FarthestK);
                largest = Math.Max(largest, Math.Abs(change[i]));
            }
            if (largest > Settled) continue;
            balance.Evaluate(temperature);
            return true;
        }
        return false;
    }

    private static bool IsFixed(ThermalNetwork network, HeatBalance balance, int node)
    {
        if (network.Nodes[node].IsHeld) return true;
        for (int h = 0; h < balance.Heaters; h++)
            if (network.Heaters[h].Node == node && balance.Modes[h] == HeaterMode.Holding) return true;
        return false;
    }

    // True when a mode had to change.
    private static bool Correct(ThermalNetwork network, HeatBalance balance, double[] temperature)
    {
        for (int h = 0; h < balance.Heaters; h++)
        {
            ThermalHeater heater = network.Heaters[h];
            double excess = temperature[heater.Node] - heater.SetC, left = balance.LeftW(h);
            HeaterMode on = heater.PowerW > left ? HeaterMode.Shared : HeaterMode.Full;
            HeaterMode right = balance.Modes[h] switch
            {
                HeaterMode.Off => excess < -Slack ? HeaterMode.Holding : HeaterMode.Off,
                HeaterMode.Holding when balance.PowerW[h] < -Slack => HeaterMode.Off,
                HeaterMode.Holding when balance.PowerW[h] > Math.Min(heater.PowerW, left) + Slack => on,
                HeaterMode.Holding => HeaterMode.Holding,
                _ => excess > Slack ? HeaterMode.Holding : on,
            };
            if (right == balance.Modes[h]) continue;
            balance.Modes[h] = right;
            return true;
        }
        return false;
    }
}
