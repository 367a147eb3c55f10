namespace Platewright.Build.Heat;

/// <summary>Heat exchanged by radiation between a grey surface and large surroundings.</summary>
public static class Radiation
{
    /// <summary>σ, W/(m²·K⁴), as the handbooks round it.</summary>
    public const double StefanBoltzmann = 5.67e-8;

    /// <summary>Of anodised metal, glass and polymers: 0.8 … 0.95 (physics handbooks).</summary>
    public const double UsualEmissivity = 0.9;

    /// <summary>ε·σ·(T⁴ − T_s⁴), W/m², exact; temperatures in °C.</summary>
    public static double FluxWM2(double emissivity, double surfaceC, double surroundingsC)
    {
        double a = surfaceC + Air.KelvinOffset, b = surroundingsC + Air.KelvinOffset;
        return emissivity * StefanBoltzmann * (a - b) * (a + b) * (a * a + b * b);
    }

    /// <summary>h = 4·ε·σ·T_m³, W/(m²·K): the linearised form at the mean temperature, K.</summary>
    public static double Linearised(double emissivity, double meanK) =>
        4 * emissivity * StefanBoltzmann * meanK * meanK * meanK;
}
