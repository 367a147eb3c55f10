using System.Collections.Immutable;
using Platewright.Build.Layers;
using Platewright.Build.Motion;
using Platewright.Build.Paths;
using Platewright.Geometry;
using Platewright.Machines;

namespace Platewright.Build.Poses;

/// <summary>
/// Ways of standing: as drawn, and on the larger faces of the hull. Judged on layers several times as high as the recipe's, which
/// is enough to tell which of them deserve a full estimate.
/// </summary>
public static class StandingPoses
{
    /// <summary>Faces tried, largest first.</summary>
    private const int MostFaces = 8;

    /// <summary>Poses worth a full estimate: those within this of the least effort, and at most so many.</summary>
    private const double WorthRatio = 1.2;
    private const int MostWorth = 3;

    /// <summary>Share of a part's volume that is laid down, for the rough measure only.</summary>
    private const double LaidShare = 0.5;

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
    /// <returns>Least effort first.</returns>
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
        return [.. others.Prepend(drawn).OrderBy(p => p.EffortMm3)];

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
                layers.Sections[0].AreaMm2, overhang, volume)
            {
                EffortMm3 = layers.VolumeMm3 * LaidShare + volume * recipe.SupportShare + LayerEffortMm3 * height / recipe.LayerHeightMm,
            };
        }
    }

    /// <summary>Of poses, least effort first, those worth a full estimate.</summary>
    public static IEnumerable<StandingPose> Worth(IReadOnlyList<StandingPose> poses) =>
        poses.TakeWhile(p => p.EffortMm3 <= WorthRatio * poses[0].EffortMm3).Take(MostWorth);

    private const double LayerEffortMm3 = 5;
}
