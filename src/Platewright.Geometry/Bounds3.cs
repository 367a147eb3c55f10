namespace Platewright.Geometry;

/// <summary>An axis-aligned box, mm, from <paramref name="Min"/> to <paramref name="Max"/>.</summary>
public readonly record struct Bounds3(Vec3 Min, Vec3 Max)
{
    /// <summary>The box around nothing: any point makes it that point.</summary>
    public static readonly Bounds3 Empty = new(
        new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
        new(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));

    /// <summary>Edge lengths, mm. Zero for the empty box.</summary>
    public Vec3 Size => Max.X < Min.X ? default : Max - Min;

    public Vec3 Center => (Min + Max) * 0.5;

    public static Bounds3 Of(ReadOnlySpan<Vec3> points)
    {
        Bounds3 box = Empty;
        foreach (Vec3 p in points) box = box.Including(p);
        return box;
    }

    public Bounds3 Including(Vec3 p) => new(Vec3.Min(Min, p), Vec3.Max(Max, p));
}
