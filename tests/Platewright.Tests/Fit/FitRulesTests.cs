using Platewright.Fit;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Fit;

/// <summary>Margins, shrinkage, brim, keep-outs and what the user allows, against values by hand.</summary>
public sealed class FitRulesTests
{
    [Fact]
    public void LargestScale_MarginShrinkageBrim_FollowTheStatement()
    {
        // A 100 × 80 × 60 block, margins 5, shrinkage 0.5 %, brim 8 on 200 × 180 × 150:
        // x: (200 − 10 − 16) / 100.5, y: (180 − 10 − 16) / 80.4, z: (150 − 5) / 60.3; the least decides.
        Machine machine = Solids.BoxMachine(200, 180, 150) with { Margins = Margins.Uniform(5) };
        FitResult fit = Solve(Solids.Box(100, 80, 60), machine, 0.005, 8);
        Assert.Equal(174 / 100.5, fit.AsDrawn.LargestScale, 1e-12);
        PoseChecks.AssertInside(Solids.Box(100, 80, 60), machine, fit.AsDrawn, 0.005, 8);
        Assert.Equal(Verdict.AsDrawn, fit.Verdict);
        // Clearance at 100 %: x leaves 190 − 16 − 100.5.
        Assert.Equal(Math.Min(174 - 100.5, Math.Min(154 - 80.4, 145 - 60.3)), fit.ClearanceMm, 1e-9);
    }

    [Fact]
    public void Brim_SurroundsOnlyTheContact()
    {
        // A mushroom: 40 mm foot under a 190 mm cap. With a brim of 10 the foot has room to spare, so only the cap counts.
        Vec3[] mushroom = [.. Solids.Box(40, 40, 0), .. Solids.Box(190, 190, 20).Select(v => v + new Vec3(0, 0, 60))];
        FitResult fit = Solve(mushroom, Solids.BoxMachine(200, 200, 200), 0, 10);
        Assert.Equal(200.0 / 190, fit.AsDrawn.LargestScale, 1e-12);
        // Upside down the cap is the contact: (200 − 20) / 190 < 1.
        Vec3[] upsideDown = [.. mushroom.Select(v => new Vec3(v.X, -v.Y, -v.Z))];
        Assert.Equal(180.0 / 190, Solve(upsideDown, Solids.BoxMachine(200, 200, 200), 0, 10).AsDrawn.LargestScale, 1e-12);
    }

    [Fact]
    public void Brim_OnRoundSurface_ScalesOnlyThePart()
    {
        // A square plate of edge e in a circle of radius 100 with brim 6: e √2 / 2 ≤ 94.
        var machine = new Machine { Name = "round", BuildVolume = new CylinderVolume(200, 100) };
        FitResult fit = Solve(Solids.Box(100, 100, 10), machine, 0, 6);
        Assert.Equal(94 / (50 * Math.Sqrt(2)), fit.Upright.LargestScale, 1e-9);
    }

    [Fact]
    public void KeepOut_OnlyBelowItsHeight_Matters()
    {
        // A strip 20 wide along the left edge, 10 high, on 200 × 200.
        Machine machine = Solids.BoxMachine(200, 200, 200) with
        {
            KeepOuts = [new Bounds3(default, new Vec3(20, 200, 10))],
        };
        Assert.Equal(180.0 / 190, Solve(Solids.Box(190, 190, 50), machine, 0, 0).AsDrawn.LargestScale, 1e-6);
        // Stood on its side it passes the strip.
        Assert.Equal(Verdict.Turned, Solve(Solids.Box(190, 190, 50), machine, 0, 0).Verdict);
        // The same block on a foot 12 high and 100 wide overhangs the strip.
        Vec3[] onFoot = [.. Solids.Box(100, 100, 0), .. Solids.Box(100, 100, 0).Select(v => v + new Vec3(0, 0, 12)),
            .. Solids.Box(190, 190, 0).Select(v => v + new Vec3(0, 0, 24)), .. Solids.Box(190, 190, 0).Select(v => v + new Vec3(0, 0, 74))];
        FitResult fit = Solve(onFoot, machine, 0, 0);
        Assert.True(fit.AsDrawn.Fits, fit.Reason);
        AssertClear(onFoot, machine, fit.Pose);
    }

