namespace Platewright.Geometry;

/// <summary>Shells that stay together, with the hull around them; null where only the box is looked at.</summary>
internal sealed record ShellGroup(int[] Shells, TreeBox Box, ConvexHull? Hull)
{
    public static ShellGroup Of(Mesh mesh, int shell, ShellFacts facts, bool withHull)
    {
        TreeBox box = new(facts.Bounds.Min, facts.Bounds.Max);
        if (!withHull) return new ShellGroup([shell], box, null);
        HashSet<int> corners = [];
        foreach (int t in facts.Triangles)
            for (int half = 3 * t; half < 3 * t + 3; half++) corners.Add(mesh.Corners[half]);
        return new ShellGroup([shell], box, ConvexHull.Of([.. corners.Select(v => mesh.VertexArray[v])]));
    }

    public static ShellGroup Joined(ShellGroup[] groups)
    {
        if (groups.Length == 1) return groups[0];
        Vec3 min = groups[0].Box.Min, max = groups[0].Box.Max;
        List<Vec3> corners = [];
        foreach (ShellGroup g in groups)
        {
            (min, max) = (Vec3.Min(min, g.Box.Min), Vec3.Max(max, g.Box.Max));
            if (g.Hull is not null) corners.AddRange(g.Hull.Vertices);
        }
        ConvexHull? hull = corners.Count == 0 ? null : ConvexHull.Of([.. corners]);
        return new ShellGroup([.. groups.SelectMany(g => g.Shells)], new TreeBox(min, max), hull);
    }

    public bool Meets(ShellGroup other) =>
        Box.Touches(other.Box) && (Hull is null || other.Hull is null || !HullSeparation.AreApart(Hull, other.Hull));
}
