namespace Platewright.Build.Estimates;

/// <summary>
/// How far the truth may lie from an estimate, 95 times of 100, as a share of it: from <paramref name="Low"/> (negative) to
/// <paramref name="High"/>.
/// </summary>
/// <param name="Source">prior where no past job of the machine is known, log where some are.</param>
public sealed record ModelError(double Low, double High, string Source)
{
    /// <summary>
    /// Without past jobs: a judgement of our own, no source. No openly readable measured time with full machine parameters was
    /// found to check against; times estimated for others' machines commonly miss by this much.
    /// </summary>
    public const double PriorTime = 0.25;

    /// <summary>The same for energy: measured desktop machines differ from simple laws by a third and more.</summary>
    public const double PriorEnergy = 0.35;

    public const string Prior = "prior";

    public const string Log = "log";

    /// <summary>An error with independent ones added, each in share of the estimate.</summary>
    public ModelError With(IEnumerable<(double Low, double High)> others)
    {
        double low = Low * Low, high = High * High;
        foreach ((double l, double h) in others)
        {
            low += l * l;
            high += h * h;
        }
        return this with { Low = -Math.Sqrt(low), High = Math.Sqrt(high) };
    }
}
