namespace Platewright.Sizing.Hours;

/// <summary>One build of a project on one of several identical machines.</summary>
/// <param name="Job">Place in the list of builds.</param>
/// <param name="Machine">From 0 on.</param>
/// <param name="When">Its moments.</param>
public sealed record ScheduledBuild(int Job, int Machine, PlannedBuild When);
