namespace Platewright.Geometry;

/// <summary>What the edges tell: holes, crowded edges, flipped faces.</summary>
internal static class EdgeFindings
{
    public static void AddTo(FindingList findings, Mesh mesh, MeshTopology topology)
    {
        if (topology.OpenEdges > 0)
        {
            IReadOnlyList<IReadOnlyList<int>> rims = OpenRims.Of(mesh, topology);
            findings.Add(FindingCodes.Holes, rims.Count, n =>
                $"{n} {Words.Plural(n, "opening", "openings")} in the surface ({topology.OpenEdges} open edges): " +
                "inside and outside are not told apart there, so layers may come out wrong or be left out; close " +
                "them before printing. Fit needs only the hull and still holds.",
                OpenRims.PlacesOf(mesh, rims));
        }
        findings.Add(FindingCodes.CrowdedEdges, topology.CrowdedEdges, n =>
            $"{n} {Words.Plural(n, "edge is", "edges are")} shared by more than two triangles: solids that touch " +
            "along a line, or walls inside the part. The touching line holds nothing together when printed; separate " +
            "the solids or let them overlap.", MeshPlaces.MarkedEdges(mesh, topology, MeshTopology.CrowdedEdge));
        if (topology.TwistedEdges > 0)
        {
            (int flipped, List<int> some) = FindFlipped(mesh, topology);
            findings.Add(FindingCodes.FlippedFaces, flipped, n =>
                $"{n} {Words.Plural(n, "triangle faces", "triangles face")} the other way than their neighbours: " +
                "inside and outside change places there, and layers may come out wrong; turn them round before " +
                "printing.", some.Select(t => MeshPlaces.Middle(mesh, t)));
        }
    }

    /// <summary>Around twisted edges triangles change sides; in each connected patch the smaller side is the flipped
    /// one.</summary>
    /// <returns>How many are flipped, and the first few of them.</returns>
    private static (int Count, List<int> Some) FindFlipped(Mesh mesh, MeshTopology topology)
    {
        ILookup<int, int> twisted = topology.TwistedPairs
            .SelectMany(p => new[] { p, (p.Item2, p.Item1) }).ToLookup(p => p.Item1, p => p.Item2);
        sbyte[] side = new sbyte[mesh.TriangleCount];
        int flipped = 0;
        List<int> some = [], patch = [];
        Stack<int> open = new();
        foreach ((int first, _) in topology.TwistedPairs)
        {
            if (side[first] != 0) continue;
            int kept = 0, turned = 0;
            side[first] = 1;
            open.Push(first);
            patch.Clear();
            while (open.TryPop(out int t))
            {
                patch.Add(t);
                if (side[t] > 0) kept++;
                else turned++;
                for (int half = 3 * t; half < 3 * t + 3; half++)
                    if (topology.Mates[half] >= 0) Spread(topology.Mates[half] / 3, side[t]);
                foreach (int other in twisted[t]) Spread(other, (sbyte)-side[t]);
            }
            // A patch that can have no sides, such as a Möbius strip, has at least one triangle that faces wrong.
            flipped += Math.Max(1, Math.Min(kept, turned));
            int wrong = kept < turned ? 1 : -1;
            some.AddRange(patch.Where(t => side[t] == wrong).Take(Finding.MostPlaces - Math.Min(some.Count, Finding.MostPlaces)));
        }
        return (flipped, some);

        void Spread(int t, sbyte to)
        {
            if (side[t] != 0) return;
            side[t] = to;
            open.Push(t);
        }
    }
}
