namespace Platewright.Verify;

/// <summary>Three intervals: a point or a direction in space.</summary>
internal readonly record struct Point(Interval X, Interval Y, Interval Z)
{
    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Point operator -(Point a) => new(-a.X, -a.Y, -a.Z);

    public static Point operator *(Interval s, Point a) => new(s * a.X, s * a.Y, s * a.Z);

    public Interval Dot(Point b) => X * b.X + Y * b.Y + Z * b.Z;
}
