using Platewright.Build.Motion;
using Platewright.Build.Paths;
using Platewright.Machines;

namespace Platewright.Tests.Build.Paths;

/// <summary>Length and material of the moves of a layer, by kind.</summary>
internal static class Beads
{
    private static readonly MotionLimits Any = new(100, 1000, 0.05);

    public static MotionTimes Of(LayerPlan plan) => new MotionPlanner().Plan(plan.Start, plan.Moves, Any);
}
