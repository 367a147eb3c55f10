namespace Platewright.Build.Heat;

/// <summary>Heat that goes into the melt.</summary>
public static class Melt
{
    /// <summary>
    /// ρ·Q·c_p·(T_nozzle − T_feed), W. Sensible heat only: melts take 10 to 40 % more than the solid's c_p says, and
    /// semicrystalline families their heat of fusion besides (physics handbooks).
    /// </summary>
    /// <param name="flowMm3S">Q, mm³/s.</param>
    /// <param name="densityGCm3">ρ, g/cm³.</param>
    /// <param name="specificHeatJKgK">c_p, J/(kg·K).</param>
    /// <param name="feedC">Temperature of the filament, °C.</param>
    /// <param name="nozzleC">Temperature of the melt, °C.</param>
    public static double PowerW(
        double flowMm3S, double densityGCm3, double specificHeatJKgK, double feedC, double nozzleC) =>
        flowMm3S * densityGCm3 * 1e-6 * specificHeatJKgK * (nozzleC - feedC);
}
