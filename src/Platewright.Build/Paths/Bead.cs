namespace Platewright.Build.Paths;

/// <summary>
/// The bead of a recipe: a stadium of width w and height h, so that beads that touch lie w − h(1 − π/4) apart and fill the
/// space between them exactly.
/// </summary>
/// <param name="WidthMm">w, mm.</param>
/// <param name="HeightMm">h, mm, at most w.</param>
public readonly record struct Bead(double WidthMm, double HeightMm)
{
    /// <summary>Distance of neighbouring beads, mm: area / height.</summary>
    public double PitchMm => WidthMm - HeightMm * (1 - Math.PI / 4);

    /// <summary>Cross-section, mm²: (w − h)h + πh²/4.</summary>
    public double AreaMm2 => (WidthMm - HeightMm) * HeightMm + Math.PI / 4 * HeightMm * HeightMm;
}
