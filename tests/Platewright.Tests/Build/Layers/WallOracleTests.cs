using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;
using NetTopologySuite.Operation.Buffer;
using Platewright.Build.Layers;
using Platewright.Geometry;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Layers;

/// <summary>Walls and areas of the open meshes against polygon offsets of NetTopologySuite 2.6.</summary>
public sealed class WallOracleTests
{
    private const double Pitch = 0.40708;
    private const double RowPitch = 0.45 / 8;

    public static IEnumerable<TheoryDataRow<string>> Files => SharedMeshes.Valid;

    [Theory, MemberData(nameof(Files))]
    public void WallLengths_OfSharedMesh_AgreeWithPolygonOffsets(string file)
    {
        LayeredPart part = Scaled.Cut(SharedMeshes.Of(file), 60, 0.2, RowPitch);
        double own = 0, expected = 0;
        RowOffset offset = new();
        int step = Math.Max(1, part.Sections.Length / 12);
        for (int l = step / 2; l < part.Sections.Length; l += step)
        {
            Section section = part.Sections[l];
            if (section.Loops.Count == 0) continue;
            NetTopologySuite.Geometries.Geometry polygon = Oracle.Region(section.Loops);
            Rows rows = section.Solid;
            IReadOnlyList<Vec2[]> loops = section.Loops;
            for (int wall = 0; wall < 3; wall++)
            {
                rows = offset.Shrink(rows, loops, wall == 0 ? Pitch / 2 : Pitch);
                loops = [.. RowTrace.Trace(rows).Select(r => LoopSimplifier.Simplify(r, 0.003)).Where(r => r.Length > 2)];
                own += loops.Sum(r => Outline.Perimeter(r));
                expected += polygon.Buffer(-(wall + 0.5) * Pitch, new BufferParameters(32)).Length;
            }
        }
        Assert.SkipWhen(expected == 0, "thinner than a bead at this scale");
        TestContext.Current.TestOutputHelper!.WriteLine($"{own} {expected} {own / expected - 1:P3}");
        // Where a feature is a bead wide to a few µm, one of the two has a wall there and the other has none.
        Assert.InRange(own, 0.995 * expected - 2, 1.005 * expected + 2);
    }
}

internal static class Oracle
{
    /// <summary>The region inside loops with material to the left: the sum of counter-clockwise ones less the others.</summary>
    public static NetTopologySuite.Geometries.Geometry Region(IEnumerable<Vec2[]> loops)
    {
        GeometryFactory factory = new();
        NetTopologySuite.Geometries.Geometry solid = factory.CreatePolygon(), holes = factory.CreatePolygon();
        foreach (Vec2[] loop in loops)
        {
            Coordinate[] ring = [.. loop.Append(loop[0]).Select(p => new Coordinate(p.X, p.Y))];
            NetTopologySuite.Geometries.Geometry polygon = GeometryFixer.Fix(factory.CreatePolygon(ring));
            if (Outline.SignedArea(loop) > 0) solid = solid.Union(polygon);
            else holes = holes.Union(polygon);
        }
        return solid.Difference(holes);
    }
}

internal static class Scaled
{
    /// <summary>A mesh scaled to a longest side, cut into layers.</summary>
    public static LayeredPart Cut(Mesh mesh, double longestMm, double layerHeightMm, double rowPitchMm)
    {
        Vec3 size = mesh.Bounds.Size;
        double scale = longestMm / Math.Max(size.X, Math.Max(size.Y, size.Z));
        Mesh welded = Welding.Weld(mesh);
        return LayeredPart.Cut(
            welded, MeshTopology.Of(welded), Matrix3.Identity * scale, layerHeightMm, rowPitchMm, default);
    }
}
