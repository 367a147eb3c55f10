using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class ConvexHullTests
{
    [Fact]
    public void Of_CubeWithPointsOnFacesAndEdges_HasEightVerticesAndSixSquares()
    {
        List<Vec3> points = [];
        for (int x = 0; x <= 4; x++)
            for (int y = 0; y <= 4; y++)
                for (int z = 0; z <= 4; z++)
                    points.Add(new Vec3(x, y, z) * 2.5);
        ConvexHull hull = ConvexHull.Of([.. points]);
        Assert.Equal(3, hull.Dimension);
        Assert.Equal(8, hull.Vertices.Length);
        Assert.Equal(6, hull.Faces.Count);
        Assert.All(hull.Faces, f => Assert.Equal(4, f.Corners.Count));
        Assert.All(hull.Faces, f => Assert.Equal(100, f.AreaMm2, 1e-12));
        Assert.Equal(1000, hull.VolumeMm3, 1e-9);
        Assert.Equal(600, hull.AreaMm2, 1e-9);
        Assert.Equal(0, (hull.Centroid - new Vec3(5, 5, 5)).Length, 1e-12);
    }

    [Fact]
    public void Of_CubeRoundedToSinglePrecisionAfterTurning_HasSixFacesToRestOn()
    {
        Rotation turn = Rotation.About(new Vec3(1, -2, 0.5), 1.234);
        List<Vec3> points = [];
        for (int x = 0; x <= 10; x++)
            for (int y = 0; y <= 10; y++)
                for (int z = 0; z <= 10; z++)
                {
                    Vec3 p = turn.Apply(new Vec3(x, y, z) * 17);
                    points.Add(new Vec3((float)p.X, (float)p.Y, (float)p.Z));
                }
        ConvexHull hull = ConvexHull.Of([.. points]);
        Assert.Equal(6, hull.Faces.Count(f => f.AreaMm2 > 1));
        Assert.Equal(170.0 * 170 * 170, hull.VolumeMm3, 170.0 * 170 * 170 * 1e-6);
    }

    [Fact]
    public void Of_PointsOfOneAndTwoDimensions_SaysSo()
    {
        Assert.Equal(0, ConvexHull.Of([new(1, 2, 3), new(1, 2, 3)]).Dimension);
        ConvexHull segment = ConvexHull.Of([new(0, 0, 0), new(1, 1, 1), new(3, 3, 3), new(2, 2, 2)]);
        Assert.Equal(1, segment.Dimension);
        Assert.Equal([new(0, 0, 0), new(3, 3, 3)], segment.Vertices.ToArray());
        ConvexHull square = ConvexHull.Of(
            [new(0, 0, 5), new(2, 0, 5), new(2, 2, 5), new(0, 2, 5), new(1, 1, 5), new(1, 0, 5)]);
        Assert.Equal(2, square.Dimension);
        Assert.Equal(4, square.Vertices.Length);
        Assert.Equal(2, square.Faces.Count);
        Assert.Equal(-square.Faces[0].Normal, square.Faces[1].Normal);
        Assert.Equal(8, square.AreaMm2, 1e-12);
        Assert.Equal(0, (square.Centroid - new Vec3(1, 1, 5)).Length, 1e-12);
    }

    [Fact]
    public void Of_NothingOrNotANumber_IsACallersMistake()
    {
        Assert.Throws<ArgumentException>(() => ConvexHull.Of([]));
        Assert.Throws<ArgumentException>(() => ConvexHull.Of([new(0, 0, 0), new(double.NaN, 0, 0)]));
    }

    /// <summary>Volumes and face counts of the regular solids with edge 1: formulas of any geometry table.</summary>
    [Theory]
    [InlineData("tetrahedron", 4, 4, 0.11785113019775793)]
    [InlineData("octahedron", 6, 8, 0.47140452079103168)]
    [InlineData("icosahedron", 12, 20, 2.1816949906249122)]
    [InlineData("dodecahedron", 20, 12, 7.6631189606246322)]
    public void Of_RegularSolid_HasItsFacesAndVolume(string name, int vertices, int faces, double volume)
    {
        ConvexHull hull = ConvexHull.Of(Solids.Regular(name));
        Assert.Equal(vertices, hull.Vertices.Length);
        Assert.Equal(faces, hull.Faces.Count);
        Assert.Equal(volume, hull.VolumeMm3, 1e-12);
        Assert.All(hull.Faces, f => Assert.Equal(hull.AreaMm2 / faces, f.AreaMm2, 1e-12));
    }
}
