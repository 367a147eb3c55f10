namespace Platewright.Sizing.Hours;

/// <summary>From "model changed" to "part in hand", stage by stage, s; the stages are the total.</summary>
/// <param name="WaitToStartS">Until somebody is there and the rules let it start, s.</param>
/// <param name="PrepareS">Making the machine ready, s.</param>
/// <param name="WarmUpS">Warming up, s.</param>
/// <param name="BuildS">Building, s.</param>
/// <param name="ReleaseS">Cooling down until the part lets go, s.</param>
/// <param name="WaitToTakeOffS">Until somebody is there to take it off, s.</param>
/// <param name="TakeOffS">Taking it off, s.</param>
public sealed record TurnRound(
    double WaitToStartS, double PrepareS, double WarmUpS, double BuildS, double ReleaseS, double WaitToTakeOffS,
    double TakeOffS)
{
    /// <summary>All of it, s.</summary>
    public double TotalS => WaitToStartS + PrepareS + WarmUpS + BuildS + ReleaseS + WaitToTakeOffS + TakeOffS;

    /// <summary>From a model changed at one moment on; null where this build can never be made here.</summary>
    /// <param name="place">Hours and rules.</param>
    /// <param name="stages">What the build takes.</param>
    /// <param name="changedS">A moment of the repeating week, s.</param>
    public static TurnRound? At(Place place, BuildStages stages, double changedS) =>
        place.Plan(changedS, stages) is { } plan ? With(stages, plan.WaitToStartS, plan.WaitToTakeOffS) : null;

    internal static TurnRound With(BuildStages stages, double waitToStartS, double waitToTakeOffS) => new(
        waitToStartS, stages.PrepareS, stages.WarmUpS, stages.BuildS, stages.ReleaseS, waitToTakeOffS, stages.TakeOffS);
}
