using Platewright.Geometry;

namespace Platewright.Build.Layers;

/// <summary>
/// Cuts a mesh at many heights. Each triangle is filed once under the layers it reaches (a counting sort), so a cut looks only at
/// the triangles it meets. A vertex at the height of a cut counts as above it: faces that lie in the plane need no case of
/// their own, and neighbours always agree. Corners of outlines are computed from the edge's lower vertex index, so both
/// triangles of an edge give the same bits.
/// </summary>
internal sealed class SectionSweep
{
    private readonly Vec3[] _vertices;
    private readonly int[] _corners;
    private readonly int[] _mates;
    private readonly double[] _heights;
    private readonly int[] _starts;
    private readonly int[] _triangles;

    /// <param name="vertices">Vertices in the pose, mm.</param>
    /// <param name="corners">Three for each triangle.</param>
    /// <param name="mates">For each half-edge its mate, or a negative mark.</param>
    /// <param name="heights">Where to cut, rising, mm.</param>
    public SectionSweep(Vec3[] vertices, ReadOnlySpan<int> corners, ReadOnlySpan<int> mates, double[] heights)
    {
        _vertices = vertices;
        _corners = corners.ToArray();
        _mates = mates.ToArray();
        _heights = heights;
        int triangles = _corners.Length / 3;
        var first = new int[triangles];
        var last = new int[triangles];
        _starts = new int[heights.Length + 1];
        for (int t = 0; t < triangles; t++)
        {
            double a = vertices[_corners[3 * t]].Z, b = vertices[_corners[3 * t + 1]].Z, c = vertices[_corners[3 * t + 2]].Z;
            // Met by cuts with least < height <= greatest: a vertex at the height is above it.
            first[t] = CutsUpTo(Math.Min(a, Math.Min(b, c)));
            last[t] = CutsUpTo(Math.Max(a, Math.Max(b, c)));
            for (int l = first[t]; l < last[t]; l++) _starts[l + 1]++;
        }
        for (int l = 0; l < heights.Length; l++) _starts[l + 1] += _starts[l];
        _triangles = new int[_starts[^1]];
        var place = _starts[..^1];
        for (int t = 0; t < triangles; t++)
            for (int l = first[t]; l < last[t]; l++) _triangles[place[l]++] = t;
    }

    public int TriangleCount => _corners.Length / 3;

    /// <summary>How many cuts lie at or below a height.</summary>
    private int CutsUpTo(double z)
    {
        int at = Array.BinarySearch(_heights, z);
        if (at < 0) return ~at;
        while (at < _heights.Length && _heights[at] <= z) at++;
        return at;
    }

    /// <summary>The outlines at one height, closed.</summary>
    /// <param name="layer">Number of the cut.</param>
    /// <param name="visit">One place for each triangle, all 0; left so.</param>
    /// <param name="closedGaps">How many open ends had to be joined.</param>
    public List<Vec2[]> Cut(int layer, int[] visit, out int closedGaps)
    {
        ReadOnlySpan<int> met = _triangles.AsSpan(_starts[layer].._starts[layer + 1]);
        double z = _heights[layer];
        List<Vec2[]> loops = [];
        OpenChains open = new();
        foreach (int t in met) visit[t] = 1;
        foreach (int t in met) if (visit[t] == 1) Follow(t, z, visit, loops, open);
        foreach (int t in met) visit[t] = 0;
        closedGaps = open.CloseInto(loops);
        return loops;
    }

    private void Follow(int start, double z, int[] visit, List<Vec2[]> loops, OpenChains open)
    {
        List<Vec2> chain = [];
        int t = start;
        while (true)
        {
            visit[t] = 2;
            (int up, int down) = Crossed(t, z);
            if (chain.Count == 0) chain.Add(Point(down, z));
            chain.Add(Point(up, z));
            int mate = _mates[up];
            int next = mate >= 0 ? mate / 3 : -1;
            if (next == start && chain.Count > 2)
            {
                chain.RemoveAt(chain.Count - 1);
                if (chain.Count > 2) loops.Add([.. chain]);
                return;
            }
            if (next < 0 || visit[next] != 1) break;
            t = next;
        }
        open.Add(chain);
    }

    /// <summary>The half-edges of a triangle that cross upward and downward.</summary>
    private (int Up, int Down) Crossed(int t, double z)
    {
        int up = -1, down = -1;
        for (int e = 0; e < 3; e++)
        {
            bool from = _vertices[_corners[3 * t + e]].Z >= z, to = _vertices[_corners[3 * t + (e + 1) % 3]].Z >= z;
            if (!from && to) up = 3 * t + e;
            else if (from && !to) down = 3 * t + e;
        }
        return (up, down);
    }

    private Vec2 Point(int half, double z)
    {
        int t = half / 3, e = half % 3;
        int i = _corners[half], j = _corners[3 * t + (e + 1) % 3];
        if (i > j) (i, j) = (j, i);
        Vec3 a = _vertices[i], b = _vertices[j];
        double share = (z - a.Z) / (b.Z - a.Z);
        return new Vec2(a.X + share * (b.X - a.X), a.Y + share * (b.Y - a.Y));
    }
}
