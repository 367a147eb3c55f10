using System.Collections.Immutable;
using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Build.Paths;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Poses;

/// <summary>
/// Ways of standing worth a full estimate: as drawn, and on those faces of the hull that need least support and height for their
/// size. Judged on layers several times as high as the recipe's.
/// </summary>
public static class StandingPoses
{
    /// <summary>Faces tried, largest first; poses kept, the drawn one among them.</summary>
    private const int MostFaces = 10;
    private const int MostKept = 3;

    /// <summary>Layers of the coarse judgement.</summary>
    private const int CoarseLayers = 60;

    /// <summary>A part that falls when tipped less than this will not stand while it is built, degrees: our choice.</summary>
    private const double LeastTipDegrees = 5;

    /// <summary>Faces whose normals are closer than this are one, as cosine.</summary>
    private const double SameNormal = 0.9998;

    /// <param name="welded">The mesh.</param>
    /// <param name="topology">Of that mesh.</param>
    /// <param name="hull">Its hull.</param>
    /// <param name="recipe">Gives the overhang angle and the layer height.</param>
    /// <param name="mayTurn">False where only the drawn pose is allowed.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The drawn pose first.</returns>
    public static ImmutableArray<StandingPose> Of(
        Mesh welded, MeshTopology topology, ConvexHull hull, Recipe recipe, bool mayTurn, CancellationToken cancel)
    {
        MeshMeasures measures = MeshMeasures.Of(welded);
        Vec3 centre = measures.SolidCentre.IsFinite ? measures.SolidCentre : measures.SurfaceCentre;
        IReadOnlyList<RestingFace> faces = RestingFace.Of(hull, centre);
        double drawnTip = faces.Where(f => hull.Faces[f.Face].Normal.Z < -SameNormal).Select(f => f.TipDegrees).DefaultIfEmpty(-1).Max();
        StandingPose drawn = Judge(Rotation.Identity, asDrawn: true, drawnTip);
        if (!mayTurn) return [drawn];
        List<StandingPose> others = [];
        List<Vec3> tried = [-Vec3.UnitZ];
        foreach (RestingFace face in faces.Where(f => f.TipDegrees > LeastTipDegrees).OrderByDescending(f => f.FaceAreaMm2))
        {
            Vec3 normal = hull.Faces[face.Face].Normal;
            if (tried.Any(t => t.Dot(normal) > SameNormal)) continue;
            if (tried.Count > MostFaces) break;
            tried.Add(normal);
            others.Add(Judge(Rotation.Between(normal, -Vec3.UnitZ), asDrawn: false, face.TipDegrees));
        }
        return [drawn, .. others.OrderBy(p => Effort(p, recipe)).Take(MostKept - 1)];

        StandingPose Judge(Rotation rotation, bool asDrawn, double tip)
        {
            cancel.ThrowIfCancellationRequested();
            Matrix3 linear = rotation.ToMatrix();
            double height = hull.Support(linear.Row2) + hull.Support(-linear.Row2);
            double coarse = Math.Max(recipe.LayerHeightMm, height / CoarseLayers);
            LayeredPart layers = LayeredPart.Cut(welded, topology, linear, coarse, recipe.BeadWidthMm, cancel);
            double pitch = Bead.TouchingPitchMm(recipe.BeadWidthMm, recipe.LayerHeightMm);
            ImmutableArray<Rows> support = SupportRegions.Of(layers, recipe, pitch, cancel);
            double volume = support.Zip(layers.Layers, (s, l) => s.AreaMm2 * l.HeightMm).Sum();
            double overhang = 0;
            for (int l = 1; l < layers.Sections.Length; l++)
                overhang += RowSets.Subtract(layers.Sections[l].Solid, layers.Sections[l - 1].Solid).AreaMm2;
            return new StandingPose(
                rotation, asDrawn, tip, LayerHeights.Of(height, recipe.LayerHeightMm).Length,
                layers.Sections[0].AreaMm2, overhang, volume);
        }
    }

    /// <summary>
    /// Order of the shortlist: mm³ of support material, with a tenth of the layers' bead added for each layer. Only decides which
    /// poses are estimated; the estimate decides among them.
    /// </summary>
    private static double Effort(StandingPose pose, Recipe recipe) =>
        pose.SupportMm3 * recipe.SupportShare + pose.Layers * LayerEffortMm3;

    private const double LayerEffortMm3 = 5;
}
