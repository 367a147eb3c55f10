namespace Platewright.Build.Heat.Network;

/// <summary>A temperature that ends a run once all its goals are met.</summary>
/// <param name="Node">Whose temperature.</param>
/// <param name="LevelC">To be reached, °C.</param>
/// <param name="Rising">True to be at least that warm, false to be at most that warm.</param>
internal sealed record Goal(int Node, double LevelC, bool Rising)
{
    // A located event meets its level only to rounding, K.
    private const double Slack = 1e-6;

    public bool IsMet(ReadOnlySpan<double> temperatureC) => Miss(temperatureC) <= Slack;

    /// <summary>How much is missing, K; negative once met.</summary>
    public double Miss(ReadOnlySpan<double> temperatureC) =>
        Rising ? LevelC - temperatureC[Node] : temperatureC[Node] - LevelC;
}
