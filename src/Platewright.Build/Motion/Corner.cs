namespace Platewright.Build.Motion;

/// <summary>
/// How fast a corner may be passed. An arc that touches both segments and passes the vertex at the contour tolerance δ
/// has the radius R = δ·s/(1−s) with s = sin(θ/2), θ the included angle (180° is straight on); the acceleration a then
/// allows v² = a·R. Derived from the geometry of that arc; 0 for a full reversal, infinite straight on.
/// </summary>
/// <param name="RadiusMm">Radius of the arc, mm.</param>
/// <param name="TangentMm">How far before and behind the vertex the arc touches the segments, mm.</param>
/// <param name="SpeedMmS">Greatest speed on the arc, mm/s.</param>
public readonly record struct Corner(double RadiusMm, double TangentMm, double SpeedMmS)
{
    /// <summary>
    /// Directions that differ by less than the root of this (1e-10 rad) are one direction: far above the rounding of
    /// coordinates, far below any drawn corner.
    /// </summary>
    internal const double StraightTurnSquared = 1e-20;

    /// <param name="includedAngle">Between the segments, radians, 0 … π.</param>
    public static Corner Of(double includedAngle, double accelerationMmS2, double contourToleranceMm)
    {
        if (!(includedAngle is >= 0 and <= Math.PI))
            throw new ArgumentOutOfRangeException(nameof(includedAngle), includedAngle, "An included angle is 0 to π.");
        // The change of direction, as the planner sees it: |u − u'| = 2 cos(θ/2); none at all straight on.
        double turn = includedAngle == Math.PI ? 0 : 2 * Math.Cos(includedAngle / 2);
        double radius = SpeedSquared(turn * turn, 1, contourToleranceMm);
        return new Corner(
            radius, radius / Math.Tan(includedAngle / 2), Math.Sqrt(accelerationMmS2 * radius));
    }

    /// <summary>The contour tolerance that passes a right angle at <paramref name="speedMmS"/>, mm.</summary>
    public static double ToleranceFor(double speedMmS, double accelerationMmS2) =>
        speedMmS * speedMmS * (Math.Sqrt(2) - 1) / accelerationMmS2;

    /// <summary>Greatest speed on an arc of the given radius, mm/s: v² = a·R.</summary>
    public static double ArcSpeedMmS(double radiusMm, double accelerationMmS2) =>
        Math.Sqrt(accelerationMmS2 * radiusMm);

    /// <summary>
    /// v² at a corner, mm²/s², from |u − u'|² of the unit directions before and behind it. With d² that square,
    /// s² = 1 − d²/4 and 1 − s = (d²/4)/(1 + s): no difference of near numbers is left where the path is near straight.
    /// </summary>
    internal static double SpeedSquared(double turnSquared, double accelerationMmS2, double contourToleranceMm)
    {
        if (turnSquared < StraightTurnSquared) return double.PositiveInfinity;
        double quarter = turnSquared * 0.25;
        double s = Math.Sqrt(Math.Max(0, 1 - quarter));
        return accelerationMmS2 * contourToleranceMm * s * (1 + s) / quarter;
    }
}
