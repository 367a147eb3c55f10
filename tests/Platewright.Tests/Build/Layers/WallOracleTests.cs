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
                loops = [.. RowTrace.Trace(rows)
                    .Select(r => LoopSimplifier.Simplify(r, 0.003)).Where(r => r.Length > 2)];
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
