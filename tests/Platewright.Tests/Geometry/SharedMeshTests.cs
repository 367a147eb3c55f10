using System.Text.Json;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

/// <summary>Every shared mesh against the manifest: CGAL 5.5.1 and exactly rounded sums; tolerances are the manifest's.</summary>
public sealed class SharedMeshTests
{
    public static IEnumerable<TheoryDataRow<string>> Files => SharedMeshes.Valid;

    [Theory, MemberData(nameof(Files))]
    public void Topology_OfSharedMesh_AgreesWithTheManifest(string file)
    {
        Mesh mesh = SharedMeshes.Of(file);
        JsonElement expected = SharedMeshes.Expected(file);
        MeshTopology topology = MeshTopology.Of(mesh);
        Assert.Equal(expected.Count("triangles"), mesh.TriangleCount);
        Assert.Equal(expected.Count("vertices_welded"), mesh.Vertices.Length);
        Assert.Equal(expected.Count("defects", "boundary_edges"), topology.OpenEdges);
        Assert.Equal(expected.Count("defects", "nonmanifold_edges"), topology.CrowdedEdges);
        Assert.Equal(expected.Count("defects", "misoriented_edges"), topology.TwistedEdges);
        Assert.Equal(expected.Count("defects", "degenerate_repeated_vertex"), topology.CollapsedTriangles);
        Assert.Equal(expected.Flag("watertight"), topology.IsClosed);
        Assert.Equal(expected.Flag("closed_balanced"), topology.IsBalanced);
        Assert.Equal(expected.Count("components"), topology.ShellCount);
    }

    [Theory, MemberData(nameof(Files))]
    public void Measures_OfSharedMesh_AgreeWithTheManifest(string file)
    {
        JsonElement expected = SharedMeshes.Expected(file);
        MeshMeasures measures = MeshMeasures.Of(SharedMeshes.Of(file));
        SharedMeshes.AssertNear(expected.Number("area_mm2"), measures.AreaMm2, 1e-6);
        SharedMeshes.AssertNear(expected.Number("signed_tetra_sum_mm3"), measures.SignedVolumeMm3, 1e-6);
        if (expected.NumberOrNull("volume_mm3") is { } volume)
            SharedMeshes.AssertNear(volume, measures.SignedVolumeMm3, 1e-6);
    }

    [Theory, MemberData(nameof(Files))]
    public void Hull_OfSharedMesh_AgreesWithTheManifest(string file)
    {
        JsonElement expected = SharedMeshes.Expected(file);
        ConvexHull hull = ConvexHull.Of(SharedMeshes.Of(file).Vertices);
        SharedMeshes.AssertNear(expected.Number("convex_hull_volume_mm3"), hull.VolumeMm3, 1e-6);
        Assert.Equal(expected.Count("hull_vertices"), hull.Vertices.Length);
    }
}
