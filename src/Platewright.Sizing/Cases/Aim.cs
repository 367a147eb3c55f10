using System.Collections.Immutable;

namespace Platewright.Sizing.Cases;

/// <summary>What the answer must reach, and the limits it must keep; null for no limit.</summary>
/// <param name="CoverShare">Share of the work to cover, greater than 0, at most 1.</param>
/// <param name="Budget">For buying, tax included, in the currency of the case.</param>
/// <param name="FloorM2">Floor for all machines together, m².</param>
/// <param name="CircuitW">What all machines may draw together, W.</param>
/// <param name="LoudestDb">Machines that are louder are out, dB(A).</param>
/// <param name="MostMachines">All together; at least 1.</param>
/// <param name="Owned">Ids of machines that are there already: they cost no purchase. One may be named several times.</param>
public sealed record Aim(
    double CoverShare, decimal? Budget, double? FloorM2, double? CircuitW, double? LoudestDb, int? MostMachines,
    ImmutableArray<string> Owned)
{
    /// <summary>0.9: our choice; nobody buys for the last request in ten.</summary>
    public const double UsualShare = 0.9;

    public static readonly Aim None = new(UsualShare, null, null, null, null, null, []);
}
