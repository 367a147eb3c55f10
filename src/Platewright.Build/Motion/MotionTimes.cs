namespace Platewright.Build.Motion;

/// <summary>How long a run of moves takes, and how much path and material it holds.</summary>
/// <param name="MovingS">Time in motion, s, by what it is for.</param>
/// <param name="StandstillS">Time standing still between moves, s; in none of <paramref name="MovingS"/>.</param>
/// <param name="PathMm">Length of path, mm.</param>
/// <param name="MaterialMm3">Material laid down, mm³: the sum of length × bead area.</param>
public readonly record struct MotionTimes(PerKind MovingS, double StandstillS, PerKind PathMm, PerKind MaterialMm3)
{
    /// <summary>All of it, s.</summary>
    public double TotalS => MovingS.Sum + StandstillS;

    /// <summary>Travel with the standing still that belongs to it (pulling back, pushing forward), s.</summary>
    public double TravelAndStandstillS => MovingS[PathKind.Travel] + StandstillS;

    public static MotionTimes operator +(MotionTimes a, MotionTimes b) => new(
        a.MovingS + b.MovingS, a.StandstillS + b.StandstillS, a.PathMm + b.PathMm, a.MaterialMm3 + b.MaterialMm3);

    /// <summary>The same run <paramref name="times"/> over: for layers that stand for others.</summary>
    public static MotionTimes operator *(MotionTimes a, double times) => new(
        a.MovingS * times, a.StandstillS * times, a.PathMm * times, a.MaterialMm3 * times);
}
