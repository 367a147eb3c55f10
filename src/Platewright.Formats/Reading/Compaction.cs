using Platewright.Geometry;

namespace Platewright.Formats.Reading;

/// <summary>Leaves out vertices that no triangle uses: they would widen the bounds.</summary>
internal static class Compaction
{
    /// <summary>The mesh over the used vertices, in their order; the corners become the mesh's own.</summary>
    public static Mesh UsedOnly(ReadOnlySpan<Vec3> vertices, int[] corners)
    {
        var place = new int[vertices.Length];
        foreach (int corner in corners) place[corner] = 1;
        int used = 0;
        for (int i = 0; i < place.Length; i++) place[i] = place[i] == 0 ? -1 : used++;
        var kept = new Vec3[used];
        for (int i = 0; i < place.Length; i++)
        {
            if (place[i] >= 0) kept[place[i]] = vertices[i];
        }
        foreach (ref int corner in corners.AsSpan()) corner = place[corner];
        return new Mesh(kept, corners);
    }
}
