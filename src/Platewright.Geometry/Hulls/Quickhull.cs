using System.Runtime.InteropServices;

namespace Platewright.Geometry;

/// <summary>
/// Quickhull in space with exact visibility (Barber, Dobkin, Huhdanpaa, "The quickhull algorithm for convex hulls",
/// 1996). A facet is removed only where the new point lies strictly above its plane, so that coplanar facets stay and
/// nothing degenerate is made; which point comes next is chosen in floating point and decides nothing but the speed.
/// </summary>
internal sealed class Quickhull
{
    private const int None = -1;

    // The extents are rounded differences themselves; the slack covers that many times over.
    private const double Slack = 1.0001;

    private readonly Vec3[] _points;
    private readonly Vec3 _extent;
    private readonly List<Facet> _facets = [];
    private readonly Stack<int> _free = new();
    private readonly Stack<int> _waiting = new();
    private readonly int[] _next;
    private readonly int[] _facetFrom;
    private readonly List<int> _visible = [];
    private readonly List<(int Facet, int Edge)> _horizon = [];
    private readonly List<int> _made = [];
    private int _stamp;

    private Quickhull(Vec3[] points)
    {
        _points = points;
        _extent = Bounds3.Of(points).Size;
        _next = new int[points.Length];
        _facetFrom = new int[points.Length];
    }

    /// <summary>The triangles of the hull; the four points of <paramref name="simplex"/> must not be
    /// coplanar.</summary>
    public static List<HullTriangle> Triangulate(Vec3[] points, int[] simplex)
    {
        Quickhull hull = new(points);
        hull.Begin(simplex);
        hull.Assign(HullSeed.ExtremeInDirections(points));
        hull.Grow();
        hull.AssignAll();
        hull.Grow();
        return hull.Triangles();
    }

    private void Begin(int[] s)
    {
        (int a, int b, int c, int d) = (s[0], s[1], s[2], s[3]);
        if (Orientation.Of(_points[a], _points[b], _points[c], _points[d]) > 0) (b, c) = (c, b);
        // d lies below a b c, so each triangle is seen from outside.
        _facets.Add(Plane(a, b, c) with { Across0 = 1, Across1 = 2, Across2 = 3 });
        _facets.Add(Plane(b, a, d) with { Across0 = 0, Across1 = 3, Across2 = 2 });
        _facets.Add(Plane(c, b, d) with { Across0 = 0, Across1 = 1, Across2 = 3 });
        _facets.Add(Plane(a, c, d) with { Across0 = 0, Across1 = 2, Across2 = 1 });
    }

    private void Grow()
    {
        for (int f = 0; f < _facets.Count; f++)
            if (_facets[f].Alive && _facets[f].Outside != None) _waiting.Push(f);
        while (_waiting.TryPop(out int facet))
        {
            if (_facets[facet].Alive && _facets[facet].Outside != None) Add(_facets[facet].Furthest, facet);
        }
    }

    private void Add(int point, int seen)
    {
        FindVisible(point, seen);
        _made.Clear();
        foreach ((int facet, int edge) in _horizon)
        {
            (int u, int v) = _facets[facet].Edge(edge);
            int made = Insert(Plane(v, u, point) with { Across0 = facet });
            _facetFrom[v] = made;
            Link(facet, edge, made);
            _made.Add(made);
        }
        foreach (int made in _made)
        {
            int following = _facetFrom[_facets[made].B];
            Link(made, 1, following);
            Link(following, 2, made);
        }
        foreach (int facet in _visible) Reassign(facet, point);
        foreach (int facet in _visible) _free.Push(facet);
        foreach (int made in _made)
            if (_facets[made].Outside != None) _waiting.Push(made);
    }

    /// <summary>Collects the facets strictly below the point and, as edges of the facets that stay, its
    /// horizon.</summary>
    private void FindVisible(int point, int seen)
    {
        _visible.Clear();
        _horizon.Clear();
        _stamp += 2;
        Span<Facet> facets = CollectionsMarshal.AsSpan(_facets);
        facets[seen].Mark = _stamp;
        _visible.Add(seen);
        for (int i = 0; i < _visible.Count; i++)
        {
            ref Facet facet = ref facets[_visible[i]];
            facet.Alive = false;
            for (int edge = 0; edge < 3; edge++)
            {
                int across = facet.Across(edge);
                ref Facet other = ref facets[across];
                if (other.Mark < _stamp)
                {
                    bool visible = Sign(in other, point) > 0;
                    other.Mark = visible ? _stamp : _stamp + 1;
                    if (visible) _visible.Add(across);
                }
                if (other.Mark == _stamp) continue;
                (int u, int v) = facet.Edge(edge);
                _horizon.Add((across, other.EdgeBetween(v, u)));
            }
        }
    }

    private void Reassign(int facet, int used)
    {
        for (int p = _facets[facet].Outside, next; p != None; p = next)
        {
            next = _next[p];
            if (p != used) Give(p, _made);
        }
    }

