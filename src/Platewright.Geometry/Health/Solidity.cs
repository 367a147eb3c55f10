namespace Platewright.Geometry;

/// <summary>Does a mesh enclose anything?</summary>
internal static class Solidity
{
    /// <summary>A closed mesh that fills less than this share of its hull encloses nothing but rounding.</summary>
    private const double LeastShare = 1e-9;

    public const string Message =
        "The mesh encloses nothing: it is flat or a sheet without thickness, and nothing of it would be printed. " +
        "Give it a thickness where it is drawn.";

    public static bool IsNothing(MeshTopology topology, MeshMeasures measures, ConvexHull? hull) =>
        hull is null || hull.Dimension < 3 || topology.ShellCount == 0
        || (topology.IsBalanced && Math.Abs(measures.SignedVolumeMm3) <= LeastShare * hull.VolumeMm3);

    public static Vec3 CentreOfMass(MeshTopology topology, MeshMeasures measures, bool nothing) =>
        topology.IsBalanced && !nothing ? measures.SolidCentre : measures.SurfaceCentre;
}
