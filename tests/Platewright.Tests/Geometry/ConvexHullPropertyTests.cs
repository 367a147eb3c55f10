using System.Runtime.InteropServices;
using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class ConvexHullPropertyTests
{
    [Theory, MemberData(nameof(Clouds.KindNumbers), MemberType = typeof(Clouds))]
    public void Vertices_OfFewPoints_AreTheExtremePointsExactly(int kind) =>
        Clouds.Kinds[kind].Array[1, 9].Sample(
            points =>
            {
                Vec3[] distinct = [.. points.Select(HullFaces.Positive).Distinct()];
                Vec3[] extreme = [.. distinct.Where(p => !ExactSpace.InHull(p, [.. distinct.Where(q => q != p)]))];
                Array.Sort(extreme, HullSeed.Compare);
                Assert.Equal(extreme, ConvexHull.Of(points).Vertices.ToArray());
            },
            iter: 40);

    [Theory, MemberData(nameof(Clouds.KindNumbers), MemberType = typeof(Clouds))]
    public void Triangles_OfManyPoints_HaveNoPointAboveThemExactly(int kind) =>
        Clouds.Kinds[kind].Array[4, 50].Sample(
            points =>
            {
                int[] seed = HullSeed.Find(points);
                if (seed.Length < 4) return;
                List<HullTriangle> triangles = Quickhull.Triangulate(points, seed);
                Assert.All(triangles, t => Assert.All(points, p =>
                    Assert.True(ExactSpace.Side(points[t.A], points[t.B], points[t.C], p) <= 0)));
                AssertClosed(triangles);
            },
            iter: 20);

    [Theory, MemberData(nameof(Clouds.KindNumbers), MemberType = typeof(Clouds))]
    public void Hull_OfShuffledPoints_IsTheSameBits(int kind) =>
        Gen.Select(Clouds.Kinds[kind].Array[1, 60], Gen.Int).Sample(
            (points, seed) =>
            {
                ConvexHull first = ConvexHull.Of(points);
                Vec3[] shuffled = [.. points];
                new Random(seed).Shuffle(shuffled);
                ConvexHull second = ConvexHull.Of(shuffled);
                Assert.Equal(Bits(first), Bits(second));
                Assert.Equal(first.Faces.Count, second.Faces.Count);
                for (int f = 0; f < first.Faces.Count; f++)
                {
                    Assert.Equal(first.Faces[f].Corners, second.Faces[f].Corners);
                    Assert.Equal(first.Faces[f].Normal, second.Faces[f].Normal);
                }
                Assert.Equal(first.VolumeMm3, second.VolumeMm3);
            },
            iter: 60);

    [Fact]
    public void Faces_OfAnyHull_SupportItWithinTheirTolerance() =>
        Clouds.Kinds[4].Array[4, 200].Sample(
            points =>
            {
                ConvexHull hull = ConvexHull.Of(points);
                double reach = 100 * HullFaces.Flatness;
                foreach (HullFace face in hull.Faces)
                {
                    Assert.Equal(1, face.Normal.Length, 1e-12);
                    Assert.InRange(hull.Support(face.Normal) - face.OffsetMm, -1e-9, reach);
                }
            },
            iter: 30);

    [Fact]
    public void Volume_OfTurnedPoints_StaysTheSame() =>
        Gen.Select(Clouds.Kinds[0].Array[4, 60], Clouds.Axes, Gen.Double[0, 6]).Sample(
            (points, axis, angle) =>
            {
                ConvexHull hull = ConvexHull.Of(points);
                Rotation turn = Rotation.About(axis, angle);
                ConvexHull turned = ConvexHull.Of([.. points.Select(turn.Apply)]);
                // Turning rounds to the size of the coordinates, however thin the hull is.
                double size = points.Max(p => p.Length);
                Assert.Equal(hull.VolumeMm3, turned.VolumeMm3, 1e-9 * hull.VolumeMm3 + 1e-12 * size * size * size);
                Assert.Equal(hull.AreaMm2, turned.AreaMm2, 1e-9 * hull.AreaMm2 + 1e-12 * size * size);
                Assert.Equal(0, (turn.Apply(hull.Centroid) - turned.Centroid).Length, 1e-8);
            },
            iter: 100);

    private static byte[] Bits(ConvexHull hull) => MemoryMarshal.AsBytes(hull.Vertices).ToArray();

    private static void AssertClosed(List<HullTriangle> triangles)
    {
        HashSet<(int, int)> half = [];
        foreach (HullTriangle t in triangles)
            for (int e = 0; e < 3; e++)
                Assert.True(half.Add((t.Corner(e), t.Corner((e + 1) % 3))));
        Assert.All(half, h => Assert.Contains((h.Item2, h.Item1), half));
    }
}
