namespace Platewright.Geometry;

/// <summary>
/// A triangle mesh, mm: flat arrays of positions and of corners (three vertex indices for each triangle,
/// counter-clockwise seen from outside). Positions need not be distinct; <c>Welding</c> makes them so. Immutable: the
/// arrays handed over belong to the mesh from then on.
/// </summary>
public sealed class Mesh
{
    private readonly Vec3[] _vertices;
    private readonly int[] _corners;
    private Bounds3? _bounds;

    /// <exception cref="ArgumentException">The number of corners is not a multiple of three.</exception>
    public Mesh(Vec3[] vertices, int[] corners)
    {
        if (corners.Length % 3 != 0)
        {
            throw new ArgumentException(
                $"A mesh needs three corners for each triangle, got {corners.Length}.", nameof(corners));
        }
        _vertices = vertices;
        _corners = corners;
    }

    public ReadOnlySpan<Vec3> Vertices => _vertices;

    /// <summary>Vertex indices, three for each triangle.</summary>
    public ReadOnlySpan<int> Corners => _corners;

    /// <summary>The arrays themselves, for kernels of this room that run on several threads. Not to be written
    /// to.</summary>
    internal Vec3[] VertexArray => _vertices;

    internal int[] CornerArray => _corners;

    /// <summary>
    /// True where it is known that no two vertices are equal and each is used, in the order of first use: welding has
    /// nothing to do.
    /// </summary>
    public bool IsWelded { get; init; }

    public int TriangleCount => _corners.Length / 3;

    /// <summary>The axis-aligned box around all vertices.</summary>
    public Bounds3 Bounds => _bounds ??= Bounds3.Of(_vertices);

    public (Vec3 A, Vec3 B, Vec3 C) Triangle(int index)
    {
        int i = 3 * index;
        return (_vertices[_corners[i]], _vertices[_corners[i + 1]], _vertices[_corners[i + 2]]);
    }

    /// <summary>The same triangles with every vertex p replaced by linear·p + offset. A mirroring keeps faces
    /// outward.</summary>
    public Mesh Transformed(Matrix3 linear, Vec3 offset)
    {
        var vertices = new Vec3[_vertices.Length];
        for (int i = 0; i < vertices.Length; i++) vertices[i] = linear.Apply(_vertices[i]) + offset;
        if (linear.Determinant >= 0) return new Mesh(vertices, _corners);
        var corners = (int[])_corners.Clone();
        for (int i = 0; i < corners.Length; i += 3) (corners[i + 1], corners[i + 2]) = (corners[i + 2], corners[i + 1]);
        return new Mesh(vertices, corners);
    }
}
