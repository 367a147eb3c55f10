namespace Platewright.Build.Heat;

/// <summary>
/// Handbook correlations for the heat that still or stirred air takes from a surface. Nusselt number Nu = h·L/k.
/// A tenth either way is a fair tolerance for any of them (Thermo 2023, 3:10).
/// </summary>
public static class Convection
{
    /// <summary>Standard gravity rounded as the handbooks do, m/s².</summary>
    public const double Gravity = 9.81;

    // [1 + (0.492/Pr)^(9/16)]^(8/27) at the Pr of air, and its slope.
    private const double UsualPrandtl = 0.7, UsualSpread = 1.19419, SpreadSlope = -0.1269;

    // Raithby & Hollands join laminar and turbulent heated plates by this power (Handbook of Heat Transfer, ch. 4).
    private const double JoiningPower = 10;

    /// <summary>Ra = g·β·ΔT·L³/(ν·α).</summary>
    /// <param name="perKelvin">β, 1/K; 1/T for a gas.</param>
    /// <param name="differenceK">ΔT between surface and air, not negative, K.</param>
    /// <param name="lengthM">L, m.</param>
    /// <param name="viscosityM2S">ν, m²/s.</param>
    /// <param name="diffusivityM2S">α, m²/s.</param>
    /// <param name="gravity">g, m/s².</param>
    public static double Rayleigh(
        double perKelvin, double differenceK, double lengthM, double viscosityM2S, double diffusivityM2S,
        double gravity = Gravity) =>
        gravity * perKelvin * differenceK * lengthM * lengthM * lengthM / (viscosityM2S * diffusivityM2S);

    /// <summary>Vertical plate at any Ra, L its height: Churchill &amp; Chu 1975 (Incropera eq. 9.26).</summary>
    public static double Vertical(double rayleigh, double prandtl) =>
        Upright(rayleigh, Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27));

    /// <summary>The same for air, 0.68 ≤ Pr ≤ 0.73, where the powers of Pr are linear to 10⁻⁴.</summary>
    internal static double VerticalInAir(double rayleigh, double prandtl) =>
        Upright(rayleigh, UsualSpread + SpreadSlope * (prandtl - UsualPrandtl));

    private static double Upright(double rayleigh, double spread)
    {
        double root = 0.825 + 0.387 * Math.Cbrt(Math.Sqrt(rayleigh)) / spread;
        return root * root;
    }

    /// <summary>Vertical plate, laminar, Ra ≤ 10⁹: Churchill &amp; Chu 1975 (Incropera eq. 9.27).</summary>
    public static double VerticalLaminar(double rayleigh, double prandtl) =>
        0.68 + 0.670 * Math.Pow(rayleigh, 0.25) / Math.Pow(1 + Math.Pow(0.492 / prandtl, 9.0 / 16), 4.0 / 9);

    /// <summary>
    /// Vertical plate, laminar, from the integral equations: Squire &amp; Eckert (Lienhard, A Heat Transfer Textbook,
    /// eq. 8.27).
    /// </summary>
    public static double VerticalIntegral(double rayleigh, double prandtl) =>
        0.678 * Math.Pow(rayleigh * prandtl / (0.952 + prandtl), 0.25);

    /// <summary>Hot face up, 10⁴ ≤ Ra ≤ 10⁷, L = area/perimeter (Incropera eq. 9.30).</summary>
    public static double UpwardLaminar(double rayleigh) => 0.54 * Math.Sqrt(Math.Sqrt(rayleigh));

    /// <summary>Hot face up, 10⁷ ≤ Ra ≤ 10¹¹, L = area/perimeter (Incropera eq. 9.31).</summary>
    public static double UpwardTurbulent(double rayleigh) => 0.15 * Math.Cbrt(rayleigh);

    /// <summary>
    /// Hot face up at any Ra, without the jump of 8 % between the two: (Nu_l¹⁰ + Nu_t¹⁰)^(1/10), as Raithby and
    /// Hollands join theirs. At most 7 % above the greater of the two.
    /// </summary>
    public static double Upward(double rayleigh)
    {
        double laminar = UpwardLaminar(rayleigh), turbulent = UpwardTurbulent(rayleigh);
        double greater = Math.Max(laminar, turbulent);
        if (greater == 0) return 0;
        double ratio = Math.Min(laminar, turbulent) / greater;
        double fifth = ratio * ratio * ratio * ratio * ratio;
        return greater * Math.Pow(1 + fifth * fifth, 1 / JoiningPower);
    }

    /// <summary>Hot face down, 10⁵ ≤ Ra ≤ 10¹⁰, L = area/perimeter (Incropera eq. 9.32).</summary>
    public static double Downward(double rayleigh) => 0.27 * Math.Sqrt(Math.Sqrt(rayleigh));

    /// <summary>
    /// Mean over a flat plate in a laminar stream, Re ≤ 5·10⁵: 0.664·√Re·∛Pr (Incropera eq. 7.30, from memory).
    /// </summary>
    /// <param name="speedMS">Speed of the air, m/s.</param>
    /// <param name="lengthM">Length along the stream, m.</param>
    public static double Stream(double speedMS, double lengthM, Air air) =>
        0.664 * Math.Sqrt(speedMS * lengthM / air.ViscosityM2S) * Math.Cbrt(air.Prandtl);
}
