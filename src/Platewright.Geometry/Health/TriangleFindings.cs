namespace Platewright.Geometry;

/// <summary>What single triangles tell: duplicates, triangles without area, slivers.</summary>
internal static class TriangleFindings
{
    /// <summary>A sliver is lower than this share of its longest edge …</summary>
    private const double SliverShare = 1e-3;

    /// <summary>… and lower than this, mm: a hundredth of what a motion system resolves (common practice, no
    /// source).</summary>
    private const double SliverMm = 1e-4;

    /// <summary>Triangles flatter than this share may have no area at all; only they are put to the exact
    /// test.</summary>
    private const double DoubtShare = 1e-9;

    public static void AddTo(FindingList findings, Mesh mesh, MeshTopology topology)
    {
        List<int> duplicates = FindDuplicates(mesh, topology);
        findings.Add(FindingCodes.DuplicateFaces, duplicates.Count, n =>
            $"{n} {Words.Plural(n, "triangle lies", "triangles lie")} exactly on another with the same corners: a " +
            "wall without thickness or a body drawn twice; delete the copies, as they may turn inside and outside " +
            "around.", duplicates.Select(t => MeshPlaces.Middle(mesh, t)));
        int[] kinds = new int[2 * Chunks.Count(mesh.TriangleCount)];
        Chunks.For(mesh.TriangleCount, (from, to) =>
        {
            int piece = Chunks.Piece(from);
            (kinds[2 * piece], kinds[2 * piece + 1]) = CountThin(mesh, from, to);
        });
        int degenerate = 0, slivers = 0;
        for (int i = 0; i < kinds.Length; i += 2)
            (degenerate, slivers) = (degenerate + kinds[i], slivers + kinds[i + 1]);
        findings.Add(FindingCodes.DegenerateFaces, degenerate, n =>
            $"{n} {Words.Plural(n, "triangle has", "triangles have")} no area: corners that coincide or lie on one " +
            "line. Harmless for printing by themselves, but programs that close holes may stumble over them.",
            ThinOf(mesh, Thinness.WithoutArea));
        findings.Add(FindingCodes.Slivers, slivers, n =>
            $"{n} {Words.Plural(n, "triangle is", "triangles are")} thinner than a tenth of a micrometre. Harmless " +
            "for printing; exporting again with a coarser or finer setting mostly removes them.",
            ThinOf(mesh, Thinness.Sliver));
    }

    private enum Thinness
    {
        None,
        Sliver,
        WithoutArea,
    }

    private static (int Degenerate, int Slivers) CountThin(Mesh mesh, int from, int to)
    {
        int degenerate = 0, slivers = 0;
        for (int t = from; t < to; t++)
        {
            Thinness thin = ThinnessOf(mesh, t);
            if (thin == Thinness.WithoutArea) degenerate++;
            else if (thin == Thinness.Sliver) slivers++;
        }
        return (degenerate, slivers);
    }

    private static Thinness ThinnessOf(Mesh mesh, int t)
    {
        (Vec3 a, Vec3 b, Vec3 c) = mesh.Triangle(t);
        Vec3 ab = b - a, bc = c - b, ca = a - c;
        double longest = Math.Max(ab.Dot(ab), Math.Max(bc.Dot(bc), ca.Dot(ca)));
        Vec3 twice = ab.Cross(ca);
        double squared = twice.Dot(twice);
        // Height of the triangle over its longest edge: twice the area divided by the edge.
        if (squared > SliverShare * SliverShare * longest * longest) return Thinness.None;
        if (squared > SliverMm * SliverMm * longest) return Thinness.None;
        return squared <= DoubtShare * DoubtShare * longest * longest && Orientation.OnOneLine(a, b, c)
            ? Thinness.WithoutArea : Thinness.Sliver;
    }

    // Only walked as far as the places that are shown, and only where there are some.
    private static IEnumerable<FindingPlace> ThinOf(Mesh mesh, Thinness thin) =>
        Enumerable.Range(0, mesh.TriangleCount).Where(t => ThinnessOf(mesh, t) == thin)
            .Select(t => MeshPlaces.LongestEdge(mesh, t));

    private static List<int> FindDuplicates(Mesh mesh, MeshTopology topology)
    {
        HashSet<(int, int, int)> seen = [];
        List<int> duplicates = [];
        for (int t = 0; t < mesh.TriangleCount; t++)
        {
            ReadOnlySpan<int> mates = topology.Mates.Slice(3 * t, 3);
            if (mates[0] == MeshTopology.NoEdge) continue;
            // A copy crowds or twists an edge it shares, or is the mate over two edges and more.
            bool suspect = Suspect(mates[0]) || Suspect(mates[1]) || Suspect(mates[2])
                || mates[0] / 3 == mates[1] / 3 || mates[1] / 3 == mates[2] / 3;
            if (!suspect) continue;
            int a = mesh.Corners[3 * t], b = mesh.Corners[3 * t + 1], c = mesh.Corners[3 * t + 2];
            int low = Math.Min(a, Math.Min(b, c)), high = Math.Max(a, Math.Max(b, c));
            if (!seen.Add((low, a ^ b ^ c ^ low ^ high, high))) duplicates.Add(t);
        }
        return duplicates;
    }

    private static bool Suspect(int mate) => mate is MeshTopology.TwistedEdge or MeshTopology.CrowdedEdge;
}
