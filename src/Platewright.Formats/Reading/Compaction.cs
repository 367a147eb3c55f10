using Platewright.Geometry;

namespace Platewright.Formats.Reading;

/// <summary>
/// Leaves out vertices that no triangle uses: they would widen the bounds. May be used for many parts over one list of
/// vertices; each costs only what it holds.
/// </summary>
/// <param name="vertexCount">Vertices in the list.</param>
internal sealed class Compaction(int vertexCount)
{
    private readonly int[] _place = new int[vertexCount];

    /// <summary>
    /// The mesh over the vertices in the order of their first use; the corners become the mesh's own.
    /// </summary>
    public Mesh UsedOnly(ReadOnlySpan<Vec3> vertices, int[] corners)
    {
        var kept = new Vec3[Math.Min(vertices.Length, corners.Length)];
        var first = new int[kept.Length];
        int used = 0;
        foreach (ref int corner in corners.AsSpan())
        {
            ref int place = ref _place[corner];
            if (place == 0)
            {
                kept[used] = vertices[corner];
                first[used] = corner;
                place = ++used;
            }
            corner = place - 1;
        }
        foreach (int vertex in first.AsSpan(0, used)) _place[vertex] = 0;
        Array.Resize(ref kept, used);
        return new Mesh(kept, corners);
    }
}
