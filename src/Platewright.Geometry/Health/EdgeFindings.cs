namespace Platewright.Geometry;

/// <summary>What the edges tell: holes, crowded edges, flipped faces.</summary>
internal static class EdgeFindings
{
    public static void AddTo(FindingList findings, Mesh mesh, MeshTopology topology)
    {
        if (topology.OpenEdges > 0)
        {
            findings.Add(FindingCodes.Holes, CountHoles(mesh, topology), n =>
                $"{n} {Words.Plural(n, "opening", "openings")} in the surface ({topology.OpenEdges} open edges): " +
                "inside and outside are not told apart there, so layers may come out wrong or be left out; close " +
                "them before printing. Fit needs only the hull and still holds.");
        }
        findings.Add(FindingCodes.CrowdedEdges, topology.CrowdedEdges, n =>
            $"{n} {Words.Plural(n, "edge is", "edges are")} shared by more than two triangles: solids that touch " +
            "along a line, or walls inside the part. The touching line holds nothing together when printed; separate " +
            "the solids or let them overlap.");
        if (topology.TwistedEdges > 0)
        {
            findings.Add(FindingCodes.FlippedFaces, CountFlipped(mesh, topology), n =>
                $"{n} {Words.Plural(n, "triangle faces", "triangles face")} the other way than their neighbours: " +
                "inside and outside change places there, and layers may come out wrong; turn them round before " +
                "printing.");
        }
    }

    /// <summary>Open edges that hang together by their vertices are one hole.</summary>
    private static int CountHoles(Mesh mesh, MeshTopology topology)
    {
        Dictionary<int, int> parent = [];
        int holes = 0;
        for (int half = 0; half < topology.Mates.Length; half++)
        {
            if (topology.Mates[half] != MeshTopology.OpenEdge) continue;
            int from = mesh.Corners[half], to = mesh.Corners[half % 3 == 2 ? half - 2 : half + 1];
            if (parent.TryAdd(from, from)) holes++;
            if (parent.TryAdd(to, to)) holes++;
            (from, to) = (Root(parent, from), Root(parent, to));
            if (from == to) continue;
            parent[from] = to;
            holes--;
        }
        return holes;
    }

    private static int Root(Dictionary<int, int> parent, int v)
    {
        while (parent[v] != v) v = parent[v] = parent[parent[v]];
        return v;
    }

    /// <summary>Around twisted edges triangles change sides; in each connected patch the smaller side is the flipped
    /// one.</summary>
    private static int CountFlipped(Mesh mesh, MeshTopology topology)
    {
        ILookup<int, int> twisted = topology.TwistedPairs
            .SelectMany(p => new[] { p, (p.Item2, p.Item1) }).ToLookup(p => p.Item1, p => p.Item2);
        sbyte[] side = new sbyte[mesh.TriangleCount];
        int flipped = 0;
        Stack<int> open = new();
        foreach ((int first, _) in topology.TwistedPairs)
        {
            if (side[first] != 0) continue;
            int kept = 0, turned = 0;
            side[first] = 1;
            open.Push(first);
            while (open.TryPop(out int t))
            {
                if (side[t] > 0) kept++;
                else turned++;
                for (int half = 3 * t; half < 3 * t + 3; half++)
                    if (topology.Mates[half] >= 0) Spread(topology.Mates[half] / 3, side[t]);
                foreach (int other in twisted[t]) Spread(other, (sbyte)-side[t]);
            }
            // A patch that can have no sides, such as a Möbius strip, has at least one triangle that faces wrong.
            flipped += Math.Max(1, Math.Min(kept, turned));
        }
        return flipped;

        void Spread(int t, sbyte to)
        {
            if (side[t] != 0) return;
            side[t] = to;
            open.Push(t);
        }
    }
}
