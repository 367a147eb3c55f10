using Platewright.Geometry;

namespace Platewright.Fit.Search;

/// <summary>
/// Answers "which hull vertex is farthest in direction u" from a grid of directions (a cube map). Each cell lists the vertices
/// that are farthest for some direction in it, so a query looks at a handful. Built once for a hull, used for every machine.
/// </summary>
/// <remarks>
/// A vertex v can be farther than v*, the farthest at the cell's centre u, for a direction within angle α of u only if
/// depth·cos α ≤ √(|d|² − depth²)·sin α, with d = v − v* and depth = −d·u.
/// </remarks>
internal sealed class SupportGrid
{
    private const int FewVertices = 12;
    private readonly Vec3[] _vertices;
    private readonly int _resolution;
    private readonly int[] _starts;
    private readonly int[] _candidates;
    private readonly Vec3[] _positions;

    public SupportGrid(ReadOnlySpan<Vec3> vertices)
    {
        _vertices = vertices.ToArray();
        Vec3 middle = Bounds3.Of(vertices).Center;
        Radius = _vertices.Max(v => (v - middle).Length);
        _resolution = vertices.Length switch { <= FewVertices => 0, <= 250 => 8, <= 1200 => 16, _ => 32 };
        var starts = new List<int>(6 * _resolution * _resolution + 1);
        var candidates = new List<int>();
        if (_resolution > 0) Fill(starts, candidates);
        else candidates.AddRange(Enumerable.Range(0, _vertices.Length));
        starts.Add(candidates.Count);
        _starts = [.. starts];
        _candidates = [.. candidates];
        _positions = Array.ConvertAll(_candidates, i => _vertices[i]);
    }

    public ReadOnlySpan<Vec3> Vertices => _vertices;

    /// <summary>Distance of the farthest vertex from the middle of the bounding box, mm.</summary>
    public double Radius { get; }

    /// <summary>The index of the vertex farthest along <paramref name="u"/> (any length but zero).</summary>
    public int Farthest(Vec3 u)
    {
        int from = 0, to = _positions.Length;
        if (_resolution > 0)
        {
            int cell = CellOf(u);
            from = _starts[cell];
            to = _starts[cell + 1];
        }
        int best = from;
        double most = double.NegativeInfinity;
        for (int k = from; k < to; k++)
        {
            double reach = _positions[k].Dot(u);
            if (reach <= most) continue;
            most = reach;
            best = k;
        }
        return _candidates[best];
    }

    private int CellOf(Vec3 u)
    {
        double ax = Math.Abs(u.X), ay = Math.Abs(u.Y), az = Math.Abs(u.Z);
        if (ax >= ay && ax >= az) return Cell(u.X > 0 ? 0 : 1, u.Y / ax, u.Z / ax);
        return ay >= az ? Cell(u.Y > 0 ? 2 : 3, u.Z / ay, u.X / ay) : Cell(u.Z > 0 ? 4 : 5, u.X / az, u.Y / az);
    }

    private int Cell(int face, double s, double t)
    {
        int i = Math.Clamp((int)((s + 1) * 0.5 * _resolution), 0, _resolution - 1);
        int j = Math.Clamp((int)((t + 1) * 0.5 * _resolution), 0, _resolution - 1);
        return (face * _resolution + i) * _resolution + j;
    }

    private static Vec3 Direction(int face, double s, double t)
    {
        double sign = (face & 1) == 0 ? 1 : -1;
        return ((face >> 1) switch { 0 => new Vec3(sign, s, t), 1 => new Vec3(t, sign, s), _ => new Vec3(s, t, sign) })
            .Normalized();
    }

    private void Fill(List<int> starts, List<int> candidates)
    {
        var lists = new List<int>[6 * _resolution * _resolution];
        List<int> all = [.. Enumerable.Range(0, _vertices.Length)];
        for (int face = 0; face < 6; face++) Divide(face, 0, 0, _resolution, all, lists);
        foreach (List<int> list in lists)
        {
            starts.Add(candidates.Count);
            candidates.AddRange(list);
        }
    }

    private void Divide(int face, int i, int j, int size, List<int> inherited, List<int>[] lists)
    {
        double step = 2.0 / _resolution;
        double s0 = -1 + i * step, t0 = -1 + j * step, s1 = s0 + size * step, t1 = t0 + size * step;
        Vec3 center = Direction(face, (s0 + s1) / 2, (t0 + t1) / 2);
        double cos = Math.Min(
            Math.Min(center.Dot(Direction(face, s0, t0)), center.Dot(Direction(face, s1, t0))),
            Math.Min(center.Dot(Direction(face, s0, t1)), center.Dot(Direction(face, s1, t1))));
        cos -= 1e-12;
        List<int> kept = Keep(center, cos, inherited);
        if (size == 1)
        {
            lists[(face * _resolution + i) * _resolution + j] = kept;
            return;
        }
        int half = size / 2;
        Divide(face, i, j, half, kept, lists);
        Divide(face, i + half, j, half, kept, lists);
        Divide(face, i, j + half, half, kept, lists);
        Divide(face, i + half, j + half, half, kept, lists);
    }

    private List<int> Keep(Vec3 center, double cos, List<int> inherited)
    {
        double sin = Math.Sqrt(1 - cos * cos);
        int farthest = inherited[0];
        foreach (int v in inherited)
            if (_vertices[v].Dot(center) > _vertices[farthest].Dot(center)) farthest = v;
        Vec3 best = _vertices[farthest];
        var kept = new List<int>();
        foreach (int v in inherited)
        {
            Vec3 d = _vertices[v] - best;
            double depth = -d.Dot(center);
            double across = Math.Sqrt(Math.Max(0, d.Dot(d) - depth * depth));
            if (depth * cos <= across * sin || v == farthest) kept.Add(v);
        }
        return kept;
    }
}
