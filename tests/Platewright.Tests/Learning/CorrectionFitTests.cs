using Platewright.Build.Learning;

namespace Platewright.Tests.Learning;

/// <summary>What past jobs teach, and that its interval is honest.</summary>
public sealed class CorrectionFitTests
{
    [Theory]
    // Abramowitz and Stegun, table 26.10: 97.5 % quantiles of Student's t.
    [InlineData(5, 2.571)]
    [InlineData(10, 2.228)]
    [InlineData(30, 2.042)]
    public void StudentQuantile_OfTabledDegrees_IsTheTables(double degrees, double expected) =>
        Assert.Equal(expected, CorrectionFit.StudentQuantile(degrees), 0.004);

    [Fact]
    public void Fit_OfManyEqualJobs_GivesTheirRatioAndANarrowInterval()
    {
        Correction found = CorrectionFit.Of([.. Enumerable.Repeat(1.3, 60)]);
        Assert.Equal(1.3, found.Factor, 0.01);
        Assert.InRange(found.High, 0, 0.1);
        Assert.Equal(60, found.Jobs);
    }

    [Fact]
    public void Fit_WithOneJobGoneWrong_HardlyMoves()
    {
        double[] jobs = [1.1, 1.08, 1.12, 1.11, 1.09, 1.1];
        double without = CorrectionFit.Of(jobs).Factor, with = CorrectionFit.Of([.. jobs, 4]).Factor;
        Assert.InRange(with / without, 0.99, 1.03);
    }

    [Fact]
    public void Fit_OfThreeJobs_MovesMostOfTheWayButNotAll()
    {
        double factor = CorrectionFit.Of([1.2, 1.2, 1.2]).Factor;
        Assert.InRange(factor, 1.12, 1.2);
    }

    [Fact]
    public void Fit_OfTwoJobs_IsRefused() => Assert.Throws<ArgumentException>(() => CorrectionFit.Of([1, 1]));

    /// <summary>
    /// Machines are off by as much as the prior says, jobs scatter by 3 to 15 %, one in ten goes wrong by up to three times. The next
    /// job that goes as usual lies in the 95 % interval at least 94 times of 100, at every number of jobs.
    /// </summary>
    [Theory]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(12)]
    [InlineData(40)]
    public void Interval_OverSimulatedMachines_CoversTheNextJob(int jobs)
    {
        const int trials = 4000;
        Random random = new(7 * jobs);
        int covered = 0;
        for (int t = 0; t < trials; t++)
        {
            double off = 0.114 * Normal(random), scatter = 0.03 + 0.12 * random.NextDouble();
            double[] ratios = [.. Enumerable.Range(0, jobs).Select(_ => Job(random, off, scatter))];
            Correction found = CorrectionFit.Of(ratios);
            double next = Math.Exp(off + scatter * Normal(random)) / found.Factor - 1;
            if (next >= found.Low && next <= found.High) covered++;
        }
        Assert.InRange((double)covered / trials, 0.94, 0.995);
    }

    private static double Job(Random random, double off, double scatter)
    {
        double usual = off + scatter * Normal(random);
        return Math.Exp(random.NextDouble() < 0.1 ? usual + Math.Log(1 + 2 * random.NextDouble()) : usual);
    }

    private static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
