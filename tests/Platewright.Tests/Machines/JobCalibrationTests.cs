using Platewright.Machines;

namespace Platewright.Tests.Machines;

/// <summary>Speed and acceleration from one measured job, on jobs whose time is known in closed form.</summary>
public sealed class JobCalibrationTests
{
    private static readonly FilledMachine Filled =
        MachineFiller.Fill(new KnownMachine("bench", new BoxVolume(220, 220, 250)) { Closed = false });

    /// <summary>Many moves from rest to rest: each takes d/v + v/a where it is long enough, else 2√(d/a).</summary>
    private static double Moves(Machine machine)
    {
        const double moveMm = 20, moves = 20_000, otherS = 400;
        (double v, double a) = (machine.Motion!.SpeedMmS, machine.Motion.AccelerationMmS2);
        double one = moveMm >= v * v / a ? moveMm / v + v / a : 2 * Math.Sqrt(moveMm / a);
        return otherS + moves * one;
    }

    [Theory]
    [InlineData(0.9)]
    [InlineData(1)]
    [InlineData(1.3)]
    public void Fit_MeasuredTime_IsMetAndTheRangeHoldsATenthOfDoubt(double factor)
    {
        double measured = Moves(Filled.Machine) * factor;
        FilledMachine fitted = JobCalibration.Fit(Filled, Moves, measured);

        Assert.InRange(Moves(fitted.Machine) / measured, 0.985, 1.015);
        Assert.Contains("from the job", fitted.Origins["motion.acceleration_mm_s2"], StringComparison.Ordinal);
        Assert.InRange(Moves(AtEnd(fitted, r => r.Low)) / measured, 1, 1.12);
        Assert.InRange(Moves(AtEnd(fitted, r => r.High)) / measured, 0.88, 1);
        Assert.Empty(fitted.Notes);
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(10)]
    public void Fit_TimeThatNoSuchMachineTakes_ChangesNothingAndSaysSo(double factor)
    {
        FilledMachine fitted = JobCalibration.Fit(Filled, Moves, Moves(Filled.Machine) * factor);

        Assert.Equal(Filled.Machine, fitted.Machine);
        Assert.Contains("is plausible", Assert.Single(fitted.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_TimeALittleBeyondTheFastest_TakesThatEndAndKeepsARange()
    {
        double fastest = Moves(AtEnd(Filled, r => r.High));
        FilledMachine fitted = JobCalibration.Fit(Filled, Moves, fastest * 0.9);

        Assert.Equal(fastest, Moves(fitted.Machine), 6);
        Assert.Equal(new ValueRange(180, 300), fitted.Machine.Ranges["motion.speed_mm_s"]);
        Assert.Contains("from that end", Assert.Single(fitted.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Fit_StatedDrives_AreNotMoved()
    {
        FilledMachine stated = Filled with
        {
            Machine = Filled.Machine with
            {
                Ranges = Filled.Machine.Ranges.RemoveRange(["motion.speed_mm_s", "motion.acceleration_mm_s2"]),
            },
        };
        FilledMachine fitted = JobCalibration.Fit(stated, Moves, 3600);

        Assert.Equal(stated.Machine, fitted.Machine);
        Assert.Contains("are stated", Assert.Single(fitted.Notes), StringComparison.Ordinal);
    }

    private static Machine AtEnd(FilledMachine fitted, Func<ValueRange, double> end) =>
        ((string[])["motion.speed_mm_s", "motion.acceleration_mm_s2"]).Aggregate(
            fitted.Machine, (m, key) => MachineParameters.Find(key)!.With(m, end(m.Ranges[key])));
}
