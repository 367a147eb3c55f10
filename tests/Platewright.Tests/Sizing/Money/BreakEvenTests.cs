using CsCheck;
using Platewright.Sizing.Money;

namespace Platewright.Tests.Sizing.Money;

public sealed class BreakEvenTests
{
    private const double Most = 100;

    private static readonly Gen<CostLine> Lines =
        from a in Gen.Double[1, 100].Array[3]
        from hours in Gen.Double[0, 30]
        select new CostLine(a[0], a[1] / 20, hours, 10 * a[2]);

    [Fact]
    public void Of_TwoStraightLines_IsWhereTheyCross()
    {
        // 10 + 3 w and 30 + 1 w meet at 10.
        Assert.Equal(10, BreakEven.Of(new(10, 3, 0, 1), new(30, 1, 0, 1), Most)!.Value, 1e-9);
        Assert.Null(BreakEven.Of(new(10, 1, 0, 1), new(30, 1, 0, 1), Most));
    }

    [Fact]
    public void Of_OneMoreNeeded_IsAtTheJump()
    {
        // One of the small ones is busy at 20: the second makes 2 × 10 + 20 = 40, the large one costs 25 + 20.
        Assert.Null(BreakEven.Of(new(10, 1, 1, 20), new(25, 1, 0, 1), 40));
        Assert.Equal(40, BreakEven.Of(new(10, 1, 1, 20), new(25, 1, 0, 1), Most)!.Value, 1e-9);
    }

    [Fact]
    public void Of_Any_IsTheFirstChangeOfOrder() => Gen.Select(Lines, Lines).Sample((a, b) =>
    {
        double? at = BreakEven.Of(a, b, Most);
        int order = Math.Sign(a.At(0) - b.At(0));
        // Equal at nothing: which one is ahead shows only later.
        if (order == 0) return;
        const int Steps = 5000;
        for (int i = 1; i < Steps; i++)
        {
            double work = Most * i / Steps;
            int now = Math.Sign(a.At(work) - b.At(work));
            if (work < (at ?? Most) - 1e-6) Assert.True(now == order || now == 0 || Near(a, b, work), $"{work} {at}");
        }
        if (at is not { } found || found > Most * (1 - 1e-6)) return;
        double after = found + 1e-6;
        Assert.True(Math.Sign(a.At(after) - b.At(after)) == -order || Near(a, b, after));
    });

    private static bool Near(CostLine a, CostLine b, double work) => Math.Abs(a.At(work) - b.At(work)) < 1e-4;
}
