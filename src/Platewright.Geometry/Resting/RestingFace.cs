namespace Platewright.Geometry;

/// <summary>How a part stands on one face of its hull.</summary>
/// <param name="Face">Index into <see cref="ConvexHull.Faces"/>.</param>
/// <param name="HeightMm">How high the part stands, mm.</param>
/// <param name="TipDegrees">How far it may be tipped before it falls over an edge of the face, degrees; negative where
/// the centre of mass is beside the face, so that it falls by itself.</param>
/// <param name="FaceAreaMm2">Area of the hull's face, mm²; what of it the part really touches is
/// <see cref="ContactArea"/>.</param>
public sealed record RestingFace(int Face, double HeightMm, double TipDegrees, double FaceAreaMm2)
{
    public bool IsStable => TipDegrees > 0;

    /// <summary>Every face of the hull, the most stable first.</summary>
    /// <param name="hull">Hull of the part; a flat one has its two sides, a thinner one none.</param>
    /// <param name="centreOfMass">Of the part itself, in the hull's coordinates.</param>
    public static IReadOnlyList<RestingFace> Of(ConvexHull hull, Vec3 centreOfMass)
    {
        List<RestingFace> faces = [];
        for (int f = 0; f < hull.Faces.Count; f++)
        {
            HullFace face = hull.Faces[f];
            double height = hull.Support(face.Normal) + hull.Support(-face.Normal);
            faces.Add(new RestingFace(f, height, TipAngle(hull, face, centreOfMass), face.AreaMm2));
        }
        return [.. faces.OrderByDescending(f => f.TipDegrees).ThenBy(f => f.Face)];
    }

    private static double TipAngle(ConvexHull hull, HullFace face, Vec3 centre)
    {
        double above = Math.Max(0, face.OffsetMm - face.Normal.Dot(centre));
        double least = Math.PI / 2;
        for (int i = 0; i < face.Corners.Count; i++)
        {
            Vec3 a = hull.Vertices[face.Corners[i]], b = hull.Vertices[face.Corners[(i + 1) % face.Corners.Count]];
            Vec3 inward = face.Normal.Cross(b - a).Normalized();
            least = Math.Min(least, Math.Atan2(inward.Dot(centre - a), above));
        }
        return least * 180 / Math.PI;
    }
}
