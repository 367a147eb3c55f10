using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Fit;

/// <summary>A part that fits in pieces: the pieces make up the part, and each lies within the walls where it is put.</summary>
public sealed class PartCutTests
{
    [Theory]
    [InlineData(300, 60, 40, 0)]
    [InlineData(390, 90, 20, 0.01)]
    [InlineData(40, 70, 350, 0.005)]
    public void Cut_LongBlock_PiecesLieWithinTheWalls(double x, double y, double z, double shrinkage)
    {
        Machine machine = Solids.BoxMachine(160, 150, 140) with { Margins = Margins.Uniform(3) };
        ConvexHull hull = ConvexHull.Of(Solids.Box(x, y, z));
        FitResult fit = Solve(hull, machine, shrinkage);
        Assert.Equal(Verdict.InPieces, fit.Verdict);
        PartCut cut = fit.Cut!;

        Assert.Equal(fit.Pieces, cut.Poses.Length);
        double volume = 0;
        for (int i = 0; i < cut.Poses.Length; i++)
        {
            ConvexHull piece = Slice(hull, cut, i);
            volume += piece.VolumeMm3;
            Assert.All(WallGaps.Of(piece.Vertices, cut.Poses[i], machine), gap => Assert.True(gap > -1e-6, $"{gap} mm beyond a wall."));
            Assert.Equal(1 + shrinkage, cut.Poses[i].Scale, 1e-12);
        }
        Assert.Equal(hull.VolumeMm3, volume, 1e-6 * hull.VolumeMm3);
    }

    [Fact]
    public void Cut_Bounds_AreEquallySpacedFromEndToEnd()
    {
        ConvexHull hull = ConvexHull.Of(Solids.Box(300, 60, 40));
        PartCut cut = Solve(hull, Solids.BoxMachine(110, 110, 110), 0).Cut!;
        double[] along = [.. hull.Vertices.ToArray().Select(v => v.Dot(cut.Direction))];

        Assert.Equal(1, cut.Direction.Length, 1e-12);
        Assert.Equal(along.Min(), cut.BoundsMm[0], 1e-9);
        Assert.Equal(along.Max(), cut.BoundsMm[^1], 1e-9);
        double thickness = (along.Max() - along.Min()) / cut.Poses.Length;
        Assert.All(cut.BoundsMm.Skip(1).Zip(cut.BoundsMm, (to, from) => to - from), t => Assert.Equal(thickness, t, 1e-9));
    }

    [Fact]
    public void Cut_OfAPartThatFits_IsNone() =>
        Assert.Null(Solve(ConvexHull.Of(Solids.Box(50, 50, 50)), Solids.BoxMachine(100, 100, 100), 0).Cut);

    private static FitResult Solve(ConvexHull hull, Machine machine, double shrinkage) => FitSolver.Solve(
        new PreparedPart(new PartShape(hull, shrinkage)), machine, new Allowance(), new FitOptions(), CancellationToken.None);

    // By the points of every edge between two corners at the bounds: of a convex body these hold all corners of the slice.
    private static ConvexHull Slice(ConvexHull hull, PartCut cut, int piece)
    {
        double from = cut.BoundsMm[piece], to = cut.BoundsMm[piece + 1];
        Vec3[] corners = hull.Vertices.ToArray();
        List<Vec3> points = [.. corners.Where(v => v.Dot(cut.Direction) >= from && v.Dot(cut.Direction) <= to)];
        foreach (Vec3 a in corners)
            foreach (Vec3 b in corners)
                foreach (double at in new[] { from, to })
                {
                    double below = a.Dot(cut.Direction) - at, above = b.Dot(cut.Direction) - at;
                    if (below < 0 && above > 0) points.Add(a + (b - a) * (below / (below - above)));
                }
        return ConvexHull.Of([.. points]);
    }
}
