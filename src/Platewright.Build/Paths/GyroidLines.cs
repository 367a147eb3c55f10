using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Geometry;

namespace Platewright.Build.Paths;

/// <summary>
/// Cuts of the gyroid sin x cos y + sin y cos z + sin z cos x = 0 (Schoen, NASA TN D-5541, 1970): where |cos z| is the
/// larger, y is a function of x in closed form, elsewhere x one of y. Two curves a period each way; the period is set
/// so that their mean length over all heights fills the wanted share.
/// </summary>
internal sealed class GyroidLines
{
    private const int StepsPerPeriod = 24;

    /// <summary>A crossing of the region's edge is found to 1/2⁶ of a step.</summary>
    private const int Halvings = 6;

    /// <summary>Mean length of a curve over its extent, over all heights.</summary>
    private static readonly double MeanStretch = Measure();

    private readonly double _periodMm;

    public GyroidLines(double share, double pitchMm) => _periodMm = 2 * MeanStretch * pitchMm / share;

    /// <summary>Adds the curves inside a region at a height.</summary>
    public void Add(List<Path> paths, Rows region, Vec2 along, double zMm, double beadAreaMm2)
    {
        if (region.IsEmpty) return;
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (double x in region.Ends)
        {
            low = Math.Min(low, x);
            high = Math.Max(high, x);
        }
        double bottom = region.YOf(region.First), top = region.YOf(region.End - 1);
        double z = Angle(zMm);
        bool acrossX = Math.Abs(Math.Cos(z)) >= Math.Abs(Math.Sin(z));
        (double from, double to) = acrossX ? (low, high) : (bottom, top);
        (double least, double greatest) = acrossX ? (bottom, top) : (low, high);
        // A curve stays within a period of its middle line.
        int first = (int)Math.Floor(least / _periodMm) - 1, last = (int)Math.Ceiling(greatest / _periodMm) + 1;
        for (int period = first; period <= last; period++)
        {
            for (int sign = -1; sign <= 1; sign += 2)
            {
                Vec2 At(double t)
                {
                    double s = (Height(Angle(t), z, sign, acrossX) / (2 * Math.PI) + period) * _periodMm;
                    return acrossX ? new Vec2(t, s) : new Vec2(s, t);
                }
                Trace(paths, region, along, At, from, to, beadAreaMm2);
            }
        }
    }

    private void Trace(
        List<Path> paths, Rows region, Vec2 along, Func<double, Vec2> at, double from, double to, double beadArea)
    {
        double step = _periodMm / StepsPerPeriod;
        List<Vec2> points = [];
        bool inside = false;
        double previous = from;
        for (double t = from; t < to + step; t += step)
        {
            Vec2 p = at(t);
            bool now = region.Contains(p.X, p.Y);
            if (now != inside && t > from)
            {
                double a = previous, b = t;
                for (int i = 0; i < Halvings; i++)
                {
                    double middle = (a + b) / 2;
                    Vec2 m = at(middle);
                    if (region.Contains(m.X, m.Y) == inside) a = middle;
                    else b = middle;
                }
                points.Add(Turn(at((a + b) / 2), along));
            }
            if (!now && inside) Close(paths, points, beadArea);
            if (now) points.Add(Turn(p, along));
            inside = now;
            previous = t;
        }
        Close(paths, points, beadArea);
    }

    private static void Close(List<Path> paths, List<Vec2> points, double beadArea)
    {
        if (points.Count > 1) paths.Add(new Path(PathKind.Infill, [.. points], Closed: false, beadArea));
        points.Clear();
    }

    private static Vec2 Turn(Vec2 p, Vec2 u) => new(p.X * u.X - p.Y * u.Y, p.X * u.Y + p.Y * u.X);

    private double Angle(double mm) => 2 * Math.PI * mm / _periodMm;

    /// <summary>y over x at height z, or x over y; each an angle.</summary>
    private static double Height(double t, double z, int sign, bool acrossX)
    {
        double a = acrossX ? Math.Sin(t) : Math.Sin(z), b = acrossX ? Math.Cos(z) : Math.Cos(t);
        double c = acrossX ? -Math.Sin(z) * Math.Cos(t) : -Math.Cos(z) * Math.Sin(t);
        // The angle below must not run through ±180°, where it jumps by a turn.
        if (!acrossX && a < 0) (a, b, c) = (-a, -b, -c);
        return Math.Atan2(b, a) + sign * Math.Acos(Math.Clamp(c / Math.Sqrt(a * a + b * b), -1, 1));
    }

    private static double Measure()
    {
        const int heights = 64, steps = 256;
        double sum = 0;
        for (int i = 0; i < heights; i++)
        {
            double z = 2 * Math.PI * (i + 0.5) / heights;
            bool acrossX = Math.Abs(Math.Cos(z)) >= Math.Abs(Math.Sin(z));
            double dt = 2 * Math.PI / steps, before = Height(0, z, 1, acrossX);
            for (int k = 1; k <= steps; k++)
            {
                double here = Height(k * dt, z, 1, acrossX);
                double rise = Math.IEEERemainder(here - before, 2 * Math.PI);
                sum += Math.Sqrt(dt * dt + rise * rise);
                before = here;
            }
        }
        return sum / (heights * 2 * Math.PI);
    }
}
