namespace Platewright.Geometry;

/// <summary>A unit that the numbers of a mesh may have been drawn in.</summary>
/// <param name="Symbol">um, cm, m, in or ft; <c>in_twice</c> where inches seem to have been converted though they were
/// mm.</param>
/// <param name="Factor">What the numbers in mm would have to be multiplied by.</param>
/// <param name="LargestMm">The largest edge the part would then have, mm.</param>
public sealed record PlausibleUnit(string Symbol, double Factor, double LargestMm)
{
    // Sizes of desktop prints, most likely first: a judgement, no source.
    private const double UsualLeast = 20, UsualMost = 400, PossibleLeast = 5, PossibleMost = 1000;

    private static readonly (string Symbol, double Factor)[] Larger =
        [("in", 25.4), ("m", 1000), ("cm", 10), ("ft", 304.8)];

    private static readonly (string Symbol, double Factor)[] Smaller = [("um", 0.001), ("in_twice", 1 / 25.4)];

    /// <summary>The units that would bring a part of this size to a usual one, the most likely first.</summary>
    internal static IReadOnlyList<PlausibleUnit> For(double largestMm, HealthOptions options)
    {
        bool plausible = largestMm >= options.SmallestPlausibleMm && largestMm <= options.LargestPlausibleMm;
        if (plausible || !(largestMm > 0)) return [];
        PlausibleUnit[] all = [.. (largestMm < options.SmallestPlausibleMm ? Larger : Smaller)
            .Select(u => new PlausibleUnit(u.Symbol, u.Factor, largestMm * u.Factor))];
        return [.. all.Where(u => u.LargestMm is >= UsualLeast and <= UsualMost),
            .. all.Where(u => u.LargestMm is (>= PossibleLeast and < UsualLeast) or (> UsualMost and <= PossibleMost))];
    }

    /// <summary>In words: "inches (177.8 mm)".</summary>
    internal string InWords() => FormattableString.Invariant($"{Name} ({LargestMm:0.##} mm)");

    private string Name => Symbol switch
    {
        "um" => "micrometres",
        "cm" => "centimetres",
        "m" => "metres",
        "in" => "inches",
        "ft" => "feet",
        _ => "mm taken for inches and converted",
    };
}
