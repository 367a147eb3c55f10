using Platewright.Geometry;

namespace Platewright.Formats.Programs;

/// <summary>
/// An arc or helix of a motion program, in the plane of axes (u, v) with w along its normal: (x, y, z) for G17, (z, x,
/// y) for G18, (y, z, x) for G19. All mm.
/// </summary>
/// <param name="Sweep">Angle turned through, radians; negative for clockwise.</param>
internal readonly record struct Arc(
    Vec3 Centre, double Radius, double EndRadius, double StartAngle, double Sweep, Vec3 End, double Rise)
{
    /// <summary>Greatest angle of one chord: short arcs keep their shape and length within 0.2 %.</summary>
    private const double MostTurn = Math.PI / 15;

    /// <summary>Angles below this are rounding, radians.</summary>
    private const double LeastTurn = 1e-9;

    /// <summary>Length of path, mm.</summary>
    public double Length => Math.Sqrt(Math.Pow((Radius + EndRadius) / 2 * Sweep, 2) + Rise * Rise);

    /// <summary>Radius of curvature, mm: that of the circle, larger for a helix.</summary>
    public double CurveRadius => Radius * Math.Pow(Length / (Radius * Sweep), 2);

    /// <summary>The arc around a centre given from its start.</summary>
    public static Arc Around(Vec3 from, Vec3 to, Vec3 offset, bool clockwise)
    {
        var centre = new Vec3(from.X + offset.X, from.Y + offset.Y, from.Z);
        double start = Math.Atan2(from.Y - centre.Y, from.X - centre.X);
        double sweep = Math.Atan2(to.Y - centre.Y, to.X - centre.X) - start;
        // The end on the start is a full turn, which RS-274 allows in this format.
        if (clockwise && sweep >= -LeastTurn) sweep -= 2 * Math.PI;
        if (!clockwise && sweep <= LeastTurn) sweep += 2 * Math.PI;
        return new Arc(
            centre, Hypot(from, centre), Hypot(to, centre), start, sweep, to, to.Z - from.Z);
    }

    /// <summary>
    /// Where the centre lies, from the start, for a radius: positive for at most half a turn, negative for more. Null
    /// where the radius is too small to reach the end.
    /// </summary>
    public static Vec3? CentreFor(Vec3 from, Vec3 to, double radius, bool clockwise, double toleranceMm)
    {
        double x = to.X - from.X, y = to.Y - from.Y, chord = Math.Sqrt(x * x + y * y);
        double height2 = radius * radius - chord * chord / 4;
        if (height2 < 0)
        {
            if (chord / 2 - Math.Abs(radius) > toleranceMm) return null;
            height2 = 0;
        }
        double height = Math.Sqrt(height2) / chord * (clockwise == radius > 0 ? 1 : -1);
        return new Vec3(x / 2 + y * height, y / 2 - x * height, 0);
    }

    /// <summary>Number of chords within a distance of the arc, at least 1.</summary>
    public double Chords(double toleranceMm)
    {
        double most = Math.Max(Radius, EndRadius);
        double turn = toleranceMm >= most ? MostTurn : Math.Min(MostTurn, 2 * Math.Acos(1 - toleranceMm / most));
        return Math.Max(1, Math.Ceiling(Math.Abs(Sweep) / turn));
    }

    /// <summary>The point at a share of the arc, 0 … 1.</summary>
    public Vec3 At(double share)
    {
        if (share >= 1) return End;
        (double sin, double cos) = Math.SinCos(StartAngle + Sweep * share);
        double radius = Radius + (EndRadius - Radius) * share;
        return new Vec3(Centre.X + radius * cos, Centre.Y + radius * sin, Centre.Z + Rise * share);
    }

    private static double Hypot(Vec3 p, Vec3 centre) =>
        Math.Sqrt((p.X - centre.X) * (p.X - centre.X) + (p.Y - centre.Y) * (p.Y - centre.Y));
}
