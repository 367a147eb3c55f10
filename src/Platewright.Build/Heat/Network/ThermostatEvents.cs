namespace Platewright.Build.Heat.Network;

/// <summary>
/// When a heater changes its mode: two conditions for each, broken where the value is above zero.
/// Off: fell below the setting. Full and Shared: rose above it; the supply has less, or more, than the heater's own
/// power. Holding: needs more than it may draw, or less than nothing.
/// </summary>
internal sealed class ThermostatEvents(ThermalNetwork network, HeatBalance balance)
{
    public const int PerHeater = 2;

    // How far a condition must be broken, K and W: more than an event is located to, so that no switch undoes itself.
    private const double Hysteresis = 1e-7;

    public int Count => PerHeater * balance.Heaters;

    /// <summary>The value of one condition, after the balance was evaluated at these temperatures.</summary>
    public double Value(int index, ReadOnlySpan<double> temperatureC)
    {
        int h = index / PerHeater;
        bool first = index % PerHeater == 0;
        ThermalHeater heater = network.Heaters[h];
        double excess = temperatureC[heater.Node] - heater.SetC;
        double broken = (balance.Modes[h], first) switch
        {
            (HeaterMode.Off, true) => -excess,
            (HeaterMode.Full or HeaterMode.Shared, true) => excess,
            (HeaterMode.Full, false) => heater.PowerW - balance.LeftW(h),
            (HeaterMode.Shared, false) => balance.LeftW(h) - heater.PowerW,
            (HeaterMode.Holding, true) => balance.PowerW[h] - Math.Min(heater.PowerW, balance.LeftW(h)),
            (HeaterMode.Holding, false) => -balance.PowerW[h],
            _ => double.NegativeInfinity,
        };
        return broken - Hysteresis;
    }

    /// <summary>Changes the heater whose condition broke, and those that feel it through the supply.</summary>
    public void Switch(int index, ReadOnlySpan<double> temperatureC)
    {
        int switched = index / PerHeater;
        bool first = index % PerHeater == 0;
        balance.Modes[switched] = (balance.Modes[switched], first) switch
        {
            (HeaterMode.Off or HeaterMode.Full or HeaterMode.Shared, true) => HeaterMode.Holding,
            (HeaterMode.Holding, false) => HeaterMode.Off,
            _ => HeaterMode.Full,
        };
        for (int h = 0; h < balance.Heaters; h++) Limit(h, temperatureC);
    }

    /// <summary>Chooses every mode from the temperatures alone: at the start.</summary>
    public void ChooseModes(ReadOnlySpan<double> temperatureC)
    {
        for (int h = 0; h < balance.Heaters; h++)
        {
            double excess = temperatureC[network.Heaters[h].Node] - network.Heaters[h].SetC;
            balance.Modes[h] = Math.Abs(excess) <= Hysteresis ? HeaterMode.Holding
                : excess > 0 ? HeaterMode.Off
                : HeaterMode.Full;
            Limit(h, temperatureC);
        }
    }

    // The mode of a heater that is on follows from what those served before it leave; one that holds may find that it
    // cannot, or need not.
    private void Limit(int h, ReadOnlySpan<double> temperatureC)
    {
        balance.Evaluate(temperatureC);
        double own = network.Heaters[h].PowerW, left = balance.LeftW(h);
        bool lacks = balance.Modes[h] == HeaterMode.Holding && balance.PowerW[h] > Math.Min(own, left) + 2 * Hysteresis;
        if (lacks || balance.Modes[h] is HeaterMode.Full or HeaterMode.Shared)
            balance.Modes[h] = own > left ? HeaterMode.Shared : HeaterMode.Full;
        if (balance.Modes[h] == HeaterMode.Holding && balance.PowerW[h] < -2 * Hysteresis)
            balance.Modes[h] = HeaterMode.Off;
        balance.Evaluate(temperatureC);
    }
}
