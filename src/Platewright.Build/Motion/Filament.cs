namespace Platewright.Build.Motion;

/// <summary>Round filament: how its length, volume and mass go together.</summary>
/// <param name="DiameterMm">Above 0; 1.75 and 2.85 are usual.</param>
public readonly record struct Filament(double DiameterMm)
{
    /// <summary>Section, mm²: also mm³ per mm.</summary>
    public double AreaMm2 => Math.PI * DiameterMm * DiameterMm / 4;

    /// <summary>Grams of a length in mm; density in g/cm³.</summary>
    public double MassG(double lengthMm, double densityGCm3) => lengthMm * AreaMm2 * densityGCm3 / 1000;

    /// <summary>Millimetres of a mass in g; density in g/cm³.</summary>
    public double LengthMm(double massG, double densityGCm3) => massG * 1000 / (densityGCm3 * AreaMm2);
}
