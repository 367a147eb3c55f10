using CsCheck;
using NetTopologySuite.Geometries;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class RestingTests
{
    [Fact]
    public void RestingFaces_OfABlock_TipAtTheAngleOfTheirHalves()
    {
        Mesh block = Solids.Block(new(0, 0, 0), new(60, 20, 10));
        ConvexHull hull = ConvexHull.Of(block.Vertices);
        IReadOnlyList<RestingFace> faces = RestingFace.Of(hull, hull.Centroid);
        Assert.Equal(6, faces.Count);
        Assert.Equal(10, faces[0].HeightMm, 1e-12);
        Assert.Equal(Math.Atan2(10, 5) * 180 / Math.PI, faces[0].TipDegrees, 1e-9);
        Assert.Equal(60, faces[^1].HeightMm, 1e-12);
        Assert.Equal(Math.Atan2(5, 30) * 180 / Math.PI, faces[^1].TipDegrees, 1e-9);
        Assert.All(faces, f => Assert.True(f.IsStable));
    }

    [Fact]
    public void RestingFaces_WithTheWeightBesideTheFace_AreNotStable()
    {
        ConvexHull hull = ConvexHull.Of(
            [new(0, 0, 0), new(10, 0, 0), new(10, 10, 0), new(0, 10, 0), new(40, 0, 30), new(40, 10, 30)]);
        int bottom = Enumerable.Range(0, hull.Faces.Count).Single(f => hull.Faces[f].Normal.Z < -0.999);
        RestingFace face = RestingFace.Of(hull, new Vec3(20, 5, 10)).Single(f => f.Face == bottom);
        Assert.Equal(-45, face.TipDegrees, 1e-9);
        Assert.False(face.IsStable);
    }

    [Fact]
    public void ContactArea_OfATable_IsTheFeetOnly()
    {
        Mesh table = SharedMeshes.Joined(
            Solids.Block(new(0, 0, 0), new(4, 4, 20)), Solids.Block(new(30, 0, 0), new(34, 5, 20)),
            Solids.Block(new(0, 0, 20), new(34, 20, 24)));
        Assert.Equal(16 + 20, ContactArea.Of(table, Vec3.UnitZ, 0.2), 1e-12);
        Assert.Equal(34 * 20, ContactArea.Of(table, -Vec3.UnitZ, 0.2), 1e-12);
        Assert.Throws<ArgumentOutOfRangeException>(() => ContactArea.Of(table, Vec3.UnitZ, -1));
    }

    /// <summary>Oracle: NetTopologySuite's convex hull in the plane.</summary>
    [Fact]
    public void Silhouette_OfTurnedClouds_AgreesWithAnotherLibrary() =>
        Gen.Select(Clouds.Kinds[0].Array[3, 60], Clouds.Axes, Gen.Double[0, 6]).Sample(
            (points, axis, angle) =>
            {
                Rotation turn = Rotation.About(axis, angle);
                Silhouette shadow = Silhouette.Of(points, turn);
                Point[] flat = [.. points.Select(turn.Apply).Select(p => new Point(p.X, p.Y))];
                var other = new MultiPoint(flat).ConvexHull();
                Assert.Equal(other.Area, shadow.AreaMm2, 1e-9 * other.Area + 1e-9);
            },
            iter: 200);
}
