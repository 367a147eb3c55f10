namespace Platewright.Build.Heat;

/// <summary>
/// Properties of dry air at atmospheric pressure: Incropera &amp; DeWitt, Fundamentals of Heat and Mass Transfer,
/// table A.4 (values from memory), linear between its rows and beyond them down to 200 K and up to 600 K.
/// </summary>
/// <param name="DensityKgM3">ρ, kg/m³.</param>
/// <param name="SpecificHeatJKgK">c_p, J/(kg·K).</param>
/// <param name="ConductivityWMK">k, W/(m·K).</param>
/// <param name="ViscosityM2S">ν, kinematic, m²/s.</param>
/// <param name="Prandtl">Pr = ν/α.</param>
public readonly record struct Air(
    double DensityKgM3, double SpecificHeatJKgK, double ConductivityWMK, double ViscosityM2S, double Prandtl)
{
    /// <summary>0 °C in K.</summary>
    public const double KelvinOffset = 273.15;

    private const double FirstRowK = 250, RowStepK = 50, LowestK = 200, HighestK = 600;

    // 250, 300, 350, 400 and 450 K.
    private static readonly Air[] Table =
    [
        new(1.3947, 1006, 0.0223, 11.44e-6, 0.720),
        new(1.1614, 1007, 0.0263, 15.89e-6, 0.707),
        new(0.9950, 1009, 0.0300, 20.92e-6, 0.700),
        new(0.8711, 1014, 0.0338, 26.41e-6, 0.690),
        new(0.7740, 1021, 0.0373, 32.39e-6, 0.686),
    ];

    /// <summary>α = ν/Pr, m²/s.</summary>
    public double DiffusivityM2S => ViscosityM2S / Prandtl;

    /// <param name="kelvin">Temperature, K; outside 200 … 600 the nearer end counts.</param>
    public static Air At(double kelvin)
    {
        double rows = (Math.Clamp(kelvin, LowestK, HighestK) - FirstRowK) / RowStepK;
        int i = Math.Clamp((int)Math.Floor(rows), 0, Table.Length - 2);
        double share = rows - i;
        Air a = Table[i], b = Table[i + 1];
        return new Air(
            a.DensityKgM3 + share * (b.DensityKgM3 - a.DensityKgM3),
            a.SpecificHeatJKgK + share * (b.SpecificHeatJKgK - a.SpecificHeatJKgK),
            a.ConductivityWMK + share * (b.ConductivityWMK - a.ConductivityWMK),
            a.ViscosityM2S + share * (b.ViscosityM2S - a.ViscosityM2S),
            a.Prandtl + share * (b.Prandtl - a.Prandtl));
    }
}
