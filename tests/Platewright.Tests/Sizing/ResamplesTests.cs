using System.Text.Json;
using Platewright.Sizing.Statistics;

namespace Platewright.Tests.Sizing;

public sealed class ResamplesTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(18)]
    [InlineData(1000)]
    public void Of_EveryResample_HasAsManyProjectsAsTheSample(int size)
    {
        double[] ones = [.. Enumerable.Repeat(1.0, size)];
        Assert.All(Resamples.Of(size, 50).Totals([ones])[0], total => Assert.Equal(size, total));
    }

    [Fact]
    public void Of_ManyDraws_ChoosesEveryProjectEquallyOften()
    {
        const int Size = 7;
        const int Draws = 20_000;
        double[][] each = [.. Enumerable.Range(0, Size).Select(i => Enumerable.Range(0, Size)
            .Select(j => i == j ? 1.0 : 0).ToArray())];
        double[][] counts = Resamples.Of(Size, Draws).Totals(each);
        foreach (double[] project in counts)
        {
            // Binomial counts: mean 1, variance 1 − 1/n; chance of none (1 − 1/n)ⁿ.
            Assert.Equal(1, project.Average(), 0.03);
            Assert.Equal(1 - 1.0 / Size, project.Average(c => (c - 1) * (c - 1)), 0.05);
            Assert.Equal(Math.Pow(1 - 1.0 / Size, Size), project.Count(c => c == 0) / (double)Draws, 0.015);
        }
    }

    [Fact]
    public void Of_Seed_DecidesTheDraws()
    {
        double[] numbers = [1, 10, 100, 1000];
        // SplitMix64 from seed 1234567 begins 6457827717110365317, 3203168211198807973, 9817491932198370423,
        // 4593380528125082431 (worked in whole numbers of unlimited size); four times each, over 2⁶⁴: 1, 0, 2, 0.
        Assert.Equal(112, Resamples.Of(4, 1, 1234567).Totals([numbers])[0][0]);
        Assert.Equal(
            Resamples.Of(4, 9, 5).Totals([numbers])[0], Resamples.Of(4, 9, 5).Totals([numbers])[0]);
        Assert.NotEqual(
            Resamples.Of(4, 9, 5).Totals([numbers])[0], Resamples.Of(4, 9, 6).Totals([numbers])[0]);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(64)]
    [InlineData(67)]
    public void Totals_AnyNumberOfDraws_AddsProjectByProject(int draws)
    {
        var resamples = Resamples.Of(11, draws, 3);
        double[] numbers = [.. Enumerable.Range(0, 11).Select(i => Math.Sin(i) / 3)];
        double[][] each = [.. Enumerable.Range(0, 11).Select(i => Enumerable.Range(0, 11)
            .Select(j => i == j ? 1.0 : 0).ToArray())];
        double[][] counts = resamples.Totals(each);
        double[] totals = resamples.Totals([numbers])[0];
        for (int draw = 0; draw < draws; draw++)
        {
            double expected = 0;
            for (int i = 0; i < 11; i++) expected += counts[i][draw] * numbers[i];
            Assert.Equal(expected, totals[draw]);
        }
    }

    [Theory]
    [InlineData("treatment")]
    [InlineData("control")]
    public void Totals_PublishedMice_ReachTheIdealErrorOfTheMean(string group)
    {
        // Efron and Tibshirani 1993, chapter 2: the ideal error is √((n − 1)/n) of the usual one.
        JsonElement anchor = Anchor("bootstrap_mean");
        double[] values = [.. anchor.GetProperty(group).EnumerateArray().Select(v => v.GetDouble())];
        Assert.Equal(anchor.GetProperty("mean_" + group).GetDouble(), values.Average(), 0.005);

        double[] means = [.. Resamples.Of(values.Length, 40_000).Totals([values])[0].Select(t => t / values.Length)];

        Assert.Equal(values.Average(), means.Average(), 0.5);
        Assert.Equal(anchor.GetProperty("ideal_bootstrap_se_" + group).GetDouble(), Deviation(means), 0.2);
    }

    [Fact]
    public void Totals_PublishedLawSchools_ReachTheErrorOfTheCorrelation()
    {
        // Efron and Tibshirani 1993, the sample of 15 law schools.
        JsonElement anchor = Anchor("bootstrap_correlation");
        JsonElement[] pairs = [.. anchor.GetProperty("pairs").EnumerateArray()];
        double[] x = Centred([.. pairs.Select(p => p[0].GetDouble())]);
        double[] y = Centred([.. pairs.Select(p => p[1].GetDouble())]);
        double[] Product(double[] a, double[] b) => [.. a.Zip(b, (i, j) => i * j)];
        double[][] moments = [x, y, Product(x, x), Product(y, y), Product(x, y)];
        double Correlation(double[] sums) =>
            (pairs.Length * sums[4] - sums[0] * sums[1])
            / Math.Sqrt((pairs.Length * sums[2] - sums[0] * sums[0]) * (pairs.Length * sums[3] - sums[1] * sums[1]));
        double[] sample = [.. moments.Select(m => m.Sum())];
        Assert.Equal(anchor.GetProperty("correlation").GetDouble(), Correlation(sample), 0.0005);

        double[][] totals = Resamples.Of(pairs.Length, 40_000).Totals(moments);
        double[] correlations = [.. Enumerable.Range(0, 40_000)
            .Select(draw => Correlation([.. totals.Select(t => t[draw])]))];

        Assert.Equal(anchor.GetProperty("bootstrap_se_about").GetDouble(), Deviation(correlations), 0.003);
    }

    [Fact]
    public void Correction_PublishedStrata_GiveTheErrorOfTheTotal()
    {
        // Lohr, Sampling: Design and Analysis: Σ N² (1 − n/N) s²/n over the strata; their means are rounded.
        JsonElement anchor = Anchor("stratified_total");
        double total = 0;
        double variance = 0;
        double units = 0;
        foreach (JsonElement stratum in anchor.GetProperty("strata").EnumerateArray())
        {
            int whole = stratum.GetProperty("N").GetInt32();
            int sampled = stratum.GetProperty("n").GetInt32();
            units += whole;
            total += whole * stratum.GetProperty("mean").GetDouble();
            variance += (double)whole * whole * FinitePopulation.Correction(sampled, whole)
                * stratum.GetProperty("variance").GetDouble() / sampled;
        }
        double published = anchor.GetProperty("published_total").GetDouble();
        Assert.Equal(published, total, 1e-7 * published);
        Assert.Equal(anchor.GetProperty("published_se").GetDouble(), Math.Sqrt(variance), 1.0);
        Assert.Equal(anchor.GetProperty("published_mean_per_unit").GetDouble(), total / units, 0.5);
        Assert.Equal(anchor.GetProperty("published_mean_se").GetDouble(), Math.Sqrt(variance) / units, 0.5);
    }

    [Fact]
    public void Of_ImpossibleArguments_AreRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Resamples.Of(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Resamples.Of(5, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Resamples.Of(int.MaxValue, 1000));
        Assert.Throws<ArgumentException>(() => Resamples.Of(5, 10).Totals([[1, 2]]));
    }

    private static JsonElement Anchor(string group)
    {
        string path = Repository.SharedOrSkip("reference", "statistics-anchors.json");
        return JsonDocument.Parse(File.ReadAllText(path)).RootElement.GetProperty(group);
    }

    private static double[] Centred(double[] values)
    {
        double mean = values.Average();
        return [.. values.Select(v => v - mean)];
    }

    private static double Deviation(double[] values)
    {
        double mean = values.Average();
        return Math.Sqrt(values.Sum(v => (v - mean) * (v - mean)) / (values.Length - 1));
    }
}
