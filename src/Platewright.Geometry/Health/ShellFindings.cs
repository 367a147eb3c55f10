namespace Platewright.Geometry;

/// <summary>What whole shells tell: inside out, one in another, hollow, loose.</summary>
internal static class ShellFindings
{
    /// <summary>Triangles visited at most for the question which shell lies in which; boxes alone decide the
    /// rest.</summary>
    private const long MostWork = 20_000_000;

    public static void AddTo(FindingList findings, Mesh mesh, MeshTopology topology, ShellFacts[] shells, bool nothing)
    {
        (List<ShellFacts> insideOut, List<ShellFacts> nested, List<ShellFacts> cavities) = Classify(mesh, shells);
        findings.Add(FindingCodes.InsideOutShells, insideOut.Count, n =>
            $"{n} {Words.Plural(n, "shell is", "shells are")} inside out: every triangle faces inward, so the solid " +
            "reads as a hole and may not be printed; turn the triangles round.", Places(insideOut));
        findings.Add(FindingCodes.NestedShells, nested.Count, n =>
            $"{n} {Words.Plural(n, "shell lies", "shells lie")} wholly inside another solid one: material is drawn " +
            "twice there. It prints as one, or with a hole where even-odd filling is used; the stated volume counts " +
            "it twice.", Places(nested));
        findings.Add(FindingCodes.SealedCavities, cavities.Count, n =>
            $"{n} closed hollow {Words.Plural(n, "space", "spaces")} inside the part: the roof prints in the air, " +
            "and support in there cannot be taken out.", Places(cavities));
        if (nothing || shells.Length < 2) return;
        IReadOnlyList<IReadOnlyList<int>> groups = ShellSeparation.Group(mesh, topology);
        findings.Add(FindingCodes.LooseShells, groups.Count > 1 ? groups.Count : 0, n =>
            $"The file holds {n} bodies that lie apart, perhaps a whole plate of parts: they are judged together as " +
            "they lie. Separating them judges each for itself.",
            Places(groups.Select(g => shells[g[0]])));

        IEnumerable<FindingPlace> Places(IEnumerable<ShellFacts> some) =>
            some.Select(s => MeshPlaces.Middle(mesh, s.Triangles[0]));
    }

    private static (List<ShellFacts> InsideOut, List<ShellFacts> Nested, List<ShellFacts> Cavities) Classify(
        Mesh mesh, ShellFacts[] shells)
    {
        List<ShellFacts> insideOut = [], nested = [], cavities = [];
        int[] largestFirst = [.. Enumerable.Range(0, shells.Length).OrderByDescending(s => Size(shells[s]))];
        long work = 0;
        for (int i = 0; i < largestFirst.Length; i++)
        {
            ShellFacts own = shells[largestFirst[i]];
            if (!own.IsBalanced || own.SignedVolumeMm3 == 0) continue;
            int around = 0;
            Vec3 probe = mesh.Triangle(own.Triangles[0]).A;
            for (int j = 0; j < i; j++)
            {
                ShellFacts other = shells[largestFirst[j]];
                work++;
                if (!other.IsBalanced || !Holds(other.Bounds, own.Bounds)) continue;
                work += other.Triangles.Length;
                if (work > MostWork) break;
                around += (int)Math.Round(other.WindingAround(mesh, probe));
            }
            if (own.SignedVolumeMm3 < 0 && around <= 0) insideOut.Add(own);
            else if (own.SignedVolumeMm3 < 0) cavities.Add(own);
            else if (around > 0) nested.Add(own);
        }
        return (insideOut, nested, cavities);
    }

    private static double Size(ShellFacts shell) => shell.Bounds.Size.Length;

    private static bool Holds(Bounds3 outer, Bounds3 inner) =>
        outer.Min.X <= inner.Min.X && outer.Min.Y <= inner.Min.Y && outer.Min.Z <= inner.Min.Z
        && outer.Max.X >= inner.Max.X && outer.Max.Y >= inner.Max.Y && outer.Max.Z >= inner.Max.Z;
}
