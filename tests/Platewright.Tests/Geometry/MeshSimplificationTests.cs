using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class MeshSimplificationTests
{
    [Theory]
    [InlineData(2000)]
    [InlineData(300)]
    public void Reduce_Torus_KeepsItsShape(int most)
    {
        Mesh torus = Solids.Torus(40, 10, 120, 60);
        Mesh reduced = MeshSimplification.Reduce(torus, most);
        Assert.InRange(reduced.TriangleCount, most - 10, most);
        MeshMeasures before = MeshMeasures.Of(torus), after = MeshMeasures.Of(reduced);
        Assert.Equal(before.SignedVolumeMm3, after.SignedVolumeMm3, 0.05 * before.SignedVolumeMm3);
        Assert.Equal(before.AreaMm2, after.AreaMm2, 0.05 * before.AreaMm2);
        Assert.True(MeshTopology.Of(reduced).IsClosed);
    }

    [Fact]
    public void Reduce_FlatFacesCutFine_LeavesTheBlockExactly()
    {
        List<Vec3> soup = [];
        Mesh block = Solids.Block(default, new(30, 20, 10));
        for (int t = 0; t < block.TriangleCount; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = block.Triangle(t);
            for (int i = 0; i < 8; i++)
            {
                for (int j = 0; j < 8 - i; j++)
                {
                    Vec3 At(int u, int v) => a + (b - a) * (u / 8.0) + (c - a) * (v / 8.0);
                    soup.AddRange([At(i, j), At(i + 1, j), At(i, j + 1)]);
                    if (i + j < 7) soup.AddRange([At(i + 1, j), At(i + 1, j + 1), At(i, j + 1)]);
                }
            }
        }
        Mesh fine = new([.. soup], [.. Enumerable.Range(0, soup.Count)]);
        Assert.Equal(768, fine.TriangleCount);
        Mesh reduced = MeshSimplification.Reduce(fine, 12);
        Assert.Equal(12, reduced.TriangleCount);
        Assert.Equal(6000, MeshMeasures.Of(reduced).SignedVolumeMm3, 1e-6);
        Assert.Equal(fine.Bounds, reduced.Bounds);
    }

    [Fact]
    public void Reduce_SmallMesh_IsOnlyWelded()
    {
        Mesh reduced = MeshSimplification.Reduce(Solids.Block(default, new(1, 2, 3)), 50);
        Assert.Equal(12, reduced.TriangleCount);
        Assert.Throws<ArgumentOutOfRangeException>(() => MeshSimplification.Reduce(reduced, 0));
    }

    [Fact]
    public void Reduce_AnySoup_EndsBelowTheLimitAndIsRepeatable() =>
        Gen.Select(Gen.OneOf(Clouds.Kinds).Array[1, 30], Gen.Int[0, 29].Array[0, 200], Gen.Int[1, 40]).Sample(
            (points, picks, most) =>
            {
                int[] corners = [.. picks.Take(picks.Length / 3 * 3).Select(i => i % points.Length)];
                Mesh first = MeshSimplification.Reduce(new Mesh(points, corners), most);
                Mesh second = MeshSimplification.Reduce(new Mesh(points, corners), most);
                Assert.True(first.TriangleCount <= most);
                Assert.Equal(first.Corners.ToArray(), second.Corners.ToArray());
                Assert.Equal(first.Vertices.ToArray(), second.Vertices.ToArray());
            },
            iter: 300);

    [Fact]
    public void Reduce_BigMesh_StaysNearItsBounds()
    {
        Mesh big = Solids.Torus(40, 10, 600, 200);
        Mesh reduced = MeshSimplification.Reduce(big, 3000);
        Assert.InRange(reduced.TriangleCount, 2900, 3000);
        Assert.True((reduced.Bounds.Size - big.Bounds.Size).Length < 1);
    }
}
