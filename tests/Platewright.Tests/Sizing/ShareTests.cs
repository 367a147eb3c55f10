using CsCheck;
using MathNet.Numerics.Distributions;
using Platewright.Sizing;

namespace Platewright.Tests.Sizing;

public sealed class ShareTests
{
    private const string Absent = "absent";

    public static TheoryData<string> ReferenceIds() => OrAbsent(StatisticsReference.All().Select(c => c.Id));

    public static TheoryData<string> AnchorGroups() => OrAbsent(StatisticsReference.AnchorGroups());

    [Theory]
    [MemberData(nameof(ReferenceIds))]
    public void Wilson_ReferenceInterval_IsMet(string id)
    {
        // Published and recomputed values; each case names its source in the file.
        Repository.SharedOrSkip("reference", "fit-cases.json");
        Repository.SharedOrSkip("reference", "statistics-anchors.json");
        StatisticsReference c = StatisticsReference.All().Single(x => x.Id == id);

        Share share = Share.Wilson(c.Successes, c.Of, c.Confidence);

        Assert.Equal(c.Low, share.Low, c.Tolerance);
        Assert.Equal(c.High, share.High, c.Tolerance);
    }

    [Theory]
    [MemberData(nameof(AnchorGroups))]
    public void Anchors_Group_IsKnown(string group)
    {
        // The other three are met in ResamplesTests.
        Repository.SharedOrSkip("reference", "statistics-anchors.json");
        Assert.SkipWhen(
            group is not ("wilson_95" or "bootstrap_mean" or "bootstrap_correlation" or "stratified_total"),
            $"{group}: nothing here computes it.");
        if (group == "wilson_95")
            Assert.Contains(StatisticsReference.All(), c => c.Id.StartsWith(group, StringComparison.Ordinal));
    }

    [Fact]
    public void Wilson_PublishedExample_IsMetWithoutSharedFiles()
    {
        // Newcombe 1998, Statistics in Medicine 17:857-872, Table I, method 3.
        Assert.Equal(0.2553, Share.Wilson(81, 263, 0.95).Low, 5e-5);
        Assert.Equal(0.3662, Share.Wilson(81, 263, 0.95).High, 5e-5);
        Assert.Equal(0.1611, Share.Wilson(0, 20, 0.95).High, 5e-5);
    }

    [Fact]
    public void Wilson_Ends_SolveTheScoreEquation() =>
        Gen.Select(Gen.Int[1, 2000], Gen.Double[0, 1], Gen.Double[0.5, 0.999]).Sample((of, part, confidence) =>
        {
            int count = (int)(part * of);
            Share share = Share.Wilson(count, of, confidence);
            double z = NormalQuantile.Of((1 + confidence) / 2);
            Assert.InRange(share.Value, share.Low, share.High);
            foreach (double end in (double[])[share.Low, share.High])
            {
                // Wilson's definition: (p̂ − p)² = z² p (1 − p) / n at both ends.
                Assert.Equal(Math.Pow(share.Value - end, 2), z * z * end * (1 - end) / of, 1e-12);
            }
            Share others = Share.Wilson(of - count, of, confidence);
            Assert.Equal(share.Low, 1 - others.High, 1e-12);
        });

    [Fact]
    public void Wilson_EmptyOrExtremeSample_StaysWithinZeroAndOne()
    {
        Assert.Equal(new Share(0, 0, 0, 1), Share.Wilson(0, 0, 0.95));
        Assert.Equal(0, Share.Wilson(0, 7, 0.95).Low);
        Assert.Equal(1, Share.Wilson(7, 7, 0.95).High);
    }

    [Theory]
    [InlineData(-1, 5, 0.95)]
    [InlineData(6, 5, 0.95)]
    [InlineData(1, 5, 0)]
    [InlineData(1, 5, 1)]
    [InlineData(1, 5, double.NaN)]
    public void Wilson_ImpossibleArguments_AreRefused(int count, int of, double confidence) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Share.Wilson(count, of, confidence));

    [Theory]
    [InlineData(0.975, 1.959963984540054235524594430520551527956)]
    [InlineData(0.2, -0.8416212335729142051787061213632481006263)]
    [InlineData(0.5, 0)]
    [InlineData(1e-10, -6.361340902404056204695375828265221679204)]
    [InlineData(1e-20, -9.262340089798407573717356977875325117536)]
    [InlineData(1e-300, -37.04709629936119923722296250786043684435)]
    public void NormalQuantile_KnownValues(double p, double z)
    {
        // Roots of log Φ(z) = log p in 40-digit arithmetic with the complementary error function, computed for this
        // test.
        Assert.Equal(z, NormalQuantile.Of(p), 1e-14 * (1 + Math.Abs(z)));
    }

    [Fact]
    public void NormalQuantile_AgreesWithALibrary() =>
        Gen.Double[1e-12, 1 - 1e-12].Sample(p =>
        {
            double library = Normal.InvCDF(0, 1, p);
            Assert.Equal(library, NormalQuantile.Of(p), 1e-12 * (1 + Math.Abs(library)));
        });

    private static TheoryData<string> OrAbsent(IEnumerable<string> ids)
    {
        TheoryData<string> data = [.. ids];
        if (data.Count == 0) data.Add(Absent);
        return data;
    }
}
