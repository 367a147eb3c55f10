using System.Collections.Immutable;

namespace Platewright.Build.Heat;

/// <summary>What a build cycle takes in time, heat and energy.</summary>
/// <param name="Reach">Whether the machine reaches what the material needs.</param>
/// <param name="Vented">Whether a chamber that could be closed is opened for this material.</param>
/// <param name="Notes">What a person should know, in sentences.</param>
public sealed record BuildCycleResult(HeatReach Reach, bool Vented, ImmutableArray<string> Notes)
{
    /// <summary>
    /// From cold to ready, s: 0 for a machine that describes no heaters, null where a need is never reached.
    /// </summary>
    public double? WarmUpS { get; init; }

    /// <summary>
    /// From the last move until the part lets go, s: 0 for a machine that describes no heaters, null where it never
    /// warms up or the room is too warm for it ever to let go.
    /// </summary>
    public double? ReleaseS { get; init; }

    /// <summary>Null for a machine that describes no heaters, or never gets there.</summary>
    public CycleEnergy? Energy { get; init; }

    /// <summary>Means while building; null as <see cref="Energy"/>.</summary>
    public HoldPower? Hold { get; init; }

    /// <summary>Greatest power, W, a thermostat's switching averaged out; null as <see cref="Energy"/>.</summary>
    public double? PeakW { get; init; }

    /// <summary>The whole cycle, s.</summary>
    public double? CycleS { get; init; }

    /// <summary>Heat given to the room while cooling down, J.</summary>
    public double? ReleasedJ { get; init; }

    /// <summary>Mean power over the cycle, W.</summary>
    public double? MeanW => CycleS is > 0 and { } s ? Energy?.TotalJ / s : null;

    /// <summary>
    /// Temperatures and power over the cycle: about 200 moments, with both sides of every event; none where
    /// <see cref="Energy"/> is null. Drawn anew each time it is asked for.
    /// </summary>
    public ImmutableArray<CyclePoint> Picture => Draw();

    /// <summary>Most cycles are only counted, so nothing is drawn before someone looks.</summary>
    internal Func<ImmutableArray<CyclePoint>> Draw { get; init; } = () => [];
}

/// <summary>Electrical energy by what draws it, J.</summary>
/// <param name="WarmUpJ">Heaters until ready.</param>
/// <param name="HoldJ">Heaters while building.</param>
/// <param name="MotionJ">Motors while building.</param>
/// <param name="BaseJ">Electronics from switching on until the part lets go.</param>
public sealed record CycleEnergy(double WarmUpJ, double HoldJ, double MotionJ, double BaseJ)
{
    /// <summary>J in a kWh.</summary>
    public const double JoulesPerKwh = 3.6e6;

    public double TotalJ => WarmUpJ + HoldJ + MotionJ + BaseJ;

    public double TotalKwh => TotalJ / JoulesPerKwh;
}
