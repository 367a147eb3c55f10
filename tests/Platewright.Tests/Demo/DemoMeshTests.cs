using Platewright.Demo;
using Platewright.Geometry;

namespace Platewright.Tests.Demo;

/// <summary>The sound models of both demos are what a printable part must be.</summary>
public sealed class DemoMeshTests
{
    /// <summary>Twice the area, mm², below which a triangle is nothing to look at.</summary>
    private const double SliverMm2 = 1e-4;

    private const string PlateOfLooseParts = "workshop-clock/hands plate.stl";

    private static readonly IReadOnlyList<Lazy<Model>> Models =
        [.. Catalogue.Models, .. Catalogue.Packed, .. Catalogue.SchoolModels];

    public static TheoryData<int> Indices => [.. Enumerable.Range(0, Models.Count)];

    [Theory]
    [MemberData(nameof(Indices))]
    public void Model_IsClosedOutwardAndOfReasonableSize(int index)
    {
        Mesh mesh = Models[index].Value.Mesh;
        Assert.InRange(mesh.TriangleCount, 100, 20_000);
        Assert.Equal(0, UnmatchedEdges(mesh));
        Assert.Equal(Models[index].Value.Path == PlateOfLooseParts ? 7 : 1, Shells(mesh));
        Assert.True(Volume(mesh) > 0, $"{Models[index].Value.Path} is inside out");
        Assert.InRange(Slivers(mesh), 0, mesh.TriangleCount / 200);
    }

    /// <summary>
    /// Directed edges between distinct positions that are not used once with their opposite used once.
    /// </summary>
    private static int UnmatchedEdges(Mesh mesh)
    {
        Dictionary<Vec3, int> index = [];
        Dictionary<(int, int), int> uses = [];
        for (int i = 0; i < mesh.TriangleCount; i++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
            foreach ((Vec3 from, Vec3 to) in (ReadOnlySpan<(Vec3, Vec3)>)[(a, b), (b, c), (c, a)])
            {
                (int, int) edge = (IndexOf(from), IndexOf(to));
                uses[edge] = uses.GetValueOrDefault(edge) + 1;
            }
        }
        return uses.Count(u => u.Value != 1 || uses.GetValueOrDefault((u.Key.Item2, u.Key.Item1)) != 1);

        int IndexOf(Vec3 p)
        {
            if (!index.TryGetValue(p, out int at)) index[p] = at = index.Count;
            return at;
        }
    }

    /// <summary>Bodies that hang together by shared positions.</summary>
    private static int Shells(Mesh mesh)
    {
        Dictionary<Vec3, Vec3> parent = [];
        for (int i = 0; i < mesh.TriangleCount; i++)
        {
            (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
            parent[Root(a)] = Root(b);
            parent[Root(b)] = Root(c);
        }
        return parent.Keys.Count(p => Root(p) == p);

        Vec3 Root(Vec3 p)
        {
            parent.TryAdd(p, p);
            while (parent[p] != p) p = parent[p] = parent[parent[p]];
            return p;
        }
    }

    /// <summary>By the divergence theorem: the sum of the signed tetrahedra on the origin.</summary>
    private static double Volume(Mesh mesh) => Enumerable.Range(0, mesh.TriangleCount).Sum(i =>
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
        return a.Dot(b.Cross(c)) / 6;
    });

    private static int Slivers(Mesh mesh) => Enumerable.Range(0, mesh.TriangleCount).Count(i =>
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(i);
        return (b - a).Cross(c - a).Length < SliverMm2;
    });
}
