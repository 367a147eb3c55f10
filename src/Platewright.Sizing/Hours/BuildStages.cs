namespace Platewright.Sizing.Hours;

/// <summary>What one build takes, one stage after the other, s.</summary>
public sealed record BuildStages
{
    /// <summary>A build.</summary>
    /// <param name="buildS">Building, s, greater than 0.</param>
    /// <param name="warmUpS">Warming up before it, s, 0 or more.</param>
    /// <param name="releaseS">Cooling down until the part lets go, s, 0 or more.</param>
    /// <param name="prepareS">Somebody makes the machine ready, s, 0 or more.</param>
    /// <param name="takeOffS">Somebody takes the part off, s, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A time is outside its range or not finite.</exception>
    public BuildStages(
        double buildS, double warmUpS = 0, double releaseS = 0, double prepareS = 0, double takeOffS = 0)
    {
        if (!(buildS > 0 && double.IsFinite(buildS)))
            throw new ArgumentOutOfRangeException(nameof(buildS), buildS, "Expected more than 0 s.");
        BuildS = buildS;
        WarmUpS = Checked(warmUpS, nameof(warmUpS));
        ReleaseS = Checked(releaseS, nameof(releaseS));
        PrepareS = Checked(prepareS, nameof(prepareS));
        TakeOffS = Checked(takeOffS, nameof(takeOffS));
    }

    /// <summary>Somebody makes the machine ready, without a break, s.</summary>
    public double PrepareS { get; }

    /// <summary>Warming up, s.</summary>
    public double WarmUpS { get; }

    /// <summary>Building, s.</summary>
    public double BuildS { get; }

    /// <summary>Cooling down until the part lets go, heaters off, s.</summary>
    public double ReleaseS { get; }

    /// <summary>Somebody takes the part off, without a break, s.</summary>
    public double TakeOffS { get; }

    /// <summary>What the rules for unattended running are about: warming up and building, s.</summary>
    public double RunS => WarmUpS + BuildS;

    /// <summary>What the machine alone takes: warming up, building, cooling down, s.</summary>
    public double MachineS => RunS + ReleaseS;

    /// <summary>What somebody must be there for, s.</summary>
    public double HandlingS => PrepareS + TakeOffS;

    /// <summary>All stages, where nobody has to be waited for, s.</summary>
    public double BusyS => MachineS + HandlingS;

    /// <summary>The same with the machine's own stages longer or shorter; handling stays.</summary>
    /// <param name="factor">Greater than 0.</param>
    public BuildStages WithMachineTimes(double factor) =>
        new(BuildS * factor, WarmUpS * factor, ReleaseS * factor, PrepareS, TakeOffS);

    private static double Checked(double seconds, string name) => seconds >= 0 && double.IsFinite(seconds)
        ? seconds
        : throw new ArgumentOutOfRangeException(name, seconds, "Expected 0 s or more.");
}
