using Platewright.Machines;

namespace Platewright.Build.Care;

/// <summary>How much a part wants to curl off the build surface.</summary>
public enum WarpRank
{
    Low,
    Medium,
    High,
}

/// <summary>
/// An indicative rank, not a forecast: the length that lies on the build surface × the material's mould shrinkage × how
/// far the air around it is below the softening point, as a share of 100 K. What the shrinkage that is locked in
/// between softening and the chamber would draw in along that length, in millimetres for each 100 K.
/// </summary>
/// <param name="ContactMm">Longest extent of what touches the build surface, mm.</param>
/// <param name="Shrinkage">Mould shrinkage of the material.</param>
/// <param name="BelowSofteningK">Softening point less the air around the part, not below 0, K.</param>
/// <param name="Material">Name of the material.</param>
public sealed record WarpRisk(double ContactMm, double Shrinkage, double BelowSofteningK, string Material)
{
    // Where the ranks begin, chosen so that a palm-sized part of PLA is low, a hand's length of ABS in an open frame is
    // high and in a warm chamber medium: common practice, no source.
    private const double MediumFrom = 0.2, HighFrom = 0.6;

    private const double PerK = 100;

    /// <summary>The product, mm.</summary>
    public double IndexMm => ContactMm * Shrinkage * BelowSofteningK / PerK;

    public WarpRank Rank =>
        IndexMm >= HighFrom ? WarpRank.High : IndexMm >= MediumFrom ? WarpRank.Medium : WarpRank.Low;

    public string Sentence =>
        $"Warp risk {Rank.ToString().ToLowerInvariant()}: {ContactMm:0} mm on the build surface, {Material} shrinks "
        + $"{100 * Shrinkage:0.0#} % and the air is {BelowSofteningK:0} K below its softening point. "
        + "A rank to compare by, not a forecast.";

    /// <param name="material">The material.</param>
    /// <param name="contactMm">Longest extent of what touches the build surface, not negative, mm.</param>
    /// <param name="chamberC">Air around the part, °C: of the room in an open frame.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is negative or not a number.</exception>
    public static WarpRisk Of(Material material, double contactMm, double chamberC)
    {
        if (!(contactMm >= 0))
            throw new ArgumentOutOfRangeException(nameof(contactMm), contactMm, "a length is not negative");
        double below = Math.Max(0, material.SofteningC - chamberC);
        return new WarpRisk(contactMm, material.MouldShrinkage, below, material.Name);
    }
}
