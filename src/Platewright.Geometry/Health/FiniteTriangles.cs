namespace Platewright.Geometry;

/// <summary>Leaves out triangles with an infinite or undefined corner.</summary>
internal static class FiniteTriangles
{
    public static Mesh Of(Mesh mesh, out int leftOut)
    {
        leftOut = 0;
        Vec3 size = mesh.Bounds.Size;
        // A NaN anywhere makes the bounds NaN, as Math.Min and Math.Max hand it on.
        if (mesh.Vertices.IsEmpty || (size.IsFinite && mesh.Bounds.Min.IsFinite)) return mesh;
        List<int> kept = [];
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            if (a.IsFinite && b.IsFinite && c.IsFinite) kept.AddRange(mesh.Corners.Slice(3 * t, 3));
            else leftOut++;
        }
        return new Mesh(mesh.VertexArray, [.. kept]);
    }
}
