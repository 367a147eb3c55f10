using Platewright.Build.Heat.Network;

namespace Platewright.Tests.Heat;

/// <summary>The integrator has the order its coefficients promise, on a network that uses all it can do.</summary>
public sealed class RosenbrockStepTests
{
    // Radiation, a growing body, a stream, a heater that holds and one that takes what the supply leaves.
    private static readonly ThermalNetwork Network = new(
        [
            new("nozzle", 25, 230), new("bed", 900, 60), new("part", 5, 22) { GrowthWK = 0.02 },
            new("room", double.PositiveInfinity, 22),
        ],
        [
            new(0, 3, new LinearLaw(0.1)), new(0, 2, new StreamLaw(0.02, 22)), new(0, 1, new RadiationLaw(0.002)),
            new(1, 3, new RadiationLaw(0.08)), new(1, 3, new PowerLaw(0.2, 0.25)), new(1, 2, new LinearLaw(0.1)),
            new(2, 3, new RadiationLaw(0.01)),
        ],
        [new(0, 60, 230), new(1, 300, 110)], 22)
    {
        SupplyW = 150,
    };

    [Fact]
    public void FixedSteps_Halved_ReduceTheErrorSixteenfold()
    {
        double[] exact = March(4096), coarse = March(16), fine = March(32);
        for (int i = 1; i < exact.Length; i++)
        {
            if (i == 3) continue;
            double ratio = (coarse[i] - exact[i]) / (fine[i] - exact[i]);
            Assert.InRange(ratio, 11, 22);
        }
    }

    [Fact]
    public void Steps_StiffBody_StayStable()
    {
        // Time constant 1 ms, steps of 100 s.
        ThermalNetwork stiff = Lumped.Of(1e-3, 500, 20, new LinearLaw(1));
        HeatBalance balance = new(stiff);
        RosenbrockStep step = new(stiff, balance);
        step.Take([0.48, 0], 0, 100);
        Assert.InRange(step.Result[0] / 0.48, -1e-3, 1e-3);
    }

    private static double[] March(int steps)
    {
        HeatBalance balance = new(Network);
        balance.Modes[0] = HeaterMode.Holding;
        balance.Modes[1] = HeaterMode.Shared;
        RosenbrockStep step = new(Network, balance);
        double[] state = [25 * (230 - 22), 900 * (60 - 22), 0, 0, 0, 0];
        const double until = 200;
        double h = until / steps;
        for (int i = 0; i < steps; i++)
        {
            step.Take(state, i * h, h);
            state = [.. step.Result];
        }
        return state;
    }
}
