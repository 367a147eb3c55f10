using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

public sealed class ShellSeparationTests
{
    private static readonly Rotation Upright = Rotation.About(Vec3.UnitX, Math.PI / 2);

    [Fact]
    public void Separate_LooseShells_GivesEachWithItsVolume()
    {
        Mesh block = Solids.Block(default, new(10, 10, 10));
        Mesh plate = SharedMeshes.Joined(
            block, Solids.Moved(block, new(20, 0, 0)), Solids.Moved(Solids.Ball(8), new(0, 40, 8)));
        IReadOnlyList<Mesh> parts = ShellSeparation.Separate(plate);
        Assert.Equal(3, parts.Count);
        Assert.Equal(new Vec3(20, 0, 0), parts[1].Bounds.Min);
        Assert.Equal(8, parts[1].Vertices.Length);
        double whole = MeshMeasures.Of(plate).SignedVolumeMm3;
        Assert.Equal(whole, parts.Sum(p => MeshMeasures.Of(p).SignedVolumeMm3), 1e-9 * whole);
    }

    [Fact]
    public void Separate_LinkedRings_StayTogether()
    {
        Mesh ring = Solids.Torus(20, 4);
        Mesh second = Solids.Moved(ring.Transformed(Upright.ToMatrix(), default), new(20, 0, 0));
        Mesh away = Solids.Moved(ring, new(0, 100, 0));
        IReadOnlyList<Mesh> parts = ShellSeparation.Separate(SharedMeshes.Joined(ring, away, second));
        Assert.Equal(2, parts.Count);
        Assert.Equal(2 * ring.TriangleCount, parts[0].TriangleCount);
    }

    [Fact]
    public void Separate_ChainOfLinks_StaysTogether()
    {
        Mesh ring = Solids.Torus(20, 4, 24, 12);
        Mesh turned = ring.Transformed(Upright.ToMatrix(), default);
        Mesh chain = SharedMeshes.Joined([.. Enumerable.Range(0, 9)
            .Select(i => Solids.Moved(i % 2 == 0 ? ring : turned, new(i * 30.0, 0, 0)))]);
        Assert.Single(ShellSeparation.Separate(chain));
    }

    [Fact]
    public void Separate_HollowBallAndWhatRattlesInIt_StayTogether()
    {
        Mesh hollow = SharedMeshes.Joined(Solids.Ball(20), Solids.InsideOut(Solids.Ball(15)), Solids.Ball(3));
        Assert.Single(ShellSeparation.Separate(hollow));
    }

    [Fact]
    public void Separate_BarsOfACageAndTheBallInIt_StayTogetherOnlyWhereTheBarsTouch()
    {
        // Four bars that touch a floor make a cage; the ball between them lies in the cage's hull, in no bar's hull.
        Mesh bar = Solids.Block(new(-1, -1, 0), new(1, 1, 40));
        Mesh[] bars = [.. new[] { (-20, -20), (20, -20), (-20, 20), (20, 20) }
            .Select(p => Solids.Moved(bar, new(p.Item1, p.Item2, 0)))];
        Mesh ball = Solids.Moved(Solids.Ball(8), new(0, 0, 20));
        Assert.Equal(5, ShellSeparation.Separate(SharedMeshes.Joined([.. bars, ball])).Count);
        Mesh floor = Solids.Block(new(-22, -22, -2), new(22, 22, 1));
        Assert.Single(ShellSeparation.Separate(SharedMeshes.Joined([.. bars, ball, floor])));
    }

    /// <summary>Where hulls are apart, some plane parts them: the test looks at the corners on both sides of
    /// it.</summary>
    [Fact]
    public void AreApart_RandomHulls_AgreesWithAFineSearchForAPlane() =>
        Gen.Select(Clouds.Kinds[0].Array[1, 12], Clouds.Kinds[0].Array[1, 12], Clouds.Kinds[0]).Sample(
            (p, q, away) =>
            {
                ConvexHull a = ConvexHull.Of(p), b = ConvexHull.Of([.. q.Select(v => v * 0.5 + away * 2)]);
                double widest = Frame.Spiral(20000).Max(u => -b.Support(u) - a.Support(-u));
                if (widest > 1e-6) Assert.True(HullSeparation.AreApart(a, b));
                if (widest < -5) Assert.False(HullSeparation.AreApart(a, b));
                Assert.False(HullSeparation.AreApart(a, a));
            },
            iter: 60);
}
