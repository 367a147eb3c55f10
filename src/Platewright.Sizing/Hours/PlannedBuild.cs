namespace Platewright.Sizing.Hours;

/// <summary>One build on one machine, in moments of the repeating week, s.</summary>
/// <param name="AskedS">From then on it could have started.</param>
/// <param name="StartS">Somebody begins to prepare it.</param>
/// <param name="ReadyS">The part has let go.</param>
/// <param name="TakenOffFromS">Somebody begins to take it off.</param>
/// <param name="InHandS">Part in hand; the machine is free again.</param>
public readonly record struct PlannedBuild(
    double AskedS, double StartS, double ReadyS, double TakenOffFromS, double InHandS)
{
    /// <summary>Until somebody is there and the rules let it start, s.</summary>
    public double WaitToStartS => StartS - AskedS;

    /// <summary>Until somebody is there to take it off, s.</summary>
    public double WaitToTakeOffS => TakenOffFromS - ReadyS;
}
