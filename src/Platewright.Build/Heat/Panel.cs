namespace Platewright.Build.Heat;

/// <summary>A flat wall between two airs: three resistances in series.</summary>
/// <param name="ThicknessM">Thickness, m.</param>
/// <param name="ConductivityWMK">k, W/(m·K).</param>
/// <param name="InsideWM2K">h on the inner face, W/(m²·K).</param>
/// <param name="OutsideWM2K">h on the outer face, W/(m²·K).</param>
public sealed record Panel(double ThicknessM, double ConductivityWMK, double InsideWM2K, double OutsideWM2K)
{
    private double Own => ThicknessM / ConductivityWMK;

    /// <summary>U = 1/(1/h_i + d/k + 1/h_o), W/(m²·K).</summary>
    public double TransmittanceWM2K => 1 / (1 / InsideWM2K + Own + 1 / OutsideWM2K);

    /// <summary>The panel's own share of the resistance, 0 … 1.</summary>
    public double OwnShare => Own * TransmittanceWM2K;
}
