namespace Platewright.Geometry;

/// <summary>Where a ray meets a triangle.</summary>
internal readonly record struct RayHit(double Distance, int Triangle)
{
    public static readonly RayHit None = new(double.PositiveInfinity, -1);

    /// <summary>The nearer of two; of two as near the one with the lower triangle.</summary>
    public RayHit Nearer(RayHit other) =>
        other.Distance < Distance || (other.Distance == Distance && other.Triangle < Triangle) ? other : this;
}
