using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Estimates;

/// <summary>Laws that hold for whole builds, whatever the model of motion.</summary>
public sealed class ScalingLawTests
{
    private static readonly Mesh Part = SharedMeshes.Joined(
        Solids.Block(new(-12, -3, 0), new(12, 3, 2)), Solids.Moved(Solids.Ball(4), new(14, 1, 4)));

    private static readonly Recipe Recipe = Builds.Recipe with { Support = true, InfillPattern = InfillPattern.Gyroid };

    private static Machine Driven(double speed, double acceleration, double length = 1) => Builds.Machine with
    {
        Motion = new MotionLimits(150 * speed, 3000 * acceleration, 0.05 * length),
    };

    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    [InlineData(3.7)]
    public void Run_SpeedsTimesKAndAccelerationsTimesKSquared_DividesTheTimeByK(double k)
    {
        MotionTimes usual = Builds.Full(Part, Recipe, Driven(1, 1));
        MotionTimes fast = Builds.Full(Part, Recipe with { Speeds = PathSpeeds.All(100 * k) }, Driven(k, k * k));
        foreach (PathKind kind in Enum.GetValues<PathKind>())
            SharedMeshes.AssertNear(usual.MovingS[kind] / k, fast.MovingS[kind], 1e-9);
        Assert.Equal(usual.MaterialMm3, fast.MaterialMm3);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    [InlineData(3)]
    public void Run_AllLengthsSpeedsAndAccelerationsTimesK_KeepsTheTime(double k)
    {
        Recipe large = Recipe with
        {
            LayerHeightMm = k * Recipe.LayerHeightMm,
            BeadWidthMm = k * Recipe.BeadWidthMm,
            Speeds = PathSpeeds.All(100 * k),
        };
        MotionTimes usual = Builds.Full(Part, Recipe, Driven(1, 1));
        MotionTimes scaled = Builds.Full(Part, large, Driven(k, k, k), k);
        SharedMeshes.AssertNear(usual.MovingS.Sum, scaled.MovingS.Sum, 1e-4);
        SharedMeshes.AssertNear(usual.MaterialMm3.Sum * k * k * k, scaled.MaterialMm3.Sum, 1e-4);
    }

    [Fact]
    public void Run_EveryTriangleCutIntoFour_KeepsTheTime()
    {
        double usual = Builds.Full(Part, Recipe).MovingS.Sum;
        SharedMeshes.AssertNear(usual, Builds.Full(Refined(Part), Recipe).MovingS.Sum, 0.005);
    }

    [Fact]
    public void Run_SphereOfFourTimesTheTriangles_KeepsTheTime()
    {
        double coarse = Builds.Full(Solids.Ball(8, 120, 120), Builds.Recipe).MovingS.Sum;
        SharedMeshes.AssertNear(coarse, Builds.Full(Solids.Ball(8, 240, 240), Builds.Recipe).MovingS.Sum, 0.005);
    }

    private static Mesh Refined(Mesh mesh)
    {
        List<Vec3> v = [];
        for (int t = 0; t < mesh.Corners.Length; t += 3)
        {
            Vec3 a = mesh.Vertices[mesh.Corners[t]], b = mesh.Vertices[mesh.Corners[t + 1]];
            Vec3 c = mesh.Vertices[mesh.Corners[t + 2]];
            Vec3 ab = (a + b) * 0.5, bc = (b + c) * 0.5, ca = (c + a) * 0.5;
            v.AddRange([a, ab, ca, ab, b, bc, ca, bc, c, ab, bc, ca]);
        }
        return new Mesh([.. v], [.. Enumerable.Range(0, v.Count)]);
    }
}
