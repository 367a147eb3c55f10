namespace Platewright.Build.Heat;

/// <summary>What a build asks of the heaters.</summary>
/// <param name="Seconds">From the first move to the last, s, not negative.</param>
/// <param name="MaterialMm3">Material laid down in it, mm³, not negative; the mean flow is this by the time.</param>
public sealed record BuildLoad(double Seconds, double MaterialMm3)
{
    /// <summary>mm³/s.</summary>
    public double MeanFlowMm3S => Seconds > 0 ? MaterialMm3 / Seconds : 0;
}
