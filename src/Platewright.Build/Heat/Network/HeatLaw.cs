namespace Platewright.Build.Heat.Network;

/// <summary>How much heat flows between two nodes at their temperatures.</summary>
public abstract record HeatLaw
{
    // Of the difference quotient, K: large enough for rounding, small against what bends the laws.
    private protected const double SlopeStepK = 1e-4;

    /// <summary>Heat from the first node to the second, W; negative the other way. Temperatures in °C.</summary>
    public abstract double HeatW(double fromC, double toC);

    /// <summary>How the heat changes with either temperature, W/K.</summary>
    internal virtual (double From, double To) Slopes(double fromC, double toC) => (
        (HeatW(fromC + SlopeStepK, toC) - HeatW(fromC - SlopeStepK, toC)) / (2 * SlopeStepK),
        (HeatW(fromC, toC + SlopeStepK) - HeatW(fromC, toC - SlopeStepK)) / (2 * SlopeStepK));
}

/// <summary>q = G·ΔT.</summary>
/// <param name="ConductanceWK">G, not negative, W/K.</param>
public sealed record LinearLaw(double ConductanceWK) : HeatLaw
{
    public override double HeatW(double fromC, double toC) => ConductanceWK * (fromC - toC);

    internal override (double From, double To) Slopes(double fromC, double toC) => (ConductanceWK, -ConductanceWK);
}

/// <summary>q = c·ΔT^(1+n): convection in one regime, n = 1/4 laminar, 1/3 turbulent.</summary>
/// <param name="CoefficientW">c: heat at a difference of 1 K, W.</param>
/// <param name="Exponent">n, not negative.</param>
public sealed record PowerLaw(double CoefficientW, double Exponent) : HeatLaw
{
    public override double HeatW(double fromC, double toC)
    {
        double difference = fromC - toC;
        return CoefficientW * difference * Math.Pow(Math.Abs(difference), Exponent);
    }
}

/// <summary>q = ε·A·σ·(T⁴ − T_s⁴).</summary>
/// <param name="EmissiveAreaM2">ε·A, m².</param>
public sealed record RadiationLaw(double EmissiveAreaM2) : HeatLaw
{
    public override double HeatW(double fromC, double toC) => Radiation.FluxWM2(EmissiveAreaM2, fromC, toC);

    internal override (double From, double To) Slopes(double fromC, double toC) => (
        EmissiveAreaM2 * Radiation.Linearised(1, fromC + Air.KelvinOffset),
        -EmissiveAreaM2 * Radiation.Linearised(1, toC + Air.KelvinOffset));
}

/// <summary>
/// Heat carried by a stream of material that leaves the first node at its temperature and was fed at another:
/// q = ṁ·c·(T − T_feed).
/// </summary>
/// <param name="CapacityRateWK">ṁ·c, W/K.</param>
/// <param name="FeedC">T_feed, °C: the network's reference temperature, where stored heat counts from.</param>
public sealed record StreamLaw(double CapacityRateWK, double FeedC) : HeatLaw
{
    public override double HeatW(double fromC, double toC) => CapacityRateWK * (fromC - FeedC);

    internal override (double From, double To) Slopes(double fromC, double toC) => (CapacityRateWK, 0);
}
