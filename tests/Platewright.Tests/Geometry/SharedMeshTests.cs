using System.Text.Json;
using Platewright.Geometry;

namespace Platewright.Tests.Geometry;

/// <summary>Every shared mesh against the manifest: CGAL 5.5.1 and exactly rounded sums; tolerances are the
/// manifest's.</summary>
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

    [Theory, MemberData(nameof(Files))]
    public void Boxes_OfSharedMesh_AgreeWithTheManifest(string file)
    {
        JsonElement expected = SharedMeshes.Expected(file);
        Mesh mesh = SharedMeshes.Of(file);
        ConvexHull hull = ConvexHull.Of(mesh.Vertices);
        SharedMeshes.AssertNear(expected.Number("diameter_mm"), Diameter.Of(hull).LengthMm, 1e-6);
        double lowest = RestingFace.Of(hull, hull.Centroid).Min(f => f.HeightMm);
        SharedMeshes.AssertNear(expected.Number("lowest_height_resting_on_a_hull_face_mm"), lowest, 1e-6);
        Assert.True(MinimalWidth.Of(hull).WidthMm <= lowest);
        Silhouette shadow = Silhouette.Of(mesh.Vertices, Rotation.Identity);
        SharedMeshes.AssertNear(expected.Number("footprint_xy", "hull_area_mm2"), shadow.AreaMm2, 1e-6);
        MinimalRectangle rectangle = MinimalRectangle.Of([.. shadow.Outline]);
        double[] sides = [.. expected.GetProperty("footprint_xy").GetProperty("min_area_rectangle_mm")
            .EnumerateArray().Select(e => e.GetDouble()).Order()];
        SharedMeshes.AssertNear(sides[0] * sides[1], rectangle.AreaMm2, 1e-6);
    }

    [Theory, MemberData(nameof(Files))]
    public void TightestBox_OfSharedMesh_ReachesTheManifest(string file)
    {
        JsonElement expected = SharedMeshes.Expected(file);
        ConvexHull hull = ConvexHull.Of(SharedMeshes.Of(file).Vertices);
        OrientedBox box = TightestBox.Of(hull);
        TestContext.Current.TestOutputHelper?.WriteLine($"{box.VolumeMm3 / expected.Number("obb_volume_mm3"):F5}");
        Assert.InRange(box.VolumeMm3 / expected.Number("obb_volume_mm3"), 0.99, 1.005);
        Assert.True(box.SizeMm.X >= box.SizeMm.Y && box.SizeMm.Y >= box.SizeMm.Z);
        Assert.True(box.VolumeMm3 >= hull.VolumeMm3);
    }

    [Theory, MemberData(nameof(Files))]
    public void Health_OfSharedMesh_AgreesWithTheManifest(string file)
    {
        JsonElement expected = SharedMeshes.Expected(file);
        MeshReport report = MeshHealth.Examine(SharedMeshes.Of(file));
        foreach (Finding finding in report.Findings) TestContext.Current.TestOutputHelper?.WriteLine($"{finding}");
        TestContext.Current.TestOutputHelper?.WriteLine($"thinnest wall {report.ThinnestWallMm}");
        int Count(string code) => report.Findings.FirstOrDefault(f => f.Code == code)?.Count ?? 0;
        Assert.Equal(expected.Count("defects", "duplicate_triangles"), Count(FindingCodes.DuplicateFaces));
        Assert.Equal(
            expected.Count("defects", "degenerate_repeated_vertex") + expected.Count("defects", "degenerate_collinear"),
            Count(FindingCodes.DegenerateFaces));
        Assert.Equal(expected.Count("defects", "boundary_edges") > 0, Count(FindingCodes.Holes) > 0);
        Assert.Equal(expected.Count("defects", "misoriented_edges") > 0, Count(FindingCodes.FlippedFaces) > 0);
        Assert.Equal(expected.Count("defects", "nonmanifold_edges") > 0, Count(FindingCodes.CrowdedEdges) > 0);
        JsonElement crossing = expected.GetProperty("defects").GetProperty("self_intersects");
        if (crossing.ValueKind != JsonValueKind.Null)
        {
            bool found = Count(FindingCodes.SelfIntersections) + Count(FindingCodes.IntersectingShells) > 0;
            Assert.Equal(crossing.GetBoolean(), found);
        }
        JsonElement outward = expected.GetProperty("defects").GetProperty("outward_oriented");
        if (outward.ValueKind == JsonValueKind.True) Assert.Equal(0, Count(FindingCodes.InsideOutShells));
        bool solid = expected.NumberOrNull("volume_mm3") is not null;
        if (solid && expected.GetProperty("centroid_mm") is { ValueKind: JsonValueKind.Array } c)
        {
            Vec3 centre = new(c[0].GetDouble(), c[1].GetDouble(), c[2].GetDouble());
            Assert.True((report.CentreOfMass - centre).Length <= 1e-5 * report.Bounds.Size.Length);
        }
    }
}
