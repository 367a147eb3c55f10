using CsCheck;
using Platewright.Sizing;
using Platewright.Sizing.Statistics;

namespace Platewright.Tests.Sizing;

public sealed class WeightedShareTests
{
    private const double Confidence = 0.95;

    private static readonly Gen<(double?[] Weights, double[] Covered)> Samples =
        from size in Gen.Int[1, 30]
        from weights in Gen.Double[0, 100].Nullable(0.1).Array[size]
        from covered in Gen.Double[0, 1].Array[size]
        from whole in Gen.Bool
        select (weights, whole ? [.. covered.Select(c => Math.Round(c))] : covered);

    [Fact]
    public void Of_AnySample_HoldsTheShareAndIsNoNarrowerThanWilson() => Samples.Sample(
        s =>
        {
            WeightedShare share = One(s.Weights, s.Covered);
            Assert.InRange(share.Low, 0, share.High);
            Assert.InRange(share.High, share.Low, 1);
            Assert.Equal(s.Weights.Length, share.Projects + share.LeftOut);
            if (share.Value is not { } value) return;
            Assert.InRange(value, share.Low, share.High);
            double[] known = [.. s.Weights.OfType<double>()];
            Assert.Equal(known.Sum(), share.Total, 1e-9);
            if (known.Count(w => w > 0) < 2) return;
            // Wilson's equation for Kish's size, at the ends: nothing nearer to the share is let in.
            double size = known.Sum() * known.Sum() / known.Sum(w => w * w);
            double z = NormalQuantile.Of((1 + Confidence) / 2);
            foreach (double end in (double[])[share.Low, share.High])
                Assert.True(Math.Pow(value - end, 2) >= z * z * end * (1 - end) / size - 1e-9);
        },
        iter: 300);

    [Fact]
    public void Of_EqualWeights_IsAtLeastAsWideAsThePlainShareAndNearIt()
    {
        double?[] weights = [.. Enumerable.Repeat<double?>(2.5, 40)];
        double[] covered = [.. Enumerable.Range(0, 40).Select(i => i < 30 ? 1.0 : 0)];
        WeightedShare share = One(weights, covered);
        Share plain = Share.Wilson(30, 40, Confidence);
        Assert.Equal(plain.Value, share.Value!.Value, 1e-12);
        Assert.InRange(share.Low, plain.Low - 0.03, plain.Low);
        Assert.InRange(share.High, plain.High, plain.High + 0.05);
    }

    [Fact]
    public void Of_EverythingCovered_IsNotCertain()
    {
        WeightedShare share = One([.. Enumerable.Repeat<double?>(3, 18)], [.. Enumerable.Repeat(1.0, 18)]);
        Assert.Equal(1, share.Value);
        Assert.Equal(1, share.High);
        Assert.Equal(Share.Wilson(18, 18, Confidence).Low, share.Low, 1e-12);
    }

