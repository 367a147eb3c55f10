using System.Runtime.InteropServices;
using Platewright.Build.Motion;
using Platewright.Formats.Programs;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Programs;

/// <summary>
/// How long a motion program takes on a machine: its path and speeds within what the machine can do. Counted as
/// <see cref="PathKind.Extruding"/> and <see cref="PathKind.Travel"/>; pulling filament back and pushing it forward
/// again, and waits, are standstill. Homing, warm-up and changes of filament are the machine's, not counted here.
/// </summary>
public static class ProgramTiming
{
    /// <summary>Moves planned together at least, where the program does not stand still sooner.</summary>
    private const int MovesAtOnce = 1 << 14;

    /// <param name="program">As read.</param>
    /// <param name="machine">With motion limits.</param>
    /// <param name="meltRateFactor">How much faster than PLA the material melts, above 0.</param>
    /// <param name="cancel">Stops the work with an <see cref="OperationCanceledException"/>.</param>
    /// <exception cref="ArgumentException">The machine's file states no motion limits.</exception>
    public static MotionTimes Time(
        MotionProgram program, Machine machine, double meltRateFactor = 1, CancellationToken cancel = default)
    {
        MotionLimits limits = machine.Motion
            ?? throw new ArgumentException($"{machine.Name} states no motion limits.", nameof(machine));
        double melt = machine.Extruder.MeltRateMm3S * meltRateFactor ?? double.PositiveInfinity;
        var filament = new Filament(machine.Extruder.FilamentMm);
        var planner = new MotionPlanner();
        var run = new List<Move>(MovesAtOnce);
        MotionTimes times = default;
        Vec3 start = default, at = default;
        double standstill = 0;
        foreach (ref readonly ProgramMove move in program.Moves.Span)
        {
            standstill += move.WaitS;
            double length = (move.ToMm - at).Length;
            if (length <= 0)
            {
                double speed = double.IsFinite(move.SpeedMmS) ? move.SpeedMmS : machine.Extruder.RetractionSpeedMmS;
                standstill += Math.Abs(move.FilamentMm) / speed;
                continue;
            }
            if (standstill > 0 && run.Count >= MovesAtOnce)
            {
                // It stands still here anyway, so planning apart changes nothing.
                cancel.ThrowIfCancellationRequested();
                times += planner.Plan(start, CollectionsMarshal.AsSpan(run), limits, melt);
                run.Clear();
                start = at;
            }
            run.Add(ToMove(move, length, filament, limits, standstill));
            standstill = 0;
            at = move.ToMm;
        }
        times += planner.Plan(start, CollectionsMarshal.AsSpan(run), limits, melt);
        return times with { StandstillS = times.StandstillS + standstill };
    }

    /// <summary>
    /// A move as the planner takes it; on chords of an arc the centripetal limit v² = a·R of the arc holds.
    /// </summary>
    private static Move ToMove(
        in ProgramMove move, double length, Filament filament, MotionLimits limits, double standstillS)
    {
        double speed = Math.Min(move.SpeedMmS, limits.SpeedMmS);
        if (!float.IsInfinity(move.CurveRadiusMm))
            speed = Math.Min(speed, Corner.ArcSpeedMmS(move.CurveRadiusMm, limits.AccelerationMmS2));
        bool extrudes = move.FilamentMm > 0;
        double area = extrudes ? move.FilamentMm * filament.AreaMm2 / length : 0;
        return new Move(move.ToMm, speed, area, standstillS, extrudes ? PathKind.Extruding : PathKind.Travel);
    }
}
