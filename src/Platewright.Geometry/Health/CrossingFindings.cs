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
        TriangleTree.Over(mesh, triangles).VisitClosePairs((t, u) =>
        {
            if (TriangleCrossing.Of(mesh, t, u))
            {
                int s = topology.Shells[t], r = topology.Shells[u];
                if (s == r) own++;
                else between.Add((Math.Min(s, r), Math.Max(s, r)));
            }
            return ++looked < MostPairs && own < MostFound && between.Count < MostFound;
        });
        findings.Add(FindingCodes.IntersectingShells, between.Count, n =>
            $"{AtLeast(n)}{n} {Words.Plural(n, "pair", "pairs")} of shells cut or touch each other. They print as " +
            "one body; unite them where they are drawn, as the stated volume counts what they share twice.");
        findings.Add(FindingCodes.SelfIntersections, own, n =>
            $"{AtLeast(n)}{n} {Words.Plural(n, "pair", "pairs")} of triangles cut each other " +
            "within a shell: inside and outside are not clear there. Most of it prints well, small features may come " +
            "out wrong.");
    }

    private static string AtLeast(int count) => count >= MostFound ? "At least " : "";
}
