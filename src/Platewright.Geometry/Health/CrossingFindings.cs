namespace Platewright.Geometry;

/// <summary>Faces that cut each other, within one shell or between two.</summary>
internal static class CrossingFindings
{
    /// <summary>The search ends when so many pairs are found: a badly broken mesh has millions.</summary>
    private const int MostFound = 1000;

    /// <summary>… or when so many pairs were looked at.</summary>
    private const int MostPairs = 10_000_000;

    public static void AddTo(FindingList findings, Mesh mesh, MeshTopology topology, HealthOptions options)
    {
        if (options.MostTrianglesForCrossings == 0) return;
        if (mesh.TriangleCount > options.MostTrianglesForCrossings)
        {
            findings.Add(FindingCodes.CrossingsNotChecked, mesh.TriangleCount, n =>
                $"With {n} triangles the mesh was not searched for faces that cut each other (the limit is " +
                $"{options.MostTrianglesForCrossings}).");
            return;
        }
        int[] triangles = [.. Enumerable.Range(0, mesh.TriangleCount)
            .Where(t => topology.Mates[3 * t] != MeshTopology.NoEdge)];
        int own = 0, looked = 0;
        HashSet<(int, int)> between = [];
        List<FindingPlace> ownPlaces = [], betweenPlaces = [];
        TriangleTree.Over(mesh, triangles).VisitClosePairs((t, u) =>
        {
            if (TriangleCrossing.Of(mesh, t, u))
            {
                int s = topology.Shells[t], r = topology.Shells[u];
                if (s == r)
                {
                    if (own++ < Finding.MostPlaces) ownPlaces.Add(Smaller(mesh, t, u));
                }
                else if (between.Add((Math.Min(s, r), Math.Max(s, r))) && between.Count <= Finding.MostPlaces)
                {
                    betweenPlaces.Add(Smaller(mesh, t, u));
                }
            }
            return ++looked < MostPairs && own < MostFound && between.Count < MostFound;
        });
        findings.Add(FindingCodes.IntersectingShells, between.Count, n =>
            $"{AtLeast(n)}{n} {Words.Plural(n, "pair", "pairs")} of shells cut or touch each other. They print as " +
            "one body; unite them where they are drawn, as the stated volume counts what they share twice.", betweenPlaces);
        findings.Add(FindingCodes.SelfIntersections, own, n =>
            $"{AtLeast(n)}{n} {Words.Plural(n, "pair", "pairs")} of triangles cut each other " +
            "within a shell: inside and outside are not clear there. Most of it prints well, small features may come " +
            "out wrong.", ownPlaces);
    }

    // The crossing lies on both: nearer to the middle of the smaller one.
    private static FindingPlace Smaller(Mesh mesh, int t, int u)
    {
        FindingPlace one = MeshPlaces.LongestEdge(mesh, t), other = MeshPlaces.LongestEdge(mesh, u);
        return MeshPlaces.Middle(mesh, (one.To - one.From).Length <= (other.To - other.From).Length ? t : u);
    }

    private static string AtLeast(int count) => count >= MostFound ? "At least " : "";
}
