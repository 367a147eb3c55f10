namespace Platewright.Build.Motion;

/// <summary>
/// One move at constant accelerations: up to a peak, along at it, down again. Constant-acceleration kinematics:
/// peak² = min(cruise², (2ab·d + b·v0² + a·v1²)/(a + b)).
/// </summary>
public readonly record struct Trapezoid(
    double PeakMmS, double AccelerationS, double CruiseS, double DecelerationS,
    double AccelerationMm, double CruiseMm, double DecelerationMm)
{
    public double TimeS => AccelerationS + CruiseS + DecelerationS;

    /// <param name="distanceMm">0 or more; 0 takes no time.</param>
    /// <param name="cruiseMmS">Greatest speed, above 0 and at least both end speeds.</param>
    /// <param name="accelerationMmS2">Above 0.</param>
    /// <param name="startMmS">Speed at the start.</param>
    /// <param name="endMmS">Speed at the end, reachable from the start within the distance.</param>
    /// <param name="decelerationMmS2">Above 0; null for the same as the acceleration.</param>
    /// <exception cref="ArgumentException">The end speed cannot be reached within the distance.</exception>
    public static Trapezoid Of(
        double distanceMm, double cruiseMmS, double accelerationMmS2, double startMmS = 0, double endMmS = 0,
        double? decelerationMmS2 = null)
    {
        double a = accelerationMmS2, b = decelerationMmS2 ?? a;
        if (!(distanceMm >= 0 && cruiseMmS > 0 && a > 0 && b > 0))
        {
            throw new ArgumentException(
                $"Not a move: {distanceMm} mm at {cruiseMmS} mm/s, {a} and {b} mm/s².", nameof(distanceMm));
        }
        if (distanceMm == 0 && startMmS == endMmS) return default;
        double start = startMmS * startMmS, end = endMmS * endMmS;
        double peak2 = Math.Min(cruiseMmS * cruiseMmS, (2 * a * b * distanceMm + b * start + a * end) / (a + b));
        if (peak2 < Math.Max(start, end))
        {
            throw new ArgumentException(
                $"{endMmS} mm/s cannot be reached from {startMmS} mm/s within {distanceMm} mm below {cruiseMmS} mm/s.",
                nameof(endMmS));
        }
        double peak = Math.Sqrt(peak2), up = (peak2 - start) / (2 * a), down = (peak2 - end) / (2 * b);
        double rest = Math.Max(0, distanceMm - up - down);
        return new Trapezoid(peak, (peak - startMmS) / a, rest / peak, (peak - endMmS) / b, up, rest, down);
    }
}
