using NetTopologySuite.Operation.Buffer;
using Platewright.Build.Motion;
using Platewright.Build.Paths;
using Platewright.Geometry;
using Platewright.Machines;
using Platewright.Tests.Build.Estimates;
using Platewright.Tests.Build.Layers;
using Platewright.Tests.Geometry;
using Oracle = Platewright.Tests.Build.Layers.Oracle;

namespace Platewright.Tests.Build.Paths;

/// <summary>
/// Solid faces of the open meshes against NetTopologySuite 2.6: inside of the walls less what has material in all of
/// the layers near it.
/// </summary>
public sealed class SolidFaceOracleTests
{
    private const int Sampled = 6;
    private static readonly Recipe Recipe = Builds.Recipe with { SolidLayers = 3 };

    [Fact]
    public void Plan_SharedMeshes_HaveTheSolidFacesOfPolygonsInSum()
    {
        Repository.SharedOrSkip("models", "manifest.json");
        double own = 0, expected = 0;
        foreach (string file in SharedMeshes.Valid.Select(f => f.Data))
        {
            (double area, double polygons) = Faces(SharedMeshes.Of(file));
            own += area;
            expected += polygons;
        }
        TestContext.Current.TestOutputHelper!.WriteLine($"in sum {own:f1} {expected:f1} {own / expected - 1:p2}");
        SharedMeshes.AssertNear(expected, own, 0.02);
    }

    private static (double Own, double Expected) Faces(Mesh mesh)
    {
        BuildLayers layers = Builds.Layers(mesh, Recipe, Scaled.By(mesh, 60));
        LayerPlanner planner = new(layers);
        int count = layers.Part.Layers.Length, step = Math.Max(1, count / Sampled);
        double own = 0, expected = 0, pitch = Builds.Pitch(Recipe);
        for (int l = step / 2; l < count; l += step)
        {
            own += Beads.Of(planner.Plan(l)).MaterialMm3[PathKind.SolidFace] / layers.Part.Layers[l].HeightMm;
            NetTopologySuite.Geometries.Geometry inside =
                Oracle.Region(layers.Part.Sections[l].Loops).Buffer(-Recipe.Walls * pitch, new BufferParameters(16));
            bool within = l >= Recipe.SolidLayers && l + Recipe.SolidLayers < count;
            NetTopologySuite.Geometries.Geometry? core = within ? inside : null;
            for (int k = -Recipe.SolidLayers; core is not null && k <= Recipe.SolidLayers; k++)
                if (k != 0) core = core.Intersection(Oracle.Region(layers.Part.Sections[l + k].Loops));
            expected += inside.Area - (core?.Area ?? 0);
        }
        return (own, expected);
    }
}
