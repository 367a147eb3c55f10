using CsCheck;
using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Tests.Motion;

/// <summary>What every jerk-limited plan keeps, sampled over random polylines.</summary>
public sealed class JerkPlanTests
{
    private const int Samples = 400;
    private const double Slack = 1e-6;

    [Fact]
    public void Plan_SampledProfile_KeepsSpeedAccelerationAndJerk() =>
        DrawnRun.AnyWithJerk.Sample(CheckProfile, iter: 3000);

    [Fact]
    public void Plan_WithJerk_IsNeverFasterThanWithout() => DrawnRun.AnyWithJerk.Sample(run =>
    {
        double without = (run with { Limits = run.Limits with { JerkMmS3 = null } }).Plan().TotalS;
        Assert.True(run.Plan().TotalS >= without * (1 - 1e-9));
    }, iter: 3000);

    [Fact]
    public void Plan_GrowingJerk_TendsToTheTimeWithout() => DrawnRun.AnyWithJerk.Sample(run =>
    {
        double without = (run with { Limits = run.Limits with { JerkMmS3 = null } }).Plan().TotalS;
        double at8 = (run with { Limits = run.Limits with { JerkMmS3 = 1e8 } }).Plan().TotalS;
        double at12 = (run with { Limits = run.Limits with { JerkMmS3 = 1e12 } }).Plan().TotalS;
        Assert.InRange(at12 / without, 1 - 1e-9, 1 + 1e-3);
        Assert.True(at12 <= at8 * (1 + 1e-9));
    }, iter: 3000);

    private static void CheckProfile(DrawnRun run)
    {
        var planner = new MotionPlanner();
        MotionTimes times = planner.Plan(default, run.Moves, run.Limits);
        double jerk = run.Limits.JerkMmS3!.Value, a = run.Limits.AccelerationMmS2;
        (double[] ends, double[] cruises, double[] limits) = MovesAndVertices(run);
        double total = 0, start = 0, speedBefore = 0;
        foreach (PlannedSpan span in planner.JerkSpans)
        {
            DoubleS profile = span.Profile;
            Assert.Equal(speedBefore, profile.At(0).MmS, 1e-6);
            (double Mm, double MmS, double MmS2) last = profile.At(0);
            Assert.Equal(0, last.MmS2, 1e-6 * a);
            double step = profile.TimeS / Samples;
            for (int i = 1; i <= Samples; i++)
            {
                (double Mm, double MmS, double MmS2) now = profile.At(i == Samples ? profile.TimeS : i * step);
                Assert.True(Math.Abs(now.MmS2) <= a * (1 + Slack), $"acceleration {now.MmS2}");
                Assert.True(Math.Abs(now.MmS2 - last.MmS2) <= jerk * step * (1 + Slack) + 1e-7 * a, $"jerk at {i}");
                Assert.True(Math.Abs(now.MmS - last.MmS - (now.MmS2 + last.MmS2) / 2 * step) <= jerk * step * step, "speed is no integral");
                Assert.True(Math.Abs(now.Mm - last.Mm - (now.MmS + last.MmS) / 2 * step) <= a * step * step, "distance is no integral");
                double middle = start + (now.Mm + last.Mm) / 2;
                int move = Math.Min(cruises.Length - 1, FirstAtLeast(ends, middle));
                if (middle - (move == 0 ? 0 : ends[move - 1]) > now.Mm - last.Mm && ends[move] - middle > now.Mm - last.Mm)
                    Assert.True(Math.Max(now.MmS, last.MmS) <= cruises[move] * (1 + Slack), $"{now.MmS} mm/s in move {move} of {cruises[move]}");
                last = now;
            }
            Assert.Equal(profile.DistanceMm, last.Mm, 1e-6);
            Assert.Equal(0, last.MmS2, 1e-6 * a);
            for (int k = FirstAtLeast(ends, start + 1e-9); k < ends.Length && ends[k] < start + profile.DistanceMm - 1e-9; k++)
            {
                double speed = profile.At(profile.TimeAt(ends[k] - start)).MmS;
                Assert.True(speed <= limits[k] * (1 + Slack) + 1e-6, $"{speed} mm/s at a vertex of {limits[k]}");
            }
            total += profile.TimeS;
            start += profile.DistanceMm;
            speedBefore = last.MmS;
        }
        Assert.Equal(0, speedBefore, 1e-6);
        Assert.Equal(times.MovingS.Sum, total, 1e-9 * (1 + total));
        Assert.Equal(run.PathMm(), start, 1e-6);
    }

    /// <summary>
    /// Where moves end along the path, their speeds, and the limit at each end; by the formulas, not the planner.
    /// </summary>
    private static (double[] Ends, double[] Cruises, double[] Limits) MovesAndVertices(DrawnRun run)
    {
        int n = run.Moves.Length;
        double[] ends = new double[n], cruises = new double[n], limits = new double[n];
        Vec3 from = default;
        double at = 0;
        for (int i = 0; i < n; i++)
        {
            Move move = run.Moves[i];
            at += (move.To - from).Length;
            (ends[i], cruises[i]) = (at, Math.Min(move.SpeedMmS, run.Limits.SpeedMmS));
            if (i + 1 < n)
            {
                Move next = run.Moves[i + 1];
                Vec3 u = (move.To - from).Normalized(), v = (next.To - move.To).Normalized();
                double s = Math.Sqrt((1 + u.Dot(v)) / 2);
                double corner = s >= 1 ? double.PositiveInfinity
                    : Math.Sqrt(run.Limits.AccelerationMmS2 * run.Limits.ContourToleranceMm * s / (1 - s));
                limits[i] = next.StandstillS > 0 ? 0
                    : Math.Min(corner * (1 + 1e-6), Math.Min(cruises[i], Math.Min(next.SpeedMmS, run.Limits.SpeedMmS)));
            }
            from = move.To;
        }
        return (ends, cruises, limits);
    }

    private static int FirstAtLeast(double[] rising, double value)
    {
        int found = Array.BinarySearch(rising, value);
        return found < 0 ? ~found : found;
    }
}
