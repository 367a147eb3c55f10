namespace Platewright.Fit;

/// <summary>How exactly to answer.</summary>
/// <param name="Tolerance">
/// Relative gap between the scale reached and the scale proved impossible at which the search stops, 1e-10 … 0.1.
/// </param>
/// <param name="TightMm">A fit with less clearance than this is called tight, mm: real travel differs from the stated
/// one (common practice, no source).</param>
/// <param name="MostCells">Cells of rotation space looked at before the bracket is left open.</param>
/// <param name="MostPieces">Largest number of pieces tried when the part may be cut.</param>
public sealed record FitOptions(
    double Tolerance = 1e-4, double TightMm = 2, int MostCells = 2_000_000, int MostPieces = 6)
{
    /// <summary>
    /// The gap for a part that fits at 100 % without tilting, where the tilted bracket decides nothing; at least
    /// <see cref="Tolerance"/>, which it is where null.
    /// </summary>
    public double? SettledTolerance { get; init; }
}
