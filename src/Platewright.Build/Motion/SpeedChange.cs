namespace Platewright.Build.Motion;

/// <summary>
/// From one speed to another within the limits of acceleration and jerk, without acceleration at both ends: the
/// acceleration rises at the greatest jerk, stays at its limit where it reaches it, and falls again (form as in
/// Biagiotti and Melchiorri, Trajectory Planning for Automatic Machines and Robots, chapter 3). Slowing down is
/// speeding up run backwards; both take T = Δ/a + a/j where Δ·j ≥ a², else 2·√(Δ/j), at the mean of the two speeds.
/// </summary>
internal readonly struct SpeedChange
{
    /// <summary>Newton's method runs down a convex function here; it is at rounding long before.</summary>
    private const int MostSteps = 64;

    /// <summary>
    /// No change to a speed takes more than this many times the distance of the change to it from rest; the most is
    /// 1.09, from a third of it.
    /// </summary>
    public const double MostOverRest = 1.125;

    private readonly double _jerkMmS3;

    public SpeedChange(double lowMmS, double highMmS, double accelerationMmS2, double jerkMmS3)
    {
        _jerkMmS3 = jerkMmS3;
        (LowMmS, HighMmS) = (lowMmS, highMmS);
        double change = highMmS - lowMmS;
        PeakMmS2 = Math.Min(accelerationMmS2, Math.Sqrt(change * jerkMmS3));
        JerkS = PeakMmS2 / jerkMmS3;
        TimeS = change > 0 ? change / PeakMmS2 + JerkS : 0;
    }

    public double LowMmS { get; }

    public double HighMmS { get; }

    /// <summary>Greatest acceleration reached, mm/s².</summary>
    public double PeakMmS2 { get; }

    /// <summary>How long the acceleration rises, and falls again, s each.</summary>
    public double JerkS { get; }

    public double TimeS { get; }

    public double DistanceMm => (LowMmS + HighMmS) * 0.5 * TimeS;

    /// <summary>Distance such a change needs, mm; in either direction.</summary>
    public static double Distance(double lowMmS, double highMmS, double accelerationMmS2, double jerkMmS3)
    {
        double change = highMmS - lowMmS;
        double time = change * jerkMmS3 >= accelerationMmS2 * accelerationMmS2
            ? change / accelerationMmS2 + accelerationMmS2 / jerkMmS3
            : 2 * Math.Sqrt(change / jerkMmS3);
        return (lowMmS + highMmS) * 0.5 * time;
    }

    /// <summary>The greatest speed reached from <paramref name="fromMmS"/> within a distance, mm/s.</summary>
    public static double Reach(double fromMmS, double distanceMm, double accelerationMmS2, double jerkMmS3)
    {
        // With the acceleration at its limit in between, a quadratic: w = −g + √((g − u)² + 2·a·d), g = a²/2j.
        double g = accelerationMmS2 * accelerationMmS2 / (2 * jerkMmS3);
        double high = Math.Sqrt((g - fromMmS) * (g - fromMmS) + 2 * accelerationMmS2 * distanceMm) - g;
        if (high - fromMmS >= 2 * g) return high;
        // Without, w = u + x² with x³ + 2·u·x = d·√j: convex, so Newton's method from above stays above.
        double right = distanceMm * Math.Sqrt(jerkMmS3);
        double x = Math.Cbrt(right);
        if (2 * fromMmS * x > right) x = right / (2 * fromMmS);
        for (int i = 0; i < MostSteps; i++)
        {
            double next = x - (x * (x * x + 2 * fromMmS) - right) / (3 * x * x + 2 * fromMmS);
            if (!(next < x)) break;
            x = next;
        }
        return fromMmS + x * x;
    }

    /// <summary>How far from its slow end the change reaches a speed, mm; 0 for one below it.</summary>
    public double DistanceTo(double speedMmS)
    {
        if (speedMmS <= LowMmS) return 0;
        if (speedMmS >= HighMmS) return DistanceMm;
        double rounded = PeakMmS2 * JerkS * 0.5;
        if (speedMmS - LowMmS <= rounded)
            return Math.Sqrt(2 * (speedMmS - LowMmS) / _jerkMmS3) * (2 * LowMmS + speedMmS) / 3;
        if (HighMmS - speedMmS <= rounded)
            return DistanceMm - Math.Sqrt(2 * (HighMmS - speedMmS) / _jerkMmS3) * (2 * HighMmS + speedMmS) / 3;
        double bend = LowMmS + rounded;
        return JerkS * (2 * LowMmS + bend) / 3 + (speedMmS * speedMmS - bend * bend) / (2 * PeakMmS2);
    }

    /// <summary>Where it stands at a time counted from its slow end: distance, speed and acceleration.</summary>
    public (double Mm, double MmS, double MmS2) At(double timeS)
    {
        if (timeS <= JerkS)
        {
            double gained = _jerkMmS3 * timeS * timeS / 2;
            return (timeS * (LowMmS + gained / 3), LowMmS + gained, _jerkMmS3 * timeS);
        }
        double left = TimeS - timeS;
        if (left <= JerkS)
        {
            double missing = _jerkMmS3 * left * left / 2;
            return (DistanceMm - left * (HighMmS - missing / 3), HighMmS - missing, _jerkMmS3 * left);
        }
        double bend = LowMmS + PeakMmS2 * JerkS * 0.5, since = timeS - JerkS;
        double rising = JerkS * (2 * LowMmS + bend) / 3;
        return (rising + since * (bend + PeakMmS2 * since * 0.5), bend + PeakMmS2 * since, PeakMmS2);
    }

    /// <summary>When it has come a distance from its slow end, s.</summary>
    public double TimeAt(double distanceMm)
    {
        double low = 0, high = TimeS, time = TimeS * Math.Clamp(distanceMm / DistanceMm, 0, 1);
        for (int i = 0; i < MostSteps && high > low; i++)
        {
            (double mm, double mmS, _) = At(time);
            if (mm > distanceMm) high = time;
            else low = time;
            double next = time - (mm - distanceMm) / mmS;
            if (!(next > low && next < high)) next = (low + high) * 0.5;
            if (next == time) break;
            time = next;
        }
        return time;
    }
}
