using CsCheck;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Sizing;

namespace Platewright.Tests.Sizing;

/// <summary>
/// The curves are made of what parts need, the matrix of verdicts on machines: on a cube without margins both must say the same.
/// </summary>
public sealed class CurveMeetsVerdictTests
{
    /// <summary>Either side of a step, wide enough for the gap of the proof.</summary>
    private const double Beside = 2e-3;

    /// <summary>Parts drawn resting on their base, as nearly all parts are; sizes in quarters of a millimetre.</summary>
    private static readonly Gen<Vec3[]> Parts = Gen.Select(Gen.Int[0, 320], Gen.Int[0, 200], Gen.Int[0, 120])
        .Select((x, y, z) => new Vec3(x, y, z) / 4)
        .Array[4, 16]
        .Select(points => (Vec3[])[.. points, new(0, 0, 0), new(40, 0, 0), new(0, 20, 0)]);

    [Theory]
    [InlineData(true, 0.9, 0)]
    [InlineData(false, 0.9, 5)]
    [InlineData(false, 0.9, 0)]
    [InlineData(true, 1, 0)]
    public void EdgesFor_RandomPart_AgreeWithItsVerdictOnCubes(bool tilt, double leastScale, double brimMm) =>
        Parts.Sample(
            points =>
            {
                Allowance allowed = new(Tilt: tilt, Cut: false, LeastScale: leastScale);
                PreparedPart part = new(new PartShape(ConvexHull.Of(points), Shrinkage: 0.01, brimMm));
                SizeNeed size = SizeNeedSolver.Solve(part, new FitOptions(), CancellationToken.None);
                Edges edges = ImaginedMachine.OfAnyKind.EdgesFor(PartNeed.Of(size, default, allowed, null, null, brimMm));

                double[] steps = [edges.FitsMm, edges.WithCompromiseMm];
                foreach (double edge in steps.SelectMany(e => new[] { e * (1 - Beside), e * (1 + Beside) }))
                {
                    if (steps.Any(step => Math.Abs(edge / step - 1) < Beside / 2)) continue;
                    FitClass expected = edge >= edges.FitsMm ? FitClass.Fits
                        : edge >= edges.WithCompromiseMm ? FitClass.Compromise
                        : FitClass.No;
                    Machine cube = new() { Name = "cube", BuildVolume = new BoxVolume(edge, edge, edge) };
                    FitResult fit = FitSolver.Solve(part, cube, allowed, new FitOptions(), CancellationToken.None);
                    // With a brim the scaled cube is one that holds the part, not always the smallest.
                    bool better = brimMm > 0 && expected == FitClass.No && fit.Verdict == Verdict.Scaled;
                    Assert.True(better || fit.Verdict.Class() == expected, $"edge {edge}, {edges}: {fit.Verdict}, {fit.Reason}");
                    Assert.DoesNotContain("NaN", fit.Reason, StringComparison.Ordinal);
                }
            },
            iter: 12);
}
