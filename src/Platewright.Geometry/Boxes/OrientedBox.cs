namespace Platewright.Geometry;

/// <summary>A box in any orientation.</summary>
/// <param name="Axes">Rotation whose rows are the box's axes: it turns the part so that the box stands upright, its
/// largest edge along x, its smallest along z.</param>
/// <param name="SizeMm">Edges, mm, largest first.</param>
/// <param name="Center">Middle of the box, in the part's coordinates.</param>
public sealed record OrientedBox(Matrix3 Axes, Vec3 SizeMm, Vec3 Center)
{
    public double VolumeMm3 => SizeMm.X * SizeMm.Y * SizeMm.Z;

    /// <summary>The box around points with edges along given directions, which must be orthonormal.</summary>
    internal static OrientedBox Around(ReadOnlySpan<Vec3> points, Matrix3 axes)
    {
        (double Low, double High, Vec3 Axis)[] sides =
            [Extent(points, axes.Row0), Extent(points, axes.Row1), Extent(points, axes.Row2)];
        Array.Sort(sides, (p, q) => (q.High - q.Low).CompareTo(p.High - p.Low));
        Vec3 center = default;
        foreach ((double low, double high, Vec3 axis) in sides) center += axis * ((low + high) / 2);
        Matrix3 sorted = new(sides[0].Axis, sides[1].Axis, sides[2].Axis);
        if (sorted.Determinant < 0) sorted = sorted with { Row2 = -sorted.Row2 };
        Vec3 size = new(sides[0].High - sides[0].Low, sides[1].High - sides[1].Low, sides[2].High - sides[2].Low);
        return new OrientedBox(sorted, size, center);
    }

    private static (double Low, double High, Vec3 Axis) Extent(ReadOnlySpan<Vec3> points, Vec3 axis)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        foreach (Vec3 p in points)
        {
            double along = axis.Dot(p);
            low = Math.Min(low, along);
            high = Math.Max(high, along);
        }
        return (low, high, axis);
    }
}
