namespace Platewright.Build.Motion;

/// <summary>Heat that goes into the material as it melts.</summary>
public static class MeltHeat
{
    private const double CubicMillimetresPerCubicMetre = 1e9;

    /// <summary>Power, W: ρ·Q·c_p·ΔT, sensible heat alone (amorphous materials take no heat of fusion).</summary>
    public static double PowerW(double densityKgM3, double heatJKgK, double rateMm3S, double riseK) =>
        densityKgM3 * rateMm3S / CubicMillimetresPerCubicMetre * heatJKgK * riseK;
}
