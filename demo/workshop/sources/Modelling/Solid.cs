using Platewright.Geometry;

namespace Platewright.Demo.Modelling;

/// <summary>
/// A closed body under construction: triangles over vertices that lie on a fine grid, so that what meets in a point
/// shares its vertex. Mutable while a part is being modelled; <see cref="ToMesh"/> ends that.
/// </summary>
public sealed class Solid
{
    /// <summary>Grid points for each mm: 0.1 µm, far below what a file or a machine resolves.</summary>
    private const double GridPerMm = 10_000;

    private readonly Dictionary<(long X, long Y, long Z), int> _index = [];
    private readonly List<Vec3> _vertices = [];

    internal List<Triangle> Triangles { get; } = [];

    /// <summary>The vertex at a point, mm; a new one where there is none yet.</summary>
    internal int Vertex(Vec3 p)
    {
        (long X, long Y, long Z) key = (Snap(p.X), Snap(p.Y), Snap(p.Z));
        if (_index.TryGetValue(key, out int found)) return found;
        _vertices.Add(new Vec3(key.X / GridPerMm, key.Y / GridPerMm, key.Z / GridPerMm));
        return _index[key] = _vertices.Count - 1;
    }

    internal Vec3 At(int vertex) => _vertices[vertex];

    /// <summary>
    /// Adds a triangle, counter-clockwise seen from outside; one that has lost a corner to the grid is dropped.
    /// </summary>
    internal void Add(int a, int b, int c)
    {
        if (a != b && b != c && c != a) Triangles.Add(new Triangle(a, b, c));
    }

    /// <summary>
    /// The wall between two rings of vertices with as many points: seen from outside, <paramref name="from"/> runs to
    /// the right and <paramref name="to"/> lies above it.
    /// </summary>
    /// <param name="rising">Whether quads are split from the lower left; along the shorter diagonal where null.</param>
    internal void AddWall(int[] from, int[] to, bool? rising = null)
    {
        for (int i = 0; i < from.Length; i++)
        {
            int j = (i + 1) % from.Length;
            double up = (At(from[i]) - At(to[j])).Length, down = (At(from[j]) - At(to[i])).Length;
            if (rising ?? up <= down + GridStep)
            {
                Add(from[i], from[j], to[j]);
                Add(from[i], to[j], to[i]);
            }
            else
            {
                Add(from[i], from[j], to[i]);
                Add(from[j], to[j], to[i]);
            }
        }
    }

    /// <summary>Moves another body into this one; they must not touch.</summary>
    public Solid With(Solid other, Vec3 offset)
    {
        foreach (Triangle t in other.Triangles)
            Add(Vertex(other.At(t.A) + offset), Vertex(other.At(t.B) + offset), Vertex(other.At(t.C) + offset));
        return this;
    }

    /// <summary>The same body with every point p at linear·p + offset; mirroring keeps its faces outward.</summary>
    public Solid Moved(Matrix3 linear, Vec3 offset = default)
    {
        Solid moved = new();
        bool mirrored = linear.Determinant < 0;
        foreach (Triangle t in Triangles)
        {
            int a = moved.Vertex(linear.Apply(At(t.A)) + offset);
            int b = moved.Vertex(linear.Apply(At(t.B)) + offset);
            int c = moved.Vertex(linear.Apply(At(t.C)) + offset);
            moved.Add(a, mirrored ? c : b, mirrored ? b : c);
        }
        return moved;
    }

    /// <summary>The body as a mesh whose lowest corner is the origin plus <paramref name="corner"/>.</summary>
    public Mesh ToMesh(Vec3 corner = default)
    {
        int[] used = new int[_vertices.Count];
        List<Vec3> vertices = [];
        int[] corners = new int[Triangles.Count * 3];
        int next = 0;
        foreach (Triangle t in Triangles)
            foreach (int v in (ReadOnlySpan<int>)[t.A, t.B, t.C])
            {
                if (used[v] == 0)
                {
                    vertices.Add(_vertices[v]);
                    used[v] = vertices.Count;
                }
                corners[next++] = used[v] - 1;
            }
        Vec3 low = Bounds3.Of(vertices.ToArray()).Min;
        return new Mesh([.. vertices.Select(v => Snapped(v - low + corner))], corners);
    }

    private const double GridStep = 1 / GridPerMm;

    private static Vec3 Snapped(Vec3 p) =>
        new(Snap(p.X) / GridPerMm, Snap(p.Y) / GridPerMm, Snap(p.Z) / GridPerMm);

    private static long Snap(double x) => (long)Math.Round(x * GridPerMm);
}

/// <summary>Three vertices of a <see cref="Solid"/>, counter-clockwise seen from outside.</summary>
internal readonly record struct Triangle(int A, int B, int C);
