namespace Platewright.Geometry;

/// <summary>A box of a tree.</summary>
internal readonly record struct TreeBox(Vec3 Min, Vec3 Max)
{
    public bool Touches(TreeBox o) =>
        Min.X <= o.Max.X && o.Min.X <= Max.X && Min.Y <= o.Max.Y && o.Min.Y <= Max.Y && Min.Z <= o.Max.Z && o.Min.Z <= Max.Z;

    /// <summary>True where a ray passes through the box nearer than <paramref name="distance"/>.</summary>
    public bool Meets(Vec3 from, Vec3 inverse, double distance)
    {
        double near = 0, far = distance;
        Narrow((Min.X - from.X) * inverse.X, (Max.X - from.X) * inverse.X, ref near, ref far);
        Narrow((Min.Y - from.Y) * inverse.Y, (Max.Y - from.Y) * inverse.Y, ref near, ref far);
        Narrow((Min.Z - from.Z) * inverse.Z, (Max.Z - from.Z) * inverse.Z, ref near, ref far);
        return near <= far;
    }

    // Comparisons with NaN (a ray in the plane of a side) are false and leave the interval as it is.
    private static void Narrow(double one, double other, ref double near, ref double far)
    {
        double low = one < other ? one : other, high = one < other ? other : one;
        if (low > near) near = low;
        if (high < far) far = high;
    }
}
