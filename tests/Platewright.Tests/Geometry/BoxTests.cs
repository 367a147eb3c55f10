using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class BoxTests
{
    /// <summary>Minimal widths of the regular solids with edge 1: reference/fit-literature.md, section 2.</summary>
    [Theory]
    [InlineData("tetrahedron", 0.70710678118654752)]
    [InlineData("octahedron", 0.81649658092772603)]
    [InlineData("dodecahedron", 2.22703)]
    [InlineData("icosahedron", 1.51152)]
    public void MinimalWidth_OfRegularSolid_IsThePublishedOne(string name, double expected)
    {
        MinimalWidth width = MinimalWidth.Of(ConvexHull.Of(Solids.Regular(name)));
        Assert.Equal(expected, width.WidthMm, 1e-5);
    }

    [Fact]
    public void MinimalWidth_OfRandomHulls_IsBelowEveryDirectionAndReached() =>
        Clouds.Kinds[0].Array[4, 40].Sample(
            points =>
            {
                ConvexHull hull = ConvexHull.Of(points);
                MinimalWidth width = MinimalWidth.Of(hull);
                Assert.Equal(width.WidthMm, hull.Support(width.Direction) + hull.Support(-width.Direction), 1e-9);
                foreach (Vec3 u in Frame.Spiral(3000))
                    Assert.True(hull.Support(u) + hull.Support(-u) >= width.WidthMm - 1e-9);
            },
            iter: 50);

    [Fact]
    public void TightestBox_OfTurnedBox_IsThatBox() =>
        Gen.Select(Clouds.Axes, Gen.Double[0, 6]).Sample(
            (axis, angle) =>
            {
                Rotation turn = Rotation.About(axis, angle);
                Vec3[] corners = [.. Enumerable.Range(0, 8)
                    .Select(i => turn.Apply(new Vec3((i & 1) * 30, (i & 2) * 10, (i & 4) * 2)) + new Vec3(5, 6, 7))];
                OrientedBox box = TightestBox.Of(ConvexHull.Of(corners));
                Assert.Equal(0, (box.SizeMm - new Vec3(30, 20, 8)).Length, 1e-9);
                Assert.Equal(1, box.Axes.Determinant, 1e-9);
                Assert.Equal(0, (box.Center - (turn.Apply(new Vec3(15, 10, 4)) + new Vec3(5, 6, 7))).Length, 1e-9);
            },
            iter: 50);

    /// <summary>The least box around a regular tetrahedron is the cube it is inscribed in (O'Rourke 1985).</summary>
    [Fact]
    public void TightestBox_OfTetrahedron_IsItsCube()
    {
        OrientedBox box = TightestBox.Of(ConvexHull.Of(Solids.Regular("tetrahedron")));
        Assert.Equal(Math.Pow(0.5, 1.5), box.VolumeMm3, 1e-9);
    }

    [Fact]
    public void TightestBox_OfThinThings_HasZeroEdges()
    {
        Assert.Equal(default, TightestBox.Of(ConvexHull.Of([new(1, 2, 3)])).SizeMm);
        OrientedBox segment = TightestBox.Of(ConvexHull.Of([new(0, 0, 0), new(3, 4, 0)]));
        Assert.Equal(0, (segment.SizeMm - new Vec3(5, 0, 0)).Length, 1e-12);
        OrientedBox square = TightestBox.Of(ConvexHull.Of([new(0, 0, 0), new(2, 2, 2), new(2, 2, 0), new(0, 0, 2)]));
        Assert.Equal(0, (square.SizeMm - new Vec3(Math.Sqrt(8), 2, 0)).Length, 1e-12);
    }

    [Fact]
    public void Diameter_OfRandomHulls_IsTheLongestPair() =>
        Clouds.Kinds[0].Array[2, 60].Sample(
            points =>
            {
                double longest = points.Max(p => points.Max(q => (p - q).Length));
                Assert.Equal(longest, Diameter.Of(ConvexHull.Of(points)).LengthMm, 1e-12 * longest);
            },
            iter: 50);

    [Fact]
    public void MinimalRectangle_OfRandomPolygons_IsBelowEveryTurn() =>
        Gen.Select(Gen.Double[-9, 9], Gen.Double[-5, 5], (x, y) => new Vec2(x, y)).Array[1, 30].Sample(
            points =>
            {
                Vec2[] polygon = ConvexPolygon.Of(points);
                MinimalRectangle rectangle = MinimalRectangle.Of(polygon);
                double least = double.PositiveInfinity;
                for (int i = 0; i < 2000; i++)
                {
                    (double sin, double cos) = Math.SinCos(i * Math.PI / 2000);
                    double[] x = [.. polygon.Select(p => p.X * cos + p.Y * sin)];
                    double[] y = [.. polygon.Select(p => p.Y * cos - p.X * sin)];
                    least = Math.Min(least, (x.Max() - x.Min()) * (y.Max() - y.Min()));
                }
                Assert.True(rectangle.AreaMm2 <= least + 1e-9);
                Vec2 along = rectangle.Along;
                double[] length = [.. polygon.Select(along.Dot)], width = [.. polygon.Select(along.Cross)];
                Assert.Equal(length.Max() - length.Min(), rectangle.LengthMm, 1e-9);
                Assert.Equal(width.Max() - width.Min(), rectangle.WidthMm, 1e-9);
            },
            iter: 50);
}