    [Fact]
    public void Of_NothingCovered_IsNotCertain()
    {
        WeightedShare share = One([.. Enumerable.Repeat<double?>(3, 18)], new double[18]);
        Assert.Equal(0, share.Value);
        Assert.Equal(0, share.Low);
        Assert.Equal(Share.Wilson(0, 18, Confidence).High, share.High, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Of_OneProjectWithWeight_SaysNothing(double covered)
    {
        Assert.Equal(new WeightedShare(7 * covered, 7, 0, 1, 1, 0), One([7], [covered]));
        Assert.Equal(new WeightedShare(7 * covered, 7, 0, 1, 2, 1), One([7, 0, null], [covered, 1, 1]));
    }

    [Fact]
    public void Of_NoWeight_HasNoShare()
    {
        Assert.Null(One([], []).Value);
        WeightedShare share = One([0, 0, null], [1, 0, 1]);
        Assert.Null(share.Value);
        Assert.Equal((0, 1, 2, 1), (share.Low, share.High, share.Projects, share.LeftOut));
    }

    [Fact]
    public void Of_UnknownWeights_AreCountedAndChangeNothing()
    {
        double?[] weights = [4, null, 2, 9, null, 1];
        WeightedShare share = One(weights, [1, 1, 0, 1, 0, 0]);
        Assert.Equal((13.0, 16.0, 4, 2), (share.Covered, share.Total, share.Projects, share.LeftOut));
        Assert.Equal(share, One(weights, [1, 0, 0, 1, 1, 0]));
    }

    [Fact]
    public void Of_WholePopulationSeen_IsTheShareExactly() => Samples.Sample(
        s =>
        {
            int known = s.Weights.Count(w => w is not null);
            WeightedShare share = One(s.Weights, s.Covered, known);
            if (share.Value is not { } value) return;
            Assert.Equal(value, share.Low);
            Assert.Equal(value, share.High);
        },
        iter: 200);

    [Fact]
    public void Of_LargerPopulation_IsWider() => Samples.Sample(
        s =>
        {
            int size = s.Weights.Length;
            WeightedShare[] shares = [.. ((int?[])[size, size + 3, 3 * size + 3, 100 * size + 3, null])
                .Select(population => One(s.Weights, s.Covered, population))];
            foreach ((WeightedShare narrow, WeightedShare wide) in shares.Zip(shares.Skip(1)))
            {
                Assert.True(wide.Low <= narrow.Low + 1e-12);
                Assert.True(wide.High >= narrow.High - 1e-12);
            }
        },
        iter: 200);

    [Fact]
    public void Of_PopulationOfWhichSomeWeightsAreUnknown_IsNotCertain()
    {
        WeightedShare share = One([5, 4, 3, null], [1, 0, 1, 1], 4);
        Assert.True(share.Low < share.Value && share.Value < share.High);
    }

    [Fact]
    public void Of_WeightsInAnotherUnit_IsTheSameShare() => Samples.Sample(
        s =>
        {
            // A power of two changes no rounding.
            WeightedShare share = One(s.Weights, s.Covered);
            WeightedShare scaled = One([.. s.Weights.Select(w => w * 1024)], s.Covered);
            Assert.Equal((share.Value, share.Low, share.High), (scaled.Value, scaled.Low, scaled.High));
        },
        iter: 200);

    [Fact]
    public void Of_OneHeavyProject_IsHardlyAnyEvidence()
    {
        // One project has nearly all hours: the sample says little more than that project alone.
        WeightedShare share = One([1000, .. Enumerable.Repeat<double?>(1, 17)], [1, .. new double[17]]);
        Assert.InRange(share.Value!.Value, 0.98, 0.99);
        Assert.True(share.Low < 0.25, $"{share.Low}");
    }

    [Theory]
    [InlineData(18, 0.0, 0.0)]
    [InlineData(18, 1.0, 0.0)]
    [InlineData(18, 1.0, 0.3)]
    [InlineData(50, 0.7, 0.3)]
    public void Of_SamplesOfKnownWork_CoverAsOftenAsTheySay(int size, double spread, double decline)
    {
        // An endless body of work: hours e^(spread·g), g normal, covered with the chance 0.8 / (1 + decline · hours).
        // The true share by summing over the quantiles of g.
        double Chance(double hours) => 0.8 / (1 + decline * hours);
        double[] grid = [.. Enumerable.Range(0, 20_000)
            .Select(i => Math.Exp(spread * NormalQuantile.Of((i + 0.5) / 20_000)))];
        double truth = grid.Sum(h => h * Chance(h)) / grid.Sum();
        var random = new Xorshift(99);
        var resamples = Resamples.Of(size, 200);
        const int Rounds = 1000;
        int held = 0;
        for (int round = 0; round < Rounds; round++)
        {
            double[] hours = [.. Enumerable.Range(0, size)
                .Select(_ => Math.Exp(spread * NormalQuantile.Of(random.Next())))];
            double[] covered = [.. hours.Select(h => random.Next() < Chance(h) ? 1.0 : 0)];
            WeightedShare share = WeightedShare.Of([.. hours.Cast<double?>()], [covered], resamples, Confidence)[0];
            if (truth >= share.Low && truth <= share.High) held++;
        }
        Assert.InRange(held / (double)Rounds, 0.92, 1);
    }

    [Fact]
    public void Of_SeveralMachines_AreWhatEachIsAlone()
    {
        double?[] weights = [4, 3, 2, 9, 6, 1];
        double[][] machines = [[1, 1, 0, 1, 0, 0], [1, 1, 1, 1, 1, 1], [0.5, 0, 0.25, 0, 0, 0]];
        Assert.Equal(
            machines.Select(m => One(weights, m)),
            WeightedShare.Of(weights, machines, Resamples.Of(6, 300), Confidence));
    }

    [Fact]
    public void Of_ImpossibleArguments_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => One([-1, 2], [1, 1]));
        Assert.Throws<ArgumentException>(() => One([double.NaN, 2], [1, 1]));
        Assert.Throws<ArgumentException>(() => One([double.PositiveInfinity, 2], [1, 1]));
        Assert.Throws<ArgumentException>(() => One([1, 2], [1, 1.5]));
        Assert.Throws<ArgumentException>(() => One([1, 2], [1]));
        Assert.Throws<ArgumentException>(() => WeightedShare.Of([1, 2], [[1, 1]], Resamples.Of(3), Confidence));
        Assert.Throws<ArgumentOutOfRangeException>(() => WeightedShare.Of([1, 2], [[1, 1]], Resamples.Of(2), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => One([1, 2], [1, 1], 1));
    }

    private static WeightedShare One(double?[] weights, double[] covered, int? population = null) =>
        WeightedShare.Of(weights, [covered], Resamples.Of(weights.Length, 300), Confidence, population)[0];

    /// <summary>A generator of its own, so that the samples owe nothing to the one that is tested.</summary>
    private sealed class Xorshift(ulong seed)
    {
        private ulong _state = seed;

        public double Next()
        {
            _state ^= _state << 13;
            _state ^= _state >> 7;
            _state ^= _state << 17;
            return ((_state >> 12) + 0.5) / (1UL << 52);
        }
    }
}
