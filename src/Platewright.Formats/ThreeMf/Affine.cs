using Platewright.Geometry;

namespace Platewright.Formats.ThreeMf;

/// <summary>The map p ↦ linear·p + offset.</summary>
internal readonly record struct Affine(Matrix3 Linear, Vec3 Offset)
{
    public static readonly Affine Identity = new(Matrix3.Identity, default);

    public static Affine Scaling(double factor) => new(Matrix3.Identity * factor, default);

    /// <summary>First this, then <paramref name="outer"/>.</summary>
    public Affine Then(Affine outer) => new(outer.Linear * Linear, outer.Apply(Offset));

    public Vec3 Apply(Vec3 p) => Linear.Apply(p) + Offset;
}
