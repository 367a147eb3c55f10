using CsCheck;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Motion;

/// <summary>Laws of motion that hold for every path on every machine.</summary>
public sealed class MotionLawTests
{
    private static readonly Gen<DrawnRun> Runs = Gen.OneOf(DrawnRun.Any, DrawnRun.AnyWithJerk);

    [Fact]
    public void Plan_FasterClock_DividesTheTime() => Gen.Select(Runs, Gen.Double[0.2, 5]).Sample((run, k) =>
    {
        // Time runs k times as fast: speeds × k, accelerations × k², jerks × k³.
        DrawnRun faster = run with
        {
            Limits = run.Limits with
            {
                SpeedMmS = run.Limits.SpeedMmS * k,
                AccelerationMmS2 = run.Limits.AccelerationMmS2 * k * k,
                JerkMmS3 = run.Limits.JerkMmS3 * k * k * k,
            },
            Moves = [.. run.Moves.Select(m => m with { SpeedMmS = m.SpeedMmS * k, StandstillS = m.StandstillS / k })],
        };
        AssertClose(run.Plan().TotalS / k, faster.Plan().TotalS);
    });

    [Fact]
    public void Plan_LargerWorld_LeavesTheTime() => Gen.Select(Runs, Gen.Double[0.2, 5]).Sample((run, k) =>
    {
        DrawnRun larger = run with
        {
            Limits = run.Limits with
            {
                SpeedMmS = run.Limits.SpeedMmS * k,
                AccelerationMmS2 = run.Limits.AccelerationMmS2 * k,
                JerkMmS3 = run.Limits.JerkMmS3 * k,
                ContourToleranceMm = run.Limits.ContourToleranceMm * k,
            },
            Moves = [.. run.Moves.Select(m => m with { To = m.To * k, SpeedMmS = m.SpeedMmS * k })],
        };
        AssertClose(run.Plan().TotalS, larger.Plan().TotalS);
    });

    [Fact]
    public void Plan_TurnedWorld_LeavesTheTime() => Gen.Select(Runs, Gen.Double[0, 2 * Math.PI]).Sample((run, angle) =>
    {
        (double sin, double cos) = Math.SinCos(angle);
        Move[] turned = [.. run.Moves.Select(m => m with
        {
            To = new Vec3(m.To.X * cos - m.To.Y * sin, m.To.X * sin + m.To.Y * cos, m.To.Z),
        })];
        AssertClose(run.Plan().TotalS, (run with { Moves = turned }).Plan().TotalS);
    });

    [Fact]
    public void Plan_LinesSplitIntoPieces_LeavesTheTime() => Gen.Select(Runs, Gen.Int[2, 9]).Sample((run, pieces) =>
    {
        var split = new List<Move>();
        Vec3 from = default;
        foreach (Move move in run.Moves)
        {
            for (int i = 1; i <= pieces; i++)
            {
                Vec3 to = i == pieces ? move.To : from + (move.To - from) * ((double)i / pieces);
                split.Add(move with { To = to, StandstillS = i == 1 ? move.StandstillS : 0 });
            }
            from = move.To;
        }
        AssertClose(run.Plan().TotalS, (run with { Moves = [.. split] }).Plan().TotalS);
    });

    [Fact]
    public void Plan_AnyRun_TakesAtLeastItsLengthAtFullSpeedAndOneStart() => Runs.Sample(run =>
    {
        MotionTimes times = run.Plan();
        double fastest = run.Moves.Max(m => Math.Min(m.SpeedMmS, run.Limits.SpeedMmS)), path = run.PathMm();
        Assert.True(times.MovingS.Sum >= Trapezoid.Of(path, fastest, run.Limits.AccelerationMmS2).TimeS * (1 - 1e-9));
        Assert.Equal(run.Moves.Sum(m => m.StandstillS), times.StandstillS, 1e-9);
        AssertClose(path, times.PathMm.Sum);
    });

    [Fact]
    public void Plan_WithoutJerkLimit_FasterMachineIsNeverSlower() => DrawnRun.Any.Sample(run =>
    {
        MotionLimits l = run.Limits;
        double time = run.Plan().TotalS;
        foreach (MotionLimits better in (MotionLimits[])[
            l with { SpeedMmS = l.SpeedMmS * 1.3 }, l with { AccelerationMmS2 = l.AccelerationMmS2 * 1.3 }])
        {
            Assert.True((run with { Limits = better }).Plan().TotalS <= time * (1 + 1e-9));
        }
    });

    [Theory]
    [InlineData(10, 10, null)]
    [InlineData(30, 8, null)]
    [InlineData(10, 10, 200_000.0)]
    [InlineData(30, 8, 200_000.0)]
    [InlineData(10, 10, 20_000.0)]
    [InlineData(30, 8, 20_000.0)]
    [InlineData(60, 3, 20_000.0)]
    public void Plan_FinerChordsOfAnEllipse_LeaveTheTime(double width, double depth, double? jerk)
    {
        // Chords at equal steps of the angle whose sagitta is δ/8·t: corners then follow the centripetal law v² = a·R.
        var limits = new MotionLimits(150, 2000, 0.02) { JerkMmS3 = jerk };
        double coarse = Time(0.02), fine = Time(0.002);
        Assert.InRange(fine / coarse, 0.995, 1.005);

        double Time(double sagitta)
        {
            Move[] moves = Ellipse(width, depth, sagitta);
            return new MotionPlanner().Plan(new Vec3(width, 0, 0), moves, limits).TotalS;
        }
    }

    private static Move[] Ellipse(double a, double b, double sagitta)
    {
        int n = (int)Math.Ceiling(Math.PI / Math.Acos(1 - sagitta / Math.Max(a, b)));
        return [.. Enumerable.Range(1, n).Select(i => 2 * Math.PI * i / n)
            .Select(t => new Move(new Vec3(a * Math.Cos(t), b * Math.Sin(t), 0), 150, 0.08, 0, PathKind.Wall))];
    }

    private static void AssertClose(double expected, double found) =>
        Assert.True(Math.Abs(found - expected) <= 1e-7 * expected, $"{found} in place of {expected}");
}
