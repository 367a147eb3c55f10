using CsCheck;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

/// <summary>Signs against whole-number arithmetic written apart from the code under test.</summary>
public sealed class OrientationTests
{
    public static TheoryData<int> Kinds => Clouds.KindNumbers;

    [Theory, MemberData(nameof(Kinds))]
    public void Of_FourPoints_IsTheExactSign(int kind) =>
        Clouds.Kinds[kind].Array[4].Sample(
            p =>
            {
                int exact = ExactSpace.Side(p[0], p[1], p[2], p[3]);
                Assert.Equal(exact, Orientation.Of(p[0], p[1], p[2], p[3]));
                Assert.Equal(exact, Orientation.Exactly(p[0], p[1], p[2], p[3]));
                Assert.Equal(exact, BigOrientation.Of(p[0], p[1], p[2], p[3]));
                Assert.Equal(-exact, Orientation.Of(p[1], p[0], p[2], p[3]));
            },
            iter: 300);

    [Theory, MemberData(nameof(Kinds))]
    public void Of_ThreePointsInThePlane_IsTheExactSign(int kind) =>
        Clouds.Kinds[kind].Array[3].Sample(
            p =>
            {
                Vec2[] q = [.. p.Select(v => new Vec2(v.X, v.Y))];
                Vec3[] flat = [.. p.Select(v => new Vec3(v.X, v.Y, 0))];
                int exact = ExactSpace.Side(flat[0], flat[1], flat[2], flat[0] with { Z = 1 });
                Assert.Equal(exact, Orientation.Of(q[0], q[1], q[2]));
                Assert.Equal(exact, Orientation.Exactly(q[0], q[1], q[2]));
                Assert.Equal(exact, BigOrientation.Of(q[0], q[1], q[2]));
            },
            iter: 300);

    /// <summary>Points on a plane moved by one unit in the last place: the cases a rounded determinant gets
    /// wrong.</summary>
    [Fact]
    public void Of_PointsAHairOffAPlane_SeesTheHair() =>
        Gen.Select(Clouds.Axes, Clouds.Axes, Clouds.Axes, Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[-2, 2]).Sample(
            (a, b, c, s, t, ulps) =>
            {
                Vec3 p = a + (b - a) * s + (c - a) * t;
                double z = p.Z;
                for (int i = 0; i < Math.Abs(ulps); i++) z = ulps > 0 ? Math.BitIncrement(z) : Math.BitDecrement(z);
                p = p with { Z = z };
                Assert.Equal(ExactSpace.Side(a, b, c, p), Orientation.Of(a, b, c, p));
            },
            iter: 2000);

    [Fact]
    public void Of_CoordinatesBeyondTheRangeOfProducts_IsStillExact()
    {
        Vec3 a = new(1e200, 0, 0), b = new(0, 1e200, 0), c = new(0, 0, 1e200);
        Assert.Equal(ExactSpace.Side(a, b, c, default), Orientation.Of(a, b, c, default));
        Vec3 d = new(5e-324, 0, 0), e = new(0, 5e-324, 0), f = new(0, 0, 5e-324);
        Assert.Equal(-1, Orientation.Of(d, e, f, default));
        Assert.Equal(0, Orientation.Of(d, e, d, f));
    }
}
