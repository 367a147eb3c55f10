namespace Platewright.Geometry;

/// <summary>Parts of one shape.</summary>
/// <param name="First">Index of the part that the others are compared with.</param>
/// <param name="Others">The others, in ascending order, with what makes them alike to the first.</param>
public sealed record AlikeGroup(int First, IReadOnlyList<(int Part, Likeness Likeness)> Others)
{
    /// <summary>
    /// Groups of two and more, in order of their first part. Every part is compared with the first of each group so
    /// far; those without a signature are like none.
    /// </summary>
    public static IReadOnlyList<AlikeGroup> Of(IReadOnlyList<ShapeSignature?> parts)
    {
        List<(int First, List<(int, Likeness)> Others)> groups = [];
        for (int i = 0; i < parts.Count; i++)
        {
            if (parts[i] is not { } own) continue;
            bool found = false;
            foreach ((int first, List<(int, Likeness)> others) in groups)
            {
                Likeness likeness = Likeness.Compare(parts[first]!, own);
                if (likeness.Kind == LikenessKind.None) continue;
                others.Add((i, likeness));
                found = true;
                break;
            }
            if (!found) groups.Add((i, []));
        }
        return [.. groups.Where(g => g.Others.Count > 0).Select(g => new AlikeGroup(g.First, g.Others))];
    }
}
