using Platewright.Fit;

namespace Platewright.Tests.Fit;

/// <summary>
/// Every case of the shared reference file: published (Croft 1980, Firsching arXiv:1407.0683, Nieuwland, Pukhov and others, named
/// in the file), closed-form, or computed there by two independent methods.
/// </summary>
public sealed class ReferenceFitTests
{
    public static TheoryData<string> Ids()
    {
        var ids = new TheoryData<string>();
        foreach (ReferenceCase c in ReferenceCase.All()) ids.Add(c.Id);
        if (ids.Count == 0) ids.Add("absent");
        return ids;
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void LargestScale_ReferenceCase_IsReachedAndBracketed(string id)
    {
        Repository.SharedOrSkip("reference", "fit-cases.json");
        ReferenceCase c = ReferenceCase.All().Single(x => x.Id == id);
        FitResult fit = FitSolver.Solve(c.Part(), c.Machine, new Allowance(), new FitOptions(), CancellationToken.None);
        double found = c.Mode switch
        {
            "free" => fit.Tilted.LargestScale,
            "upright" => fit.Upright.LargestScale,
            "turned" => fit.Turned.LargestScale,
            _ => double.NaN,
        };
        Assert.SkipWhen(double.IsNaN(found), $"{id}: a mode this test does not know: {c.Mode}");

        double relative = found / c.MaxScale - 1;
        Assert.True(relative <= c.Excess + 1e-9, $"{id}: {found} is more than the reference {c.MaxScale} allows.");
        // Upright and turned are exact; the search over all rotations stops at its gap.
        double gap = c.Mode == "free" ? 1e-4 : 1e-9;
        Assert.True(relative >= -gap, $"{id}: {found} misses the reference {c.MaxScale} by {relative:e2}.");
        if (c.Mode != "free") return;
        Assert.True(fit.UpperBound >= c.MaxScale * (1 - 1e-9), $"{id}: bound {fit.UpperBound} is below {c.MaxScale}.");
        Assert.True(fit.UpperBound <= found * (1 + 1.001e-4), $"{id}: the bracket {found} … {fit.UpperBound} is wide.");
    }
}
