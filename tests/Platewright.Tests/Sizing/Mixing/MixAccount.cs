using Platewright.Sizing.Mixing;

namespace Platewright.Tests.Sizing.Mixing;

/// <summary>Recounts a mix from the problem alone, and compares.</summary>
internal static class MixAccount
{
    private const double Rounding = 1e-6;

    /// <summary>For problems whose numbers lie on the grid, so that nothing is rounded.</summary>
    public static void Check(MixProblem problem, MachineMix mix)
    {
        decimal running = 0;
        double covered = 0;
        var hours = new double[problem.Kinds.Length];
        for (int p = 0; p < problem.Projects.Length; p++)
        {
            MixProject project = problem.Projects[p];
            int[] made = [.. mix.KindOfJob[p]];
            Assert.Equal(project.Jobs.Length, made.Length);
            // All of a project or nothing of it.
            if (made.Contains(-1))
            {
                Assert.All(made, k => Assert.Equal(-1, k));
                continue;
            }
            covered += project.Weight;
            for (int i = 0; i < made.Length; i++)
            {
                JobOn? on = project.Jobs[i].On[made[i]];
                Assert.NotNull(on);
                Assert.True(mix.Counts[made[i]] > 0, "A job is made on a kind that is not in the mix.");
                running += on.Value.CostPerMonth;
                hours[made[i]] += on.Value.HoursPerMonth;
            }
        }
        decimal machines = 0, price = 0;
        double floor = 0, power = 0;
        for (int k = 0; k < hours.Length; k++)
        {
            MixKind kind = problem.Kinds[k];
            int count = mix.Counts[k];
            Assert.InRange(count, kind.Least, kind.Most);
            Assert.InRange(hours[k], 0, kind.HoursPerMonth * count + Rounding);
            Assert.Equal(hours[k], mix.HoursUsed[k], Rounding);
            machines += count * kind.CostPerMonth;
            price += count * kind.Price;
            floor += count * kind.FloorM2;
            power += count * kind.PeakW;
        }
        Assert.Equal(machines, mix.MachineCost);
        Assert.Equal(running, mix.RunningCost);
        Assert.Equal(machines + running, mix.MonthlyCost);
        Assert.Equal(price, mix.Price);
        Assert.Equal(floor, mix.FloorM2, Rounding);
        Assert.Equal(power, mix.PeakW, Rounding);
        Assert.True(price <= (problem.Limits.Budget ?? decimal.MaxValue), "budget");
        Assert.True(floor <= (problem.Limits.FloorM2 ?? double.MaxValue) + Rounding, "floor");
        Assert.True(power <= (problem.Limits.PowerW ?? double.MaxValue) + Rounding, "power");
        Assert.True(mix.Counts.Sum() <= (problem.Limits.Machines ?? int.MaxValue), "machines");
        double all = problem.Projects.Sum(p => p.Weight);
        Assert.Equal(all == 0 ? 1 : covered / all, mix.CoveredShare, Rounding);
    }
}
