namespace Platewright.Geometry;

/// <summary>A tree of boxes over the triangles of a mesh, split at the middle of the longest side: for rays and for
/// pairs of triangles that come close.</summary>
internal sealed class TriangleTree
{
    private const int LeafSize = 4;
    private const int Depth = 64;

    private readonly Mesh _mesh;
    private readonly int[] _order;
    private readonly List<Node> _nodes = [];

    private TriangleTree(Mesh mesh, int[] order)
    {
        _mesh = mesh;
        _order = order;
    }

    /// <summary>The tree over the given triangles.</summary>
    public static TriangleTree Over(Mesh mesh, int[] triangles)
    {
        TriangleTree tree = new(mesh, triangles);
        if (triangles.Length == 0) return tree;
        Vec3[] centres = new Vec3[mesh.TriangleCount];
        foreach (int t in triangles)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
            centres[t] = (Vec3.Min(a, Vec3.Min(b, c)) + Vec3.Max(a, Vec3.Max(b, c))) * 0.5;
        }
        tree.Build(centres, 0, triangles.Length, 0);
        return tree;
    }

    /// <summary>Calls <paramref name="visit"/> for pairs of triangles whose boxes touch, each once, until it says
    /// false.</summary>
    public void VisitClosePairs(Func<int, int, bool> visit)
    {
        if (_nodes.Count == 0) return;
        Stack<(int, int)> open = new();
        open.Push((0, 0));
        while (open.TryPop(out (int First, int Second) pair))
        {
            Node p = _nodes[pair.First], q = _nodes[pair.Second];
            if (!p.Box.Touches(q.Box)) continue;
            if (p.Left < 0 && q.Left < 0)
            {
                if (!VisitLeaves(p, q, pair.First == pair.Second, visit)) return;
            }
            else if (pair.First == pair.Second)
            {
                open.Push((p.Left, p.Left));
                open.Push((p.Right, p.Right));
                open.Push((p.Left, p.Right));
            }
            else if (q.Left < 0 || (p.Left >= 0 && p.To - p.From >= q.To - q.From))
            {
                open.Push((p.Left, pair.Second));
                open.Push((p.Right, pair.Second));
            }
            else
            {
                open.Push((pair.First, q.Left));
                open.Push((pair.First, q.Right));
            }
        }
    }

    private bool VisitLeaves(Node p, Node q, bool same, Func<int, int, bool> visit)
    {
        for (int i = p.From; i < p.To; i++)
        {
            for (int j = same ? i + 1 : q.From; j < q.To; j++)
                if (!visit(_order[i], _order[j])) return false;
        }
        return true;
    }

    private int Build(Vec3[] centres, int from, int to, int depth)
    {
        int place = _nodes.Count;
        Bounds3 box = Bounds3.Empty, middles = Bounds3.Empty;
        for (int i = from; i < to; i++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = _mesh.Triangle(_order[i]);
            box = box.Including(a).Including(b).Including(c);
            middles = middles.Including(centres[_order[i]]);
        }
        _nodes.Add(new Node(new TreeBox(box.Min, box.Max), from, to, -1, -1));
        if (to - from <= LeafSize || depth >= Depth) return place;
        int split = Split(centres, from, to, middles);
        int left = Build(centres, from, split, depth + 1);
        int right = Build(centres, split, to, depth + 1);
        _nodes[place] = _nodes[place] with { Left = left, Right = right };
        return place;
    }

    private int Split(Vec3[] centres, int from, int to, Bounds3 middles)
    {
        Vec3 size = middles.Size, center = middles.Center;
        int axis = size.X >= size.Y && size.X >= size.Z ? 0 : size.Y >= size.Z ? 1 : 2;
        double cut = Along(center, axis);
        int split = from;
        for (int i = from; i < to; i++)
        {
            if (Along(centres[_order[i]], axis) >= cut) continue;
            (_order[i], _order[split]) = (_order[split], _order[i]);
            split++;
        }
        return split == from || split == to ? (from + to) / 2 : split;
    }

    private static double Along(Vec3 p, int axis) => axis == 0 ? p.X : axis == 1 ? p.Y : p.Z;

    private readonly record struct Node(TreeBox Box, int From, int To, int Left, int Right);
}
