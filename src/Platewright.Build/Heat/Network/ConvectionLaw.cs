namespace Platewright.Build.Heat.Network;

/// <summary>Which way a surface faces.</summary>
public enum Facing
{
    Up,
    Down,
    Sideways,
}

/// <summary>
/// Heat from a surface (first node) to air (second node) by the correlations of <see cref="Convection"/>, with the
/// properties of air at the mean of both temperatures. Natural and forced convection are joined as
/// h³ = h_natural³ + h_forced³ (Incropera eq. 9.64, from memory).
/// </summary>
/// <param name="AreaM2">Surface, m².</param>
/// <param name="LengthM">L of natural convection: height, or area/perimeter of a horizontal face, m.</param>
/// <param name="Facing">Which way it faces.</param>
/// <param name="StirringMS">Speed of the air along the surface, 0 for still air, m/s.</param>
/// <param name="StreamLengthM">Length along that stream, m.</param>
public sealed record ConvectionLaw(
    double AreaM2, double LengthM, Facing Facing, double StirringMS = 0, double StreamLengthM = 1) : HeatLaw
{
    public override double HeatW(double fromC, double toC)
    {
        double difference = fromC - toC;
        return CoefficientWM2K(fromC, toC) * AreaM2 * difference;
    }

    // One-sided differences: three looks instead of four, and the step is far below what bends the law.
    internal override (double From, double To) Slopes(double fromC, double toC)
    {
        double here = HeatW(fromC, toC);
        return (
            (HeatW(fromC + SlopeStepK, toC) - here) / SlopeStepK, (HeatW(fromC, toC + SlopeStepK) - here) / SlopeStepK);
    }

    /// <summary>h, W/(m²·K).</summary>
    public double CoefficientWM2K(double surfaceC, double airC)
    {
        double filmK = 0.5 * (surfaceC + airC) + Air.KelvinOffset;
        var air = Air.At(filmK);
        double rayleigh = Convection.Rayleigh(
            1 / filmK, Math.Abs(surfaceC - airC), LengthM, air.ViscosityM2S, air.DiffusivityM2S);
        double natural = Nusselt(rayleigh, air.Prandtl, surfaceC < airC) * air.ConductivityWMK / LengthM;
        if (StirringMS <= 0) return natural;
        double forced = Convection.Stream(StirringMS, StreamLengthM, air) * air.ConductivityWMK / StreamLengthM;
        return Math.Cbrt(natural * natural * natural + forced * forced * forced);
    }

    // A cold face up is to the air as a hot face down.
    private double Nusselt(double rayleigh, double prandtl, bool cold) => Facing switch
    {
        Facing.Sideways => Convection.VerticalInAir(rayleigh, prandtl),
        _ when Facing == Facing.Up != cold => Convection.Upward(rayleigh),
        _ => Convection.Downward(rayleigh),
    };
}
