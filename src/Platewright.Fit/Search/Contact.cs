using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>
/// A reason why a part cannot be larger: container normals n_k with Σ n_k = 0 and hull vertices v_k, scaled so that
/// 1 / scale ≥ Σ n_k · R v_k for every rotation R. Up to three terms; unused ones are zero.
/// </summary>
/// <remarks>
/// Whatever the translation t, s n_k · R v_k + n_k · t ≤ h(n_k) in a convex container with support function h; adding
/// up, t disappears and s Σ n_k · R v_k ≤ Σ h(n_k). The normals are divided by that last sum.
/// </remarks>
internal readonly record struct Contact(
    int Vertex0, Vec3 Normal0, int Vertex1, Vec3 Normal1, int Vertex2, Vec3 Normal2)
{
    /// <summary>The matrix B = Σ n_k v_kᵀ, so that the contact's value at R is the trace of B Rᵀ.</summary>
    public Matrix3 Moment(ReadOnlySpan<Vec3> vertices)
    {
        // The sum of normals is zero, so the vertices may be taken relative to the first: less cancellation.
        Vec3 origin = vertices[Vertex0];
        Vec3 a = vertices[Vertex1] - origin;
        Vec3 b = vertices[Vertex2] - origin;
        return new Matrix3(
            Normal1.X * a + Normal2.X * b, Normal1.Y * a + Normal2.Y * b, Normal1.Z * a + Normal2.Z * b);
    }
}
