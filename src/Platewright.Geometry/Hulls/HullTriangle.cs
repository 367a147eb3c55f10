namespace Platewright.Geometry;

/// <summary>A triangle of a hull, counter-clockwise seen from outside, and the triangles across a b, b c and c
/// a.</summary>
internal readonly record struct HullTriangle(int A, int B, int C, int AcrossAb, int AcrossBc, int AcrossCa)
{
    public int Corner(int i) => i == 0 ? A : i == 1 ? B : C;

    public int Across(int edge) => edge == 0 ? AcrossAb : edge == 1 ? AcrossBc : AcrossCa;

    public int EdgeFrom(int corner) => corner == A ? 0 : corner == B ? 1 : 2;
}
