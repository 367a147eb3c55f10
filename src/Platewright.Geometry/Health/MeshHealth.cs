namespace Platewright.Geometry;

/// <summary>
/// Examines a mesh: weld → edges and shells → measures → findings. No mesh, however broken, makes it throw, and none is
/// repaired: what is wrong is counted and said.
/// </summary>
public static class MeshHealth
{
    public static MeshReport Examine(Mesh mesh, HealthOptions? options = null)
    {
        options ??= HealthOptions.Default;
        Mesh welded = Welding.Weld(FiniteTriangles.Of(mesh, out int notFinite));
        MeshTopology topology = MeshTopology.Of(welded);
        MeshMeasures measures = MeshMeasures.Of(welded);
        ConvexHull? hull = welded.Vertices.IsEmpty ? null : ConvexHull.Of(welded.Vertices);
        bool flat = Solidity.IsNothing(topology, measures, hull);
        FindingList findings = new();

        findings.Add(FindingCodes.NotFinite, notFinite, n =>
            $"{n} {Words.Plural(n, "triangle has a corner", "triangles have corners")} that is no number; left out " +
            "of everything.");
        EdgeFindings.AddTo(findings, welded, topology);
        TriangleFindings.AddTo(findings, welded, topology);
        ShellFacts[] shells = ShellFacts.Of(welded, topology);
        ShellFindings.AddTo(findings, welded, topology, shells, flat);
        CrossingFindings.AddTo(findings, welded, topology, options);
        if (flat) findings.Add(FindingCodes.NothingSolid, 1, Solidity.Message);
        double? wall = flat ? null : WallFindings.AddTo(findings, welded, options);
        IReadOnlyList<PlausibleUnit> units = UnitFindings.AddTo(findings, welded, options);
        return new MeshReport
        {
            Mesh = welded,
            Hull = hull,
            Triangles = mesh.TriangleCount,
            Vertices = welded.Vertices.Length,
            Shells = topology.ShellCount,
            IsClosed = topology.IsClosed && notFinite == 0,
            IsBalanced = topology.IsBalanced && notFinite == 0,
            SignedVolumeMm3 = measures.SignedVolumeMm3,
            AreaMm2 = measures.AreaMm2,
            Bounds = welded.Bounds,
            CentreOfMass = Solidity.CentreOfMass(topology, measures, flat),
            ThinnestWallMm = wall,
            PlausibleUnits = units,
            Findings = findings.All,
        };
    }
}
