using Platewright.Geometry;

namespace Platewright.Study.Pictures;

/// <summary>
/// Thins a mesh by drawing the two ends of an edge together, cheapest edge first, where the cost is the squared distance
/// to the planes that met there (<see cref="Quadric"/>). Flat faces, thin walls and sharp edges keep their shape.
/// </summary>
internal sealed class EdgeCollapse
{
    /// <summary>A triangle may not turn further than this cosine says: about 78°.</summary>
    private const double LeastTurnCosine = 0.2;

    /// <summary>Rims hold as if a wall stood on them, so many times as strong as a face.</summary>
    private const double RimStrength = 10;

    /// <summary>Of edges in a plane, which all cost nothing, the shorter goes first.</summary>
    private const double LengthCost = 1e-7;

    private readonly Vec3[] _places;
    private readonly Quadric[] _planes;
    private readonly int[] _versions;
    private readonly List<int>[] _around;
    private readonly int[] _corners;
    private readonly bool[] _gone;
    private readonly PriorityQueue<(int U, int V, int Stamp), (double Cost, int U, int V)> _queue = new();
    private int _left;

    private EdgeCollapse(Mesh mesh, Vec3 origin)
    {
        _places = [.. mesh.Vertices.ToArray().Select(v => v - origin)];
        _corners = mesh.Corners.ToArray();
        _planes = new Quadric[_places.Length];
        _versions = new int[_places.Length];
        _around = [.. _places.Select(_ => new List<int>())];
        _left = mesh.TriangleCount;
        _gone = new bool[_left];
        for (int t = 0; t < _left; t++)
        {
            for (int k = 0; k < 3; k++) _around[_corners[3 * t + k]].Add(t);
        }
    }

    /// <param name="mesh">Welded: one vertex at each place.</param>
    /// <param name="mostTriangles">Where to stop; more may be left where no edge can go without folding the surface.</param>
    public static Mesh Thin(Mesh mesh, int mostTriangles)
    {
        Vec3 origin = mesh.Bounds.Center;
        var work = new EdgeCollapse(mesh, origin);
        work.Begin();
        while (work._left > mostTriangles && work._queue.TryDequeue(out (int U, int V, int Stamp) edge, out _)) work.Try(edge);
        var corners = new List<int>();
        for (int t = 0; t < work._gone.Length; t++)
        {
            if (!work._gone[t]) corners.AddRange(work._corners.AsSpan(3 * t, 3));
        }
        return GridMerge.Compact([.. work._places.Select(p => p + origin)], corners);
    }

    private void Begin()
    {
        for (int t = 0; t < _gone.Length; t++)
        {
            Vec3 normal = Normal(t);
            for (int k = 0; k < 3; k++)
            {
                int u = _corners[3 * t + k], v = _corners[3 * t + (k + 1) % 3];
                _planes[u].AddPlane(_places[u], normal, normal.Length);
                Vec3 edge = _places[v] - _places[u];
                if (_around[u].Count(_around[v].Contains) != 1) continue;
                double strength = RimStrength * edge.Dot(edge);
                _planes[u].AddPlane(_places[u], edge.Cross(normal), strength);
                _planes[v].AddPlane(_places[u], edge.Cross(normal), strength);
            }
        }
        for (int u = 0; u < _places.Length; u++)
        {
            foreach (int v in Neighbours(u)) if (u < v) Offer(u, v);
        }
    }

    private void Offer(int u, int v)
    {
        Quadric both = _planes[u] + _planes[v];
        Vec3 edge = _places[v] - _places[u];
        double cost = both.ErrorAt(Meeting(u, v)) + LengthCost * both.Weight * edge.Dot(edge);
        _queue.Enqueue((u, v, _versions[u] + _versions[v]), (cost, u, v));
    }

    /// <summary>Where the two ends meet best; never further from the edge's middle than the edge is long.</summary>
    private Vec3 Meeting(int u, int v)
    {
        Vec3 middle = (_places[u] + _places[v]) / 2;
        Vec3 best = (_planes[u] + _planes[v]).Best(middle);
        return (best - middle).Length <= (_places[v] - _places[u]).Length ? best : middle;
    }

    private void Try((int U, int V, int Stamp) edge)
    {
        (int u, int v, int stamp) = edge;
        if (_versions[u] < 0 || _versions[v] < 0 || _versions[u] + _versions[v] != stamp) return;
        Vec3 place = Meeting(u, v);
        int shared = _around[u].Count(t => Has(t, v));
        if (Neighbours(u).Intersect(Neighbours(v)).Count() != shared) return;
        if (Folds(u, v, place) || Folds(v, u, place)) return;
        foreach (int t in _around[v])
        {
            if (Has(t, u))
            {
                _gone[t] = true;
                _left--;
                continue;
            }
            for (int k = 3 * t; k < 3 * t + 3; k++) if (_corners[k] == v) _corners[k] = u;
            _around[u].Add(t);
        }
        foreach (int w in Neighbours(u).Append(v).Append(u).ToList()) _around[w].RemoveAll(t => _gone[t]);
        _around[v].Clear();
        _places[u] = place;
        _planes[u] += _planes[v];
        _versions[u]++;
        _versions[v] = int.MinValue;
        foreach (int w in Neighbours(u)) Offer(Math.Min(u, w), Math.Max(u, w));
    }

    /// <summary>True when moving u turns one of its triangles over that does not vanish with the edge.</summary>
    private bool Folds(int u, int v, Vec3 place)
    {
        Vec3 old = _places[u];
        foreach (int t in _around[u])
        {
            if (Has(t, v)) continue;
            Vec3 before = Normal(t);
            _places[u] = place;
            Vec3 after = Normal(t);
            _places[u] = old;
            if (before.Dot(after) < LeastTurnCosine * before.Length * after.Length) return true;
        }
        return false;
    }

    private bool Has(int triangle, int vertex) =>
        _corners[3 * triangle] == vertex || _corners[3 * triangle + 1] == vertex || _corners[3 * triangle + 2] == vertex;

    private Vec3 Normal(int t)
    {
        Vec3 a = _places[_corners[3 * t]];
        return (_places[_corners[3 * t + 1]] - a).Cross(_places[_corners[3 * t + 2]] - a);
    }

    private IEnumerable<int> Neighbours(int u) =>
        _around[u].SelectMany(t => new[] { _corners[3 * t], _corners[3 * t + 1], _corners[3 * t + 2] }).Where(w => w != u).Distinct();
}
