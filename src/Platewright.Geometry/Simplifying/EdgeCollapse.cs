namespace Platewright.Geometry;

/// <summary>Collapses edges in order of the error that this makes, until few enough triangles are left.</summary>
internal sealed class EdgeCollapse
{
    /// <summary>An open edge is held in place by a plane across it with this weight.</summary>
    private const double EdgeWeight = 100;

    /// <summary>A triangle may not turn further than this by a collapse; cosine of about 78°.</summary>
    private const double TurnCosine = 0.2;

    private readonly Vec3 _middle;
    private readonly Vec3[] _position;
    private readonly Quadric[] _error;
    private readonly int[] _corners;
    private readonly bool[] _gone;
    private readonly List<int>[] _around;
    private readonly int[] _version;
    private readonly PriorityQueue<(int A, int B, int Versions), (double Error, int A, int B)> _queue = new();
    private int _left;

    private EdgeCollapse(Mesh mesh)
    {
        // About the middle, where squares lose the fewest bits.
        _middle = mesh.Bounds.Center;
        _position = mesh.Vertices.ToArray();
        for (int v = 0; v < _position.Length; v++) _position[v] -= _middle;
        _corners = mesh.Corners.ToArray();
        _left = mesh.TriangleCount;
        _gone = new bool[_left];
        _version = new int[_position.Length];
        _error = new Quadric[_position.Length];
        _around = new List<int>[_position.Length];
        for (int v = 0; v < _around.Length; v++) _around[v] = [];
        for (int half = 0; half < _corners.Length; half++) _around[_corners[half]].Add(half / 3);
        Weigh(MeshTopology.Of(mesh));
    }

    public static Mesh Reduce(Mesh welded, int mostTriangles)
    {
        EdgeCollapse collapse = new(welded);
        collapse.EnqueueAll();
        collapse.Run(mostTriangles, mayTurn: false);
        if (collapse._left > mostTriangles)
        {
            collapse.EnqueueAll();
            collapse.Run(mostTriangles, mayTurn: true);
        }
        List<int> corners = new(3 * collapse._left);
        for (int t = 0; t < collapse._gone.Length; t++)
            if (!collapse._gone[t]) corners.AddRange(collapse._corners.AsSpan(3 * t, 3));
        return new Mesh([.. collapse._position.Select(p => p + collapse._middle)], [.. corners]);
    }

    private void Weigh(MeshTopology topology)
    {
        for (int t = 0; t < _gone.Length; t++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = Triangle(t);
            Vec3 normal = (b - a).Cross(c - a);
            double twice = normal.Length;
            if (!(twice > 0)) continue;
            normal /= twice;
            Quadric plane = Quadric.OfPlane(normal, a, twice / 2);
            for (int e = 0; e < 3; e++)
            {
                int from = _corners[3 * t + e], to = _corners[3 * t + (e + 1) % 3];
                _error[from] += plane;
                if (topology.Mates[3 * t + e] >= 0) continue;
                Vec3 along = _position[to] - _position[from];
                Vec3 across = along.Cross(normal);
                if (!(across.Length > 0)) continue;
                Quadric fence = Quadric.OfPlane(across.Normalized(), _position[from], along.Dot(along) * EdgeWeight);
                _error[from] += fence;
                _error[to] += fence;
            }
        }
    }

    private void EnqueueAll()
    {
        _queue.Clear();
        for (int t = 0; t < _gone.Length; t++)
        {
            if (_gone[t]) continue;
            for (int e = 0; e < 3; e++)
            {
                int a = _corners[3 * t + e], b = _corners[3 * t + (e + 1) % 3];
                Enqueue(a, b);
            }
        }
    }

    private void Enqueue(int a, int b)
    {
        if (a == b) return;
        (a, b) = (Math.Min(a, b), Math.Max(a, b));
        (_, double error) = Best(a, b);
        _queue.Enqueue((a, b, _version[a] + _version[b]), (error, a, b));
    }

    private void Run(int mostTriangles, bool mayTurn)
    {
        while (_left > mostTriangles && _queue.TryDequeue(out var edge, out _))
        {
            (int a, int b, int versions) = edge;
            if (_version[a] + _version[b] != versions || _version[a] < 0 || _version[b] < 0) continue;
            (Vec3 to, _) = Best(a, b);
            if (!mayTurn && (Turns(a, b, to) || Turns(b, a, to))) continue;
            Collapse(a, b, to);
        }
    }

    /// <summary>b becomes a at a new place.</summary>
    private void Collapse(int a, int b, Vec3 to)
    {
        _position[a] = to;
        _error[a] += _error[b];
        _version[b] = int.MinValue;
        foreach (int t in _around[b])
        {
            if (_gone[t]) continue;
            for (int half = 3 * t; half < 3 * t + 3; half++)
                if (_corners[half] == b) _corners[half] = a;
            if (Uses(t, a) > 1)
            {
                _gone[t] = true;
                _left--;
            }
            else
            {
                _around[a].Add(t);
            }
        }
        _around[b] = [];
        _around[a].RemoveAll(t => _gone[t]);
        _version[a]++;
        foreach (int t in _around[a])
        {
            for (int half = 3 * t; half < 3 * t + 3; half++) Enqueue(a, _corners[half]);
        }
    }

    private int Uses(int t, int v) =>
        (_corners[3 * t] == v ? 1 : 0) + (_corners[3 * t + 1] == v ? 1 : 0) + (_corners[3 * t + 2] == v ? 1 : 0);

    /// <summary>Would a triangle at <paramref name="v"/> that stays turn over when v moves?</summary>
    private bool Turns(int v, int other, Vec3 to)
    {
        foreach (int t in _around[v])
        {
            if (_gone[t] || Uses(t, other) > 0) continue;
            (Vec3 a, Vec3 b, Vec3 c) = Triangle(t);
            Vec3 before = (b - a).Cross(c - a);
            if (_corners[3 * t] == v) a = to;
            else if (_corners[3 * t + 1] == v) b = to;
            else c = to;
            Vec3 after = (b - a).Cross(c - a);
            if (after.Dot(before) < TurnCosine * after.Length * before.Length) return true;
        }
        return false;
    }

    private (Vec3 To, double Error) Best(int a, int b)
    {
        Quadric sum = _error[a] + _error[b];
        Vec3 p = _position[a], q = _position[b], middle = (p + q) * 0.5;
        (Vec3 to, double error) = (middle, sum.At(middle));
        if (sum.At(p) < error) (to, error) = (p, sum.At(p));
        if (sum.At(q) < error) (to, error) = (q, sum.At(q));
        // The least point may lie far away where the planes are nearly parallel; close by it is the best.
        if (sum.TryLeast(out Vec3 least) && (least - middle).Length <= (p - q).Length && sum.At(least) < error)
            (to, error) = (least, sum.At(least));
        return (to, Math.Max(0, error));
    }

    private (Vec3 A, Vec3 B, Vec3 C) Triangle(int t) =>
        (_position[_corners[3 * t]], _position[_corners[3 * t + 1]], _position[_corners[3 * t + 2]]);
}
