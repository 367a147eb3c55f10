namespace Platewright.Build.Motion;

/// <summary>The section of a bead: a stadium, flat above and below with round sides, mm and mm².</summary>
public static class Bead
{
    /// <summary>(w − h)·h + π·h²/4.</summary>
    /// <param name="widthMm">At least the height.</param>
    /// <param name="heightMm">Layer height, above 0.</param>
    public static double AreaMm2(double widthMm, double heightMm)
    {
        if (!(heightMm > 0 && widthMm >= heightMm))
        {
            throw new ArgumentException(
                $"A bead is at least as wide as high, found {widthMm} × {heightMm} mm.", nameof(widthMm));
        }
        return (widthMm - heightMm) * heightMm + Math.PI * heightMm * heightMm / 4;
    }

    /// <summary>Distance between beads that fill the layer between them, mm: area / height.</summary>
    public static double TouchingPitchMm(double widthMm, double heightMm) => AreaMm2(widthMm, heightMm) / heightMm;
}
