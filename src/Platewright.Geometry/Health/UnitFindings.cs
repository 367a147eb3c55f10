namespace Platewright.Geometry;

/// <summary>Is the part of a size that people print?</summary>
internal static class UnitFindings
{
    /// <summary>So many units are named in the sentence, the likeliest.</summary>
    private const int MostNamed = 2;

    public static IReadOnlyList<PlausibleUnit> AddTo(FindingList findings, Mesh mesh, HealthOptions options)
    {
        Vec3 size = mesh.Bounds.Size;
        double largest = Math.Max(size.X, Math.Max(size.Y, size.Z));
        IReadOnlyList<PlausibleUnit> units = PlausibleUnit.For(largest, options);
        bool doubtful = largest > 0 && (largest < options.SmallestPlausibleMm || largest > options.LargestPlausibleMm);
        if (!doubtful) return units;
        string named = string.Join(" or ", units.Take(MostNamed).Select(u => u.InWords()));
        string cause = units.Count == 0 ? "No usual unit would make that plausible."
            : $"It would be plausible if the numbers were {named}.";
        string source = options.UnitIsAssumed ? "Nothing was changed; say the unit if it is another."
            : "The unit was stated, so nothing was changed.";
        findings.Add(FindingCodes.UnitDoubt, 1, $"The part is {Words.Length(largest)} long. {cause} {source}");
        return units;
    }
}
