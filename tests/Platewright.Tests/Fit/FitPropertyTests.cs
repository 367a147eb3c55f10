using CsCheck;
using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Fit;

/// <summary>Laws that hold for every part and machine.</summary>
public sealed class FitPropertyTests
{
    // Solids as parts are: coordinates to a tenth of a millimetre, and a volume that rounding cannot flatten.
    private static readonly Gen<Vec3> Points = Gen.Select(
        Gen.Int[-900, 900], Gen.Int[-600, 600], Gen.Int[-400, 400], (x, y, z) => new Vec3(x, y, z) / 10);
    private static readonly Gen<Vec3[]> Clouds = Points.Array[4, 30].Where(p => ConvexHull.Of(p).VolumeMm3 > 100);
    private static readonly Gen<Rotation> Rotations = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1],
        (w, x, y, z) => new Rotation(w + 1e-3, x, y, z).Normalized());
    private static readonly Gen<BuildVolume> Volumes = Gen.OneOf<BuildVolume>(
        Gen.Select(Gen.Double[60, 200], Gen.Double[60, 200], Gen.Double[60, 200], (x, y, z) => (BuildVolume)new BoxVolume(x, y, z)),
        Gen.Double[60, 200].Select(e => (BuildVolume)new BoxVolume(e, e, e)),
        Gen.Select(Gen.Double[60, 200], Gen.Double[60, 200], (d, h) => (BuildVolume)new CylinderVolume(d, h)),
        Gen.Select(Gen.Double[50, 110], Gen.Double[60, 200], Gen.Int[3, 9], (r, h, n) => (BuildVolume)new PrismVolume(
            [.. Enumerable.Range(0, n).Select(i => new Vec2(r * Math.Cos(2 * Math.PI * i / n + 0.3), r * Math.Sin(2 * Math.PI * i / n + 0.3)))], h)));

    [Fact]
    public void FreeFit_RotatedPart_KeepsItsBracketAndVerdict() =>
        Gen.Select(Clouds, Rotations, Volumes).Sample(
            (points, rotation, volume) =>
            {
                FitResult a = Solve(points, volume), b = Solve([.. points.Select(rotation.Apply)], volume);
                double gap = 1 + 2 * new FitOptions().Tolerance;
                Assert.True(a.Tilted.LargestScale <= b.UpperBound * (1 + 1e-9));
                Assert.True(b.Tilted.LargestScale <= a.UpperBound * (1 + 1e-9));
                Assert.True(b.Tilted.LargestScale <= a.Tilted.LargestScale * gap);
                Assert.True(a.Turned.LargestScale <= b.Turned.LargestScale * (1 + 1e-9), "resting on a face does not depend on how the part is drawn");
                if (Math.Abs(a.Tilted.LargestScale - 1) > 1e-3) Assert.Equal(a.Tilted.Fits, b.Tilted.Fits);
            },
            iter: 60, threads: 1);

    [Fact]
    public void EveryWay_RandomPart_LiesInsideAtItsScaleAndIsOrdered() =>
        Gen.Select(Clouds, Volumes, Gen.Double[0, 0.02], Gen.Double[0, 6], Gen.Double[0, 5]).Sample(
            (points, volume, shrinkage, brim, margin) =>
            {
                var machine = new Machine { Name = "m", BuildVolume = volume, Margins = Margins.Uniform(margin) };
                FitResult fit = Solve(points, machine, shrinkage, brim);
                foreach (WayOfFitting way in new[] { fit.AsDrawn, fit.Upright, fit.Turned, fit.Tilted })
                    PoseChecks.AssertInside(points, machine, way, shrinkage, brim);
                Assert.True(fit.AsDrawn.LargestScale <= fit.Upright.LargestScale);
                Assert.True(fit.Turned.LargestScale <= fit.Tilted.LargestScale);
                Assert.True(fit.Tilted.LargestScale <= fit.UpperBound);
            },
            iter: 60, threads: 1);

    [Fact]
    public void UpperBound_FineGridOfRotations_IsNeverBeaten() =>
        Gen.Select(Clouds, Volumes).Sample(
            (points, volume) =>
            {
                FitResult fit = Solve(points, volume);
                var machine = new Machine { Name = "m", BuildVolume = volume };
                double best = PoseChecks.BestOfGrid(points, machine, 24);
                Assert.True(best <= fit.UpperBound * (1 + 1e-9), $"a pose of the grid reaches {best}, above the bound {fit.UpperBound}");
                Assert.True(best <= fit.Tilted.LargestScale * (1 + 2e-4));
            },
            iter: 8, threads: 1);

    [Fact]
    public void SizeNeed_RandomPart_AgreesWithFittingTheCube() =>
        Clouds.Sample(
            points =>
            {
                SizeNeed need = SizeNeedSolver.Solve(Part(points, 0, 0), new FitOptions(), CancellationToken.None);
                double turned = need.CubeTurnedMm, tilted = need.CubeTiltedMm;
                Assert.True(need.CubeTiltedAtLeastMm <= tilted && tilted <= turned);
                Assert.True(Resting(points, turned) >= 1 - 1e-9);
                Assert.True(Resting(points, turned * 0.9999) < 1);
                // Both searches stop at their gaps: found again up to that.
                Assert.True(Solve(points, new BoxVolume(tilted, tilted, tilted)).Tilted.LargestScale >= 1 - 1e-6);
                double less = need.CubeTiltedAtLeastMm * (1 - 1e-6);
                Assert.False(Solve(points, new BoxVolume(less, less, less)).Tilted.Fits);
                foreach (BedAndHeight size in need.TiltedCurve)
                    Assert.True(Solve(points, new BoxVolume(size.BedMm, size.BedMm, size.HeightMm)).Tilted.LargestScale >= 1 - 1e-6);
            },
            iter: 12, threads: 1);

    private static double Resting(Vec3[] points, double edge)
    {
        FitResult fit = Solve(points, new BoxVolume(edge, edge, edge));
        return Math.Max(fit.Turned.LargestScale, fit.Upright.LargestScale);
    }

    private static PreparedPart Part(Vec3[] points, double shrinkage, double brim) =>
        new(new PartShape(ConvexHull.Of(points), shrinkage, brim));

    private static FitResult Solve(Vec3[] points, BuildVolume volume) =>
        Solve(points, new Machine { Name = "m", BuildVolume = volume }, 0, 0);

    private static FitResult Solve(Vec3[] points, Machine machine, double shrinkage, double brim) =>
        FitSolver.Solve(Part(points, shrinkage, brim), machine, new Allowance(Cut: false), new FitOptions(), CancellationToken.None);
}
