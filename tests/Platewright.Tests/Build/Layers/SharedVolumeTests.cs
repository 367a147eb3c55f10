using System.Text.Json;
using Platewright.Build.Layers;
using Platewright.Geometry;
using Platewright.Tests.Formats;
using Platewright.Tests.Geometry;

namespace Platewright.Tests.Build.Layers;

/// <summary>Open meshes scaled to 60 mm: the volume of their layers against the manifest's volumes (CGAL 5.5.1).</summary>
public sealed class SharedVolumeTests
{
    /// <summary>
    /// A level face off the layers' planes is rounded to them: at 0.2 mm that is up to 0.1 mm on every such face.
    /// Layers a tenth as high leave a tenth of it.
    /// </summary>
    private const double Allowed = 0.02;

    public static IEnumerable<TheoryDataRow<string>> Files => SharedModels.Valid();

    [Theory, MemberData(nameof(Files))]
    public void Cut_SharedMesh_HasItsVolumeOrSaysWhyNot(string file)
    {
        JsonElement entry = SharedMeshes.Expected(file);
        Mesh mesh = SharedMeshes.Of(file);
        LayeredPart part = Scaled.Cut(mesh, 60, 0.2, Cuts.RowPitch);
        double fine = Scaled.Cut(mesh, 60, 0.02, 0.5).VolumeMm3;
        int overlapping = part.Sections.Count(s => s.Overlapping), gaps = part.Sections.Count(s => s.ClosedGaps > 0);
        double scale = Scaled.By(mesh, 60);
        double? drawn = entry.NumberOrNull("volume_mm3");
        TestContext.Current.TestOutputHelper!.WriteLine(
            $"{part.VolumeMm3:g6} ({fine:g6}) of {drawn * Math.Pow(scale, 3):g6} mm³, {overlapping} overlapping, {gaps} open");
        if (drawn is null)
        {
            Assert.True(gaps > 0 || overlapping > 0 || !entry.Flag("watertight"), "open, and cut without a finding");
            Assert.True(part.VolumeMm3 >= 0);
            return;
        }
        Assert.Equal(0, gaps);
        double expected = Math.Abs(drawn.Value) * scale * scale * scale;
        // The manifest counts overlapping shells as often as they are drawn; their union is no more than that.
        double least = overlapping > 0 ? 0 : 1;
        Assert.InRange(part.VolumeMm3, least * (1 - Allowed) * expected, (1 + Allowed) * expected);
        Assert.InRange(fine, least * (1 - Allowed / 10) * expected, (1 + Allowed / 10) * expected);
    }

    [Fact]
    public void Cut_AllClosedMeshesThatDoNotOverlap_HaveTheirVolumeInSum()
    {
        Repository.SharedOrSkip("models", "manifest.json");
        double own = 0, expected = 0;
        foreach (string file in Files.Select(f => f.Data))
        {
            if (SharedMeshes.Expected(file).NumberOrNull("volume_mm3") is not { } drawn) continue;
            Mesh mesh = SharedMeshes.Of(file);
            LayeredPart part = Scaled.Cut(mesh, 60, 0.2, Cuts.RowPitch);
            if (part.Sections.Any(s => s.Overlapping)) continue;
            own += part.VolumeMm3;
            expected += Math.Abs(drawn) * Math.Pow(Scaled.By(mesh, 60), 3);
        }
        SharedMeshes.AssertNear(expected, own, 0.005);
    }
}