    [Fact]
    public void Allowance_ForbidsTurningTiltingScaling()
    {
        Vec3[] rod = Solids.Box(12, 12, 230);
        Machine cube = Solids.BoxMachine(200, 200, 200);
        Assert.Equal(Verdict.Turned, Solve(rod, cube, new Allowance()).Verdict);
        Assert.Equal(Verdict.No, Solve(rod, cube, new Allowance(Turn: false, Tilt: false, Cut: false, LeastScale: 0.95)).Verdict);
        Assert.Equal(Verdict.Scaled, Solve(rod, cube, new Allowance(Turn: false, Tilt: false, Cut: false, LeastScale: 0.8)).Verdict);
        Vec3[] long_ = Solids.Box(12, 12, 300);
        Assert.Equal(Verdict.Tilted, Solve(long_, cube, new Allowance()).Verdict);
        Assert.Equal(Verdict.InPieces, Solve(long_, cube, new Allowance(Tilt: false)).Verdict);
        Assert.Equal(Verdict.No, Solve(long_, cube, new Allowance(Tilt: false, Cut: false)).Verdict);
    }

    [Fact]
    public void Reason_TooLongPart_SaysByHowMuchAndTheScale()
    {
        FitResult fit = Solve(Solids.Box(1, 1, 350), Solids.BoxMachine(200, 200, 200), new Allowance(Cut: false));
        Assert.Equal(Verdict.Scaled, fit.Verdict);
        Assert.Matches(@"^\d+\.\d mm too long even along the best diagonal; fits at 98\.\d %, where an 8 mm bore becomes 7\.8\d mm", fit.Reason);
        Assert.True(fit.Proved);
    }

    [Fact]
    public void Tight_LessThanTwoMillimetres_IsSaid()
    {
        FitResult fit = Solve(Solids.Box(199, 100, 100), Solids.BoxMachine(200, 200, 200), new Allowance());
        Assert.True(fit.Tight);
        Assert.Equal(1, fit.ClearanceMm, 1e-9);
        Assert.Contains("tight", fit.Reason, StringComparison.Ordinal);
        Assert.False(Solve(Solids.Box(197, 100, 100), Solids.BoxMachine(200, 200, 200), new Allowance()).Tight);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    [InlineData(4, 2)]
    public void Degenerate_PointSegmentPolygon_Fit(int count, int dimension)
    {
        Vec3[] points = new Vec3[] { new(1, 2, 3), new(30, 2, 9), new(30, 40, 9), new(1, 40, 3) }[..count];
        Assert.Equal(dimension, ConvexHull.Of(points).Dimension);
        FitResult fit = Solve(points, Solids.BoxMachine(100, 100, 100), new Allowance());
        Assert.Equal(Verdict.AsDrawn, fit.Verdict);
        Assert.True(double.IsFinite(fit.UpperBound));
    }

    [Fact]
    public void Margins_WithoutRoom_AreRefusedWithASentence() =>
        Assert.Contains("leave no room", Assert.Throws<ArgumentException>(() => Solve(
            Solids.Box(1, 1, 1), Solids.BoxMachine(10, 10, 10) with { Margins = Margins.Uniform(5) }, 0, 0)).Message, StringComparison.Ordinal);

    private static void AssertClear(Vec3[] points, Machine machine, Pose pose)
    {
        // Sampled along all chords: none of the body's points below a keep-out's top lies inside it.
        Vec3[] placed = [.. points.Select(p => pose.Scale * pose.Rotation.Apply(p) + pose.Translation)];
        foreach (Vec3 a in placed)
            foreach (Vec3 b in placed)
                for (int i = 0; i <= 20; i++)
                {
                    Vec3 p = a + (b - a) * (i / 20.0);
                    foreach (Bounds3 box in machine.KeepOuts)
                        Assert.False(
                            p.X > box.Min.X + 1e-6 && p.X < box.Max.X - 1e-6 && p.Y > box.Min.Y + 1e-6
                            && p.Y < box.Max.Y - 1e-6 && p.Z < box.Max.Z - 1e-6, $"{p} lies in a keep-out");
                }
    }

    private static FitResult Solve(Vec3[] points, Machine machine, Allowance allowance) => FitSolver.Solve(
        new PreparedPart(new PartShape(ConvexHull.Of(points))), machine, allowance, new FitOptions(), CancellationToken.None);

    private static FitResult Solve(Vec3[] points, Machine machine, double shrinkage, double brim) => FitSolver.Solve(
        new PreparedPart(new PartShape(ConvexHull.Of(points), shrinkage, brim)), machine, new Allowance(), new FitOptions(), CancellationToken.None);
}
