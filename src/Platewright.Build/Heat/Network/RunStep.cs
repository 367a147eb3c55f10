namespace Platewright.Build.Heat.Network;

/// <summary>
/// One accepted step: state and rates at both ends, between them the cubic through all four (Hermite), and the modes
/// that the heaters had.
/// </summary>
internal sealed record RunStep(
    double StartS, double LengthS, double[] StartState, double[] StartRate, double[] EndState, double[] EndRate,
    HeaterMode[] Modes)
{
    public double EndS => StartS + LengthS;

    /// <param name="share">0 at the start … 1 at the end.</param>
    /// <param name="state">Where the state goes.</param>
    public void Interpolate(double share, Span<double> state)
    {
        double t = share, u = 1 - share;
        double startValue = (1 + 2 * t) * u * u, endValue = t * t * (3 - 2 * t);
        double startSlope = t * u * u * LengthS, endSlope = -t * t * u * LengthS;
        for (int i = 0; i < state.Length; i++)
            state[i] = startValue * StartState[i] + endValue * EndState[i]
                + startSlope * StartRate[i] + endSlope * EndRate[i];
    }
}
