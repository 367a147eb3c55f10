using System.Collections.Immutable;
using CsCheck;
using Platewright.Fit;
using Platewright.Sizing;

namespace Platewright.Tests.Sizing;

public sealed class BedHeightCurveTests
{
    /// <summary>Few distinct sizes, so that equal beds and heights do happen.</summary>
    private static readonly Gen<ImmutableArray<BedAndHeight>> Curves =
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 12], (b, h) => new BedAndHeight(b, h)).Array[1, 6]
            .Select(points => BedHeightCurve.Best(points));

    [Fact]
    public void Best_Points_GrowInBedAndFallInHeight() =>
        Curves.Sample(curve =>
        {
            for (int i = 1; i < curve.Length; i++)
            {
                Assert.True(curve[i].BedMm > curve[i - 1].BedMm);
                Assert.True(curve[i].HeightMm < curve[i - 1].HeightMm);
            }
        });

    [Fact]
    public void AllAndEither_HoldExactlyWhereEveryAndAnyCurveHolds() =>
        Gen.Select(Curves.Array[1, 4], Gen.Int[0, 13], Gen.Int[0, 13]).Sample((curves, bed, height) =>
        {
            Assert.Equal(curves.All(c => Holds(c, bed, height)), Holds(BedHeightCurve.All(curves), bed, height));
            Assert.Equal(curves.Any(c => Holds(c, bed, height)), Holds(BedHeightCurve.Either(curves), bed, height));
        });

    [Fact]
    public void All_WithACurveThatHoldsNowhere_HoldsNowhere() =>
        Assert.Empty(BedHeightCurve.All([[new(10, 10)], []]));

    private static bool Holds(ImmutableArray<BedAndHeight> curve, double bed, double height) =>
        curve.Any(p => p.BedMm <= bed && p.HeightMm <= height);
}