    private void Give(int point, List<int> candidates)
    {
        Span<Facet> facets = CollectionsMarshal.AsSpan(_facets);
        foreach (int candidate in candidates)
        {
            if (Sign(in facets[candidate], point) <= 0) continue;
            Put(ref facets[candidate], point);
            return;
        }
    }

    private void Put(ref Facet facet, int point)
    {
        double height = facet.Height(_points[point]);
        if (facet.Outside == None || height > facet.FurthestHeight)
        {
            facet.Furthest = point;
            facet.FurthestHeight = height;
        }
        _next[point] = facet.Outside;
        facet.Outside = point;
    }

    private void Assign(IEnumerable<int> points)
    {
        List<int> all = [.. Enumerable.Range(0, _facets.Count)];
        foreach (int point in points) Give(point, all);
    }

    /// <summary>Gives every point to a facet it is above; most points are above none and are never looked at
    /// again.</summary>
    private void AssignAll()
    {
        int[] alive = [.. Enumerable.Range(0, _facets.Count).Where(f => _facets[f].Alive)];
        Facet[] facets = [.. alive.Select(f => _facets[f])];
        int[] above = new int[_points.Length];
        Chunks.For(_points.Length, (from, to) =>
        {
            int likely = 0;
            for (int p = from; p < to; p++)
            {
                above[p] = None;
                if (Sign(in facets[likely], p) > 0)
                {
                    above[p] = likely;
                    continue;
                }
                for (int f = 0; f < facets.Length; f++)
                {
                    if (f == likely || Sign(in facets[f], p) <= 0) continue;
                    above[p] = likely = f;
                    break;
                }
            }
        });
        Span<Facet> own = CollectionsMarshal.AsSpan(_facets);
        for (int p = 0; p < above.Length; p++)
            if (above[p] != None) Put(ref own[alive[above[p]]], p);
    }

    private List<HullTriangle> Triangles()
    {
        int[] place = new int[_facets.Count];
        int count = 0;
        for (int f = 0; f < place.Length; f++) place[f] = _facets[f].Alive ? count++ : None;
        List<HullTriangle> triangles = new(count);
        foreach (Facet f in _facets)
            if (f.Alive) triangles.Add(new(f.A, f.B, f.C, place[f.Across0], place[f.Across1], place[f.Across2]));
        return triangles;
    }

    private int Insert(Facet facet)
    {
        if (_free.TryPop(out int place))
        {
            facet.Mark = 0;
            _facets[place] = facet;
            return place;
        }
        _facets.Add(facet);
        return _facets.Count - 1;
    }

    private void Link(int facet, int edge, int across)
    {
        ref Facet f = ref CollectionsMarshal.AsSpan(_facets)[facet];
        if (edge == 0) f.Across0 = across;
        else if (edge == 1) f.Across1 = across;
        else f.Across2 = across;
    }

    /// <summary>+1 strictly above the facet, −1 strictly below, 0 on its plane. Exact.</summary>
    private int Sign(in Facet facet, int point)
    {
        double height = facet.Height(_points[point]);
        if (height > facet.Doubt) return 1;
        if (height < -facet.Doubt) return -1;
        if (point == facet.A || point == facet.B || point == facet.C) return 0;
        return Orientation.Exactly(_points[facet.A], _points[facet.B], _points[facet.C], _points[point]);
    }

    private Facet Plane(int a, int b, int c)
    {
        Vec3 ab = _points[b] - _points[a], ac = _points[c] - _points[a];
        double yz = ab.Y * ac.Z, zy = ab.Z * ac.Y;
        double zx = ab.Z * ac.X, xz = ab.X * ac.Z;
        double xy = ab.X * ac.Y, yx = ab.Y * ac.X;
        double permanent = (Math.Abs(yz) + Math.Abs(zy)) * _extent.X
            + (Math.Abs(zx) + Math.Abs(xz)) * _extent.Y + (Math.Abs(xy) + Math.Abs(yx)) * _extent.Z;
        return new Facet
        {
            A = a,
            B = b,
            C = c,
            Origin = _points[a],
            Normal = new Vec3(yz - zy, zx - xz, xy - yx),
            Doubt = Orientation.SpaceFilter * permanent * Slack + Orientation.Underflow,
            Outside = None,
            Alive = true,
        };
    }

    [StructLayout(LayoutKind.Auto)]
    private struct Facet
    {
        public int A, B, C;
        public int Across0, Across1, Across2;
        public int Outside, Furthest, Mark;
        public bool Alive;
        public Vec3 Origin, Normal;
        public double Doubt, FurthestHeight;

        public readonly int Across(int edge) => edge == 0 ? Across0 : edge == 1 ? Across1 : Across2;

        public readonly (int From, int To) Edge(int edge) => edge == 0 ? (A, B) : edge == 1 ? (B, C) : (C, A);

        public readonly int EdgeBetween(int from, int to) => from == A && to == B ? 0 : from == B && to == C ? 1 : 2;

        /// <summary>Distance above the plane times the length of the normal, rounded.</summary>
        public readonly double Height(Vec3 p) =>
            Normal.X * (p.X - Origin.X) + Normal.Y * (p.Y - Origin.Y) + Normal.Z * (p.Z - Origin.Z);
    }
}
