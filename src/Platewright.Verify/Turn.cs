namespace Platewright.Verify;

/// <summary>The rotation of a quaternion of any length, by rows.</summary>
internal readonly record struct Turn(Point Row0, Point Row1, Point Row2)
{
    public static Turn Of(Interval w, Interval x, Interval y, Interval z)
    {
        Interval n = w * w + x * x + y * y + z * z;
        Interval two = 2;
        return new Turn(
            new Point((w * w + x * x - y * y - z * z) / n, two * (x * y - w * z) / n, two * (x * z + w * y) / n),
            new Point(two * (x * y + w * z) / n, (w * w - x * x + y * y - z * z) / n, two * (y * z - w * x) / n),
            new Point(two * (x * z - w * y) / n, two * (y * z + w * x) / n, (w * w - x * x - y * y + z * z) / n));
    }

    public Point Apply(Point p) => new(Row0.Dot(p), Row1.Dot(p), Row2.Dot(p));
}
