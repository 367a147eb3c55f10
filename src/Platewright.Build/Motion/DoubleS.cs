namespace Platewright.Build.Motion;

/// <summary>
/// The fastest motion over a distance within limits of speed, acceleration and jerk, without acceleration at both ends:
/// up to a peak, along at it, down again (the double-S profile of Biagiotti and Melchiorri, Trajectory Planning for
/// Automatic Machines and Robots, chapter 3).
/// </summary>
public readonly struct DoubleS
{
    private const int MostSteps = 64;

    private readonly SpeedChange _up;
    private readonly SpeedChange _down;

    private DoubleS(double distanceMm, SpeedChange up, SpeedChange down)
    {
        DistanceMm = distanceMm;
        (_up, _down) = (up, down);
        CruiseS = Math.Max(0, distanceMm - up.DistanceMm - down.DistanceMm) / PeakMmS;
    }

    public double DistanceMm { get; }

    public double PeakMmS => _up.HighMmS;

    /// <summary>Greatest acceleration on the way up, mm/s².</summary>
    public double PeakAccelerationMmS2 => _up.PeakMmS2;

    /// <summary>How long the acceleration rises on the way up, s.</summary>
    public double JerkS => _up.JerkS;

    public double AccelerationS => _up.TimeS;

    public double CruiseS { get; }

    public double DecelerationS => _down.TimeS;

    public double TimeS => _up.TimeS + CruiseS + _down.TimeS;

    /// <param name="distanceMm">Above 0.</param>
    /// <param name="cruiseMmS">Greatest speed, above 0 and at least both end speeds.</param>
    /// <param name="accelerationMmS2">Greatest acceleration, above 0.</param>
    /// <param name="jerkMmS3">Greatest jerk, above 0.</param>
    /// <param name="startMmS">Speed at the start.</param>
    /// <param name="endMmS">Speed at the end.</param>
    /// <exception cref="ArgumentException">The end speed cannot be reached within the distance.</exception>
    public static DoubleS Of(
        double distanceMm, double cruiseMmS, double accelerationMmS2, double jerkMmS3, double startMmS = 0,
        double endMmS = 0)
    {
        if (!(distanceMm > 0 && cruiseMmS > 0 && accelerationMmS2 > 0 && jerkMmS3 > 0 && startMmS >= 0 && endMmS >= 0))
        {
            throw new ArgumentException(
                $"Not a move: {distanceMm} mm at {cruiseMmS} mm/s, {accelerationMmS2} mm/s², {jerkMmS3} mm/s³.",
                nameof(distanceMm));
        }
        (double low, double high) = startMmS < endMmS ? (startMmS, endMmS) : (endMmS, startMmS);
        if (high > cruiseMmS || SpeedChange.Distance(low, high, accelerationMmS2, jerkMmS3) > distanceMm * (1 + 1e-9))
        {
            throw new ArgumentException(
                $"{endMmS} mm/s cannot be reached from {startMmS} mm/s within {distanceMm} mm below {cruiseMmS} mm/s.",
                nameof(endMmS));
        }
        return Fastest(distanceMm, cruiseMmS, accelerationMmS2, jerkMmS3, startMmS, endMmS);
    }

    /// <summary>The same without checks: the ends lie below the cruise speed and in each other's reach.</summary>
    internal static DoubleS Fastest(double distance, double cruise, double a, double j, double start, double end)
    {
        if (SpeedChange.Distance(start, cruise, a, j) + SpeedChange.Distance(end, cruise, a, j) > distance)
            cruise = Peak(distance, cruise, a, j, start, end);
        return new DoubleS(distance, new SpeedChange(start, cruise, a, j), new SpeedChange(end, cruise, a, j));
    }

    /// <summary>
    /// The peak at which both changes of speed fill the distance. With the acceleration at its limit on both sides it
    /// solves a quadratic; else Newton's method in x = √(peak − higher end), in which the distance is convex.
    /// </summary>
    private static double Peak(double distance, double cruise, double a, double j, double start, double end)
    {
        double g = a * a / (2 * j), base_ = Math.Max(start, end);
        // p²/a + p·a/j + (start + end)·a/2j − (start² + end²)/2a = distance
        double c = (start + end) * g - (start * start + end * end) * 0.5 - a * distance;
        double peak = -g + Math.Sqrt(Math.Max(0, g * g - c));
        if (peak - base_ >= 2 * g) return Math.Min(peak, cruise);

        double x = Math.Min(Math.Sqrt(cruise - base_), Math.Cbrt(distance * Math.Sqrt(j) * 0.5));
        for (int i = 0; i < MostSteps; i++)
        {
            double p = base_ + x * x;
            (double first, double firstSlope) = DistanceAndSlope(start, p, x, a, j);
            (double second, double secondSlope) = DistanceAndSlope(end, p, x, a, j);
            double next = x - (first + second - distance) / (firstSlope + secondSlope);
            if (!(next < x)) break;
            if (next <= 0) return base_;
            x = next;
        }
        return base_ + x * x;
    }

    /// <summary>
    /// Distance of a change from <paramref name="low"/> to p, and its derivative by x where p = base + x².
    /// </summary>
    private static (double Distance, double Slope) DistanceAndSlope(double low, double p, double x, double a, double j)
    {
        double change = p - low;
        if (change * j >= a * a)
        {
            double time = change / a + a / j;
            return ((low + p) * 0.5 * time, x * (time + (low + p) / a));
        }
        double root = Math.Sqrt(change / j);
        // d/dx √change = x/√change; at change = x² it is 1, also in the limit x → 0.
        double rootSlope = change > 0 ? x / (root * j) : 1 / Math.Sqrt(j);
        return ((low + p) * root, 2 * x * root + (low + p) * rootSlope);
    }

    /// <summary>Distance, speed and acceleration at a time, 0 … <see cref="TimeS"/>.</summary>
    public (double Mm, double MmS, double MmS2) At(double timeS)
    {
        if (timeS < _up.TimeS) return _up.At(timeS);
        double since = timeS - _up.TimeS;
        if (since <= CruiseS) return (_up.DistanceMm + since * PeakMmS, PeakMmS, 0);
        (double mm, double mmS, double mmS2) = _down.At(Math.Max(0, TimeS - timeS));
        return (DistanceMm - mm, mmS, -mmS2);
    }

    /// <summary>When it has come a distance, s.</summary>
    public double TimeAt(double distanceMm)
    {
        if (distanceMm < _up.DistanceMm) return _up.TimeAt(distanceMm);
        double left = DistanceMm - distanceMm;
        if (left < _down.DistanceMm) return TimeS - _down.TimeAt(left);
        return _up.TimeS + (distanceMm - _up.DistanceMm) / PeakMmS;
    }

    /// <summary>From where on it is faster than a speed below its peak, mm.</summary>
    internal double RisesAbove(double speedMmS) => _up.DistanceTo(speedMmS);

    /// <summary>Up to where it is faster than a speed below its peak, mm.</summary>
    internal double FallsBelow(double speedMmS) => DistanceMm - _down.DistanceTo(speedMmS);
}
