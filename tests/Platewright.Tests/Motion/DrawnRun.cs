using CsCheck;
using Platewright.Build.Motion;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Tests.Motion;

/// <summary>A machine and a run of moves on it, drawn at random for the laws of motion.</summary>
public sealed record DrawnRun(Move[] Moves, MotionLimits Limits)
{
    private static readonly Gen<double> Length =
        Gen.OneOf(Gen.Double[0.01, 0.3], Gen.Double[0.3, 3], Gen.Double[3, 60]);

    private static readonly Gen<double> Turn =
        Gen.OneOf(Gen.Double[-0.02, 0.02], Gen.Double[-0.5, 0.5], Gen.Double[-Math.PI, Math.PI], Gen.Const(0.0));

    private static readonly Gen<(double Length, double Turn, int Speed, int Pause, int Kind)> Step =
        Gen.Select(Length, Turn, Gen.Int[0, 5], Gen.Int[0, 30], Gen.Int[0, 6]);

    private static readonly Gen<MotionLimits> LimitsGen =
        from speed in Gen.Double[20, 500]
        from acceleration in Gen.Double[300, 20_000]
        from tolerance in Gen.Double[0.005, 0.1]
        select new MotionLimits(speed, acceleration, tolerance);

    /// <summary>
    /// Wandering polylines: short chords and long lines, gentle and sharp turns, a few stops and speeds.
    /// </summary>
    public static Gen<DrawnRun> Any { get; } =
        from limits in LimitsGen
        from steps in Step.Array[1, 120]
        select new DrawnRun(MovesOf(steps), limits);

    /// <summary>The same with a limit of jerk.</summary>
    public static Gen<DrawnRun> AnyWithJerk { get; } =
        from run in Any
        from riseS in Gen.Double[0.002, 0.08]
        select run with { Limits = run.Limits with { JerkMmS3 = run.Limits.AccelerationMmS2 / riseS } };

    public MotionTimes Plan() => new MotionPlanner().Plan(default, Moves, Limits);

    public double PathMm()
    {
        double path = 0;
        Vec3 from = default;
        foreach (Move move in Moves)
        {
            path += (move.To - from).Length;
            from = move.To;
        }
        return path;
    }

    private static Move[] MovesOf((double Length, double Turn, int Speed, int Pause, int Kind)[] steps)
    {
        double heading = 0;
        Vec3 at = default;
        var moves = new Move[steps.Length];
        for (int i = 0; i < steps.Length; i++)
        {
            heading += steps[i].Turn;
            at += new Vec3(Math.Cos(heading), Math.Sin(heading), 0) * steps[i].Length;
            // Runs of one speed, as paths have them.
            double speed = 40 + 50 * steps[i / 10 * 10].Speed;
            double area = steps[i].Kind == (int)PathKind.Travel ? 0 : 0.08;
            moves[i] = new Move(at, speed, area, steps[i].Pause == 0 ? 0.05 : 0, (PathKind)steps[i].Kind);
        }
        return moves;
    }
}
