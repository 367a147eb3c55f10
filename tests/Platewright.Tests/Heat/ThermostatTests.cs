using Platewright.Build.Heat.Network;

namespace Platewright.Tests.Heat;

/// <summary>Thermostats and the supply's limit are events in time, found where closed solutions have them.</summary>
public sealed class ThermostatTests
{
    private const double Room = 20;

    // Two bodies, each with its own loss: nozzle 25 J/K and 0.1 W/K, bed 900 J/K and 1.5 W/K.
    private static ThermalNetwork Two(double supplyW, double nozzleSetC, double bedSetC) => new(
        [new("nozzle", 25, Room), new("bed", 900, Room), new("room", double.PositiveInfinity, Room)],
        [new(0, 2, new LinearLaw(0.1)), new(1, 2, new LinearLaw(1.5))],
        [new(0, 50, nozzleSetC), new(1, 250, bedSetC)], Room)
    {
        SupplyW = supplyW,
    };

    [Fact]
    public void Supply_ServesTheNozzleFirst_BedFollowsTheClosedSolution()
    {
        // 200 W: the bed has 150 while the nozzle takes 50, and 200 less its 20 W once it holds 220 °C.
        double nozzleS = -25 / 0.1 * Math.Log((500 - 200) / 500.0);
        double bedThen = 100 * (1 - Math.Exp(-nozzleS * 1.5 / 900));
        double more = -900 / 1.5 * Math.Log((120 - 80) / (120 - bedThen));
        NetworkRun run = new(Two(200, 220, 100));
        Assert.True(run.Run(1e6, new Goal(1, 100, true)));
        Assert.Equal(nozzleS + more, run.TimeS, 1e-4 * run.TimeS);
        Assert.Contains(run.Steps, s => Math.Abs(s.EndS - nozzleS) < 1e-4 * nozzleS);
        double energy = 200 * run.TimeS;
        Assert.Equal(energy, run.EnergyJ, 1e-5 * energy);
    }

    [Fact]
    public void Supply_LimitEnds_WhereTheBedTakesAllItCan()
    {
        // 265 W: the bed is limited to 215 W until the nozzle holds with 20 W, then only by its own 250 W... less 5.
        NetworkRun run = new(Two(275, 220, 140));
        run.Run(2000);
        HeaterMode[] bed = [.. run.Steps.Select(s => s.Modes[1]).Distinct()];
        Assert.Equal([HeaterMode.Shared, HeaterMode.Full, HeaterMode.Holding], bed);
    }

    [Fact]
    public void Holding_LongRun_StaysAtTheSetting()
    {
        NetworkRun run = new(Two(1000, 220, 100));
        run.Run(50_000);
        Assert.Equal(220, run.TemperatureC[0], 1e-6);
        Assert.Equal(100, run.TemperatureC[1], 1e-6);
        Assert.Equal(20, run.PowerW[0], 1e-5);
        Assert.Equal(120, run.PowerW[1], 1e-5);
        Assert.True(run.Steps.Count < 100, $"{run.Steps.Count} steps");
    }

    [Fact]
    public void Holding_SurroundingsTurnWarmer_IsOffUntilItCools()
    {
        // The room's part is played by a body that starts hot and cools: the heater is off, then takes over.
        ThermalNetwork network = new(
            [new("bed", 100, 60), new("stove", 5000, 200), new("room", double.PositiveInfinity, Room)],
            [new(0, 1, new LinearLaw(0.5)), new(0, 2, new LinearLaw(1)), new(1, 2, new LinearLaw(5))],
            [new(0, 200, 60)], Room);
        NetworkRun run = new(network);
        run.Run(20_000);
        Assert.Equal([HeaterMode.Off, HeaterMode.Holding], run.Steps.Select(s => s.Modes[0]).Distinct().ToArray());
        Assert.Equal(60, run.TemperatureC[0], 1e-6);
        Assert.Equal(SteadyState.Of(network).PowerW[0], run.PowerW[0], 1e-3);
    }

    [Fact]
    public void SteadyState_ShortSupply_NozzleHoldsAndBedStalls()
    {
        var steady = SteadyState.Of(Two(100, 220, 100));
        Assert.Equal(220, steady.TemperatureC[0], 1e-6);
        Assert.Equal(Room + (100 - 20) / 1.5, steady.TemperatureC[1], 1e-6);
    }

    [Fact]
    public void LongRun_AnyStart_EndsInTheSteadyState()
    {
        foreach (double supply in new[] { 30.0, 60, 130, 180, 400 })
        {
            ThermalNetwork network = Two(supply, 220, 100);
            NetworkRun run = new(network);
            run.Run(1e6);
            var steady = SteadyState.Of(network);
            for (int i = 0; i < 2; i++) Assert.Equal(steady.TemperatureC[i], run.TemperatureC[i], 1e-3);
        }
    }
}
