namespace Platewright.Geometry;

/// <summary>A point or direction on the build surface, mm. <c>default</c> is the origin.</summary>
public readonly record struct Vec2(double X, double Y)
{
    /// <summary>Length, mm.</summary>
    public double Length => Math.Sqrt(Dot(this));

    public static Vec2 operator +(Vec2 a, Vec2 b) => new(a.X + b.X, a.Y + b.Y);

    public static Vec2 operator -(Vec2 a, Vec2 b) => new(a.X - b.X, a.Y - b.Y);

    public static Vec2 operator -(Vec2 a) => new(-a.X, -a.Y);

    public static Vec2 operator *(Vec2 a, double s) => new(a.X * s, a.Y * s);

    public static Vec2 operator *(double s, Vec2 a) => a * s;

    public static Vec2 operator /(Vec2 a, double s) => new(a.X / s, a.Y / s);

    public double Dot(Vec2 other) => X * other.X + Y * other.Y;

    /// <summary>The z component of the cross product: twice the signed area of the triangle (0, this, other).</summary>
    public double Cross(Vec2 other) => X * other.Y - Y * other.X;

    /// <summary>This direction with length 1. The zero vector has no direction and gives NaN.</summary>
    public Vec2 Normalized() => this / Length;
}
