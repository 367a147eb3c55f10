using CsCheck;
using MathNet.Numerics.Distributions;
using Platewright.Sizing;
using Platewright.Sizing.Statistics;

namespace Platewright.Tests.Sizing;

public sealed class FinitePopulationTests
{
    private static readonly Gen<(int Count, int Of, int Population, double Confidence)> Samples =
        from of in Gen.Int[1, 400]
        from count in Gen.Int[0, of]
        from more in Gen.Int[0, 2000]
        from confidence in Gen.Double[0.5, 0.999]
        select (count, of, of + more, confidence);

    [Fact]
    public void Wilson_KnownPopulation_LiesWithinTheEndlessIntervalAndHoldsTheShare() => Samples.Sample(s =>
    {
        Share endless = Share.Wilson(s.Count, s.Of, s.Confidence);
        Share finite = Share.Wilson(s.Count, s.Of, s.Confidence, s.Population);
        Assert.InRange(finite.Low, endless.Low - 1e-15, finite.Value);
        Assert.InRange(finite.High, finite.Value, endless.High + 1e-15);
        // What was seen is certain.
        Assert.True(finite.Low * s.Population >= s.Count - 1e-9);
        Assert.True((1 - finite.High) * s.Population >= s.Of - s.Count - 1e-9);
    });

    [Fact]
    public void Wilson_KnownPopulation_EndsSolveTheScoreEquation() => Samples.Sample(s =>
    {
        Share share = Share.Wilson(s.Count, s.Of, s.Confidence, s.Population);
        double z = NormalQuantile.Of((1 + s.Confidence) / 2);
        double whole = s.Population;
        double seenLow = s.Count / whole;
        double seenHigh = 1 - (s.Of - s.Count) / whole;
        foreach ((double end, double seen) in ((double, double)[])[(share.Low, seenLow), (share.High, seenHigh)])
        {
            if (Math.Abs(end - seen) < 1e-12) continue;
            // Wilson's definition with the variance of a sample without replacement, p (1 − p) / n · (N − n) / (N − 1).
            double variance = end * (1 - end) / s.Of * (s.Population - s.Of) / (s.Population - 1);
            Assert.Equal(Math.Pow(share.Value - end, 2), z * z * variance, 1e-12);
        }
    });

    [Fact]
    public void Wilson_WholePopulationSeen_IsTheShareExactly() => Samples.Sample(s =>
    {
        Share share = Share.Wilson(s.Count, s.Of, s.Confidence, s.Of);
        Assert.Equal(share.Value, share.Low);
        Assert.Equal(share.Value, share.High);
    });

    [Fact]
    public void Wilson_HugePopulation_IsTheEndlessInterval() =>
        Assert.Equal(Share.Wilson(7, 18, 0.95).High, Share.Wilson(7, 18, 0.95, int.MaxValue).High, 1e-7);

    [Fact]
    public void Wilson_NoProjectSeen_SaysNothing() =>
        Assert.Equal(new Share(0, 0, 0, 1), Share.Wilson(0, 0, 0.95, 30));

    [Theory]
    [InlineData(5, 18, 17)]
    [InlineData(0, 0, -1)]
    public void Wilson_PopulationSmallerThanTheSample_IsRefused(int count, int of, int population) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Share.Wilson(count, of, 0.95, population));

    [Theory]
    [InlineData(18, 40)]
    [InlineData(18, 200)]
    [InlineData(10, 12)]
    [InlineData(60, 100)]
    public void Wilson_KnownPopulation_CoversAsOftenAsItSays(int of, int population)
    {
        // Every population with 0 … N that count, every sample, weighted by its hypergeometric probability. Score
        // intervals cover their confidence on average and dip below it at some shares: Agresti and Coull, The American
        // Statistician 52 (1998) 119-126, find dips to about 0.85 without the correction.
        var covered = new double[population + 1];
        for (int counting = 0; counting <= population; counting++)
        {
            var samples = new Hypergeometric(population, counting, of);
            double truth = (double)counting / population;
            for (int count = samples.Minimum; count <= samples.Maximum; count++)
            {
                Share share = Share.Wilson(count, of, 0.95, population);
                bool holds = truth >= share.Low - 1e-12 && truth <= share.High + 1e-12;
                if (holds) covered[counting] += samples.Probability(count);
            }
        }
        Assert.InRange(covered.Average(), 0.94, 0.99);
        Assert.True(covered.Min() > 0.8, $"Covered at least {covered.Min()}.");
        double withoutCorrection = Share.Wilson(of / 2, of, 0.95).High - Share.Wilson(of / 2, of, 0.95).Low;
        double withCorrection =
            Share.Wilson(of / 2, of, 0.95, population).High - Share.Wilson(of / 2, of, 0.95, population).Low;
        Assert.True(withCorrection < withoutCorrection);
    }

    [Fact]
    public void Correction_WithoutAKnownWhole_ChangesNothing()
    {
        Assert.Equal(1, FinitePopulation.Correction(18, null));
        Assert.Equal(18, FinitePopulation.EffectiveSize(18, 18, null));
        Assert.Equal(0, FinitePopulation.Correction(18, 18));
        Assert.Equal(0.75, FinitePopulation.Correction(10, 40));
    }
}
