namespace Platewright.Geometry;

/// <summary>A box of a tree.</summary>
internal readonly record struct TreeBox(Vec3 Min, Vec3 Max)
{
    public bool Touches(TreeBox o) =>
        Min.X <= o.Max.X && o.Min.X <= Max.X && Min.Y <= o.Max.Y && o.Min.Y <= Max.Y
        && Min.Z <= o.Max.Z && o.Min.Z <= Max.Z;
}
