using CsCheck;
using Platewright.Build.Heat;
using Platewright.Build.Heat.Network;
using Platewright.Machines;

namespace Platewright.Tests.Heat;

/// <summary>Energy in = energy stored + energy lost, for random machines, materials and builds.</summary>
public sealed class EnergyBalanceTests
{
    private const double Closes = 1e-6;

    // The state between two steps is a cubic: the energy found again along it is known that much worse.
    private const double FoundAgain = 2e-4;

    private static readonly HeatLimits Warm = new(230, 80, 45);

    [Fact]
    public void Stage_RandomMachine_ClosesItsEnergyBalance() =>
        Gen.Select(RandomHeating.Any, RandomHeating.AnyMaterial, RandomHeating.AnyLoad).Sample(
            (heating, material, load) =>
            {
                StageRun before = Start(heating, new Situation(22, Warm, true, heating.ElectronicsW), null);
                before.Run.Run(1200);
                AssertCloses(before);
                PartBody? part = PartBody.Of(material, load);
                double otherW = heating.ElectronicsW + heating.MotorsW;
                Situation building = new(22, Warm, true, otherW) { Building = true, Part = part };
                StageRun run = Start(heating, building, before);
                run.Run.Run(load.Seconds);
                AssertCloses(run);
                StageRun cooling = Start(heating, new Situation(22, null, true, 0) { Part = part }, run);
                cooling.Run.Run(3600);
                AssertCloses(cooling);
                AssertHeatCarriesOver(run, cooling);
            },
            iter: 60, threads: 1);

    [Fact]
    public void Energy_RandomMachine_IsThatOfThePowersAlongTheRun() =>
        Gen.Select(RandomHeating.Any, RandomHeating.AnyLoad).Sample(
            (heating, load) =>
            {
                StageRun run = Start(heating, new Situation(22, Warm, true, heating.ElectronicsW), null);
                run.Run.Run(load.Seconds);
                double[] temperature = new double[run.Machine.Network.Nodes.Length];
                double energy = 0, lost = 0;
                foreach (RunStep step in run.Run.Steps)
                {
                    foreach ((double place, double weight) in Gauss)
                    {
                        double power = run.Run.At(step, step.StartS + place * step.LengthS, temperature);
                        energy += weight * step.LengthS * power;
                        foreach (ThermalLink link in run.Machine.Network.Links)
                            if (link.To == run.Machine.Room)
                            {
                                double heat = link.Law.HeatW(temperature[link.From], temperature[link.To]);
                                lost += weight * step.LengthS * heat;
                            }
                    }
                }
                Assert.InRange(energy / run.Run.EnergyJ, 1 - FoundAgain, 1 + FoundAgain);
                double stated = run.Run.State[run.Machine.Room];
                Assert.InRange(lost / stated, 1 - FoundAgain, 1 + FoundAgain);
            },
            iter: 40, threads: 1);

    [Fact]
    public void Supply_RandomMachine_IsNeverExceeded() =>
        RandomHeating.Any.Sample(
            heating =>
            {
                StageRun run = Start(heating, new Situation(22, Warm, true, heating.ElectronicsW), null);
                run.Run.Run(7200);
                Assert.True(run.PeakW <= heating.SupplyW + 1e-6);
                foreach (RunStep step in run.Run.Steps)
                    foreach (double power in step.EndRate[run.Machine.Network.Nodes.Length..])
                        Assert.True(power >= -1e-6);
            },
            iter: 60, threads: 1);

    // Gauss-Legendre with three points on 0 … 1.
    private static readonly (double Place, double Weight)[] Gauss =
        [(0.5 - Math.Sqrt(0.15), 5.0 / 18), (0.5, 8.0 / 18), (0.5 + Math.Sqrt(0.15), 5.0 / 18)];

    private static StageRun Start(Heating heating, Situation situation, StageRun? before) =>
        StageRun.Start(CycleStage.Building, MachineNetwork.Of(heating, situation), situation.OtherW, before);

    private static void AssertCloses(StageRun stage)
    {
        double stored = 0, scale = stage.Run.EnergyJ;
        for (int i = 0; i < stage.Machine.Network.Nodes.Length; i++)
        {
            ThermalNode node = stage.Machine.Network.Nodes[i];
            double above = stage.StartTemperatureC[i] - stage.Machine.Network.ReferenceC;
            double before = node.IsHeld ? 0 : node.CapacityJK * above;
            // What is in a node follows from its temperature alone; a held node shows what was lost to it.
            double after = node.IsHeld
                ? stage.Run.State[i]
                : (node.CapacityJK + node.GrowthWK * stage.Run.TimeS)
                    * (stage.Run.TemperatureC[i] - stage.Machine.Network.ReferenceC);
            stored += after - before;
            scale = Math.Max(scale, Math.Abs(before));
        }
        Assert.True(
            Math.Abs(stage.Run.EnergyJ - stored) <= Closes * scale, $"{stage.Run.EnergyJ} J in, {stored} J found");
    }

    // The part ends its build with the mass it is cooled down with: no heat is lost between the stages.
    private static void AssertHeatCarriesOver(StageRun run, StageRun cooling)
    {
        double end = 0, start = 0;
        for (int i = 0; i < run.Machine.Network.Nodes.Length; i++)
            if (!run.Machine.Network.Nodes[i].IsHeld) end += run.Run.State[i];
        for (int i = 0; i < cooling.Machine.Network.Nodes.Length; i++)
            if (!cooling.Machine.Network.Nodes[i].IsHeld)
                start += cooling.Machine.Network.Nodes[i].CapacityJK * (cooling.StartTemperatureC[i] - 22);
        // The part has its first share of mass besides what it grows by.
        Assert.InRange(start / end, 0.97, 1.03);
    }
}
