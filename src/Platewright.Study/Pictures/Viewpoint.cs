using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>Parallel projection from the front left and above, scaled so that the points fill a square of samples.</summary>
internal sealed class Viewpoint
{
    /// <summary>Share of the picture left free at each side.</summary>
    private const double Border = 0.05;

    private static readonly Vec3 TowardsViewer = new Vec3(-0.46, -0.72, 0.52).Normalized();
    private static readonly Vec3 Right = Vec3.UnitZ.Cross(TowardsViewer).Normalized();
    private static readonly Vec3 Up = TowardsViewer.Cross(Right);

    private readonly double _scale;
    private readonly double _left;
    private readonly double _top;

    private Viewpoint(double scale, double left, double top)
    {
        _scale = scale;
        _left = left;
        _top = top;
    }

    public static Viewpoint Onto(ReadOnlySpan<Vec3> points, int samples)
    {
        double left = double.PositiveInfinity, right = double.NegativeInfinity;
        double bottom = double.PositiveInfinity, top = double.NegativeInfinity;
        foreach (Vec3 p in points)
        {
            double x = Right.Dot(p), y = Up.Dot(p);
            left = Math.Min(left, x);
            right = Math.Max(right, x);
            bottom = Math.Min(bottom, y);
            top = Math.Max(top, y);
        }
        double span = Math.Max(right - left, top - bottom);
        double scale = span > 0 ? samples * (1 - 2 * Border) / span : 1;
        double slackX = samples / scale - (right - left), slackY = samples / scale - (top - bottom);
        return new Viewpoint(scale, left - slackX / 2, top + slackY / 2);
    }

    /// <summary>X to the right and Y downwards in samples, Z towards the viewer in the same unit.</summary>
    public Vec3 Project(Vec3 p) =>
        new((Right.Dot(p) - _left) * _scale, (_top - Up.Dot(p)) * _scale, TowardsViewer.Dot(p) * _scale);

    /// <summary>The unit normal of a triangle, on the side the viewer sees.</summary>
    public static Vec3 NormalTowardsViewer(Vec3 a, Vec3 b, Vec3 c)
    {
        Vec3 n = (b - a).Cross(c - a);
        double length = n.Length;
        if (!(length > 0)) return TowardsViewer;
        n *= 1 / length;
        return n.Dot(TowardsViewer) < 0 ? n * -1 : n;
    }

    /// <summary>Brightness 0 … 1 of a face: lightest on top, darkest at its right.</summary>
    public static double Shade(Vec3 normal) =>
        0.62 + 0.28 * normal.Z + 0.16 * normal.Dot(Right) * -1 + 0.06 * normal.Dot(TowardsViewer);
}
